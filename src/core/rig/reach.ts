import {
  ballElevations,
  pieces,
  rodRange,
  stackGeometry,
  stackUp,
  taperThreads,
} from '../catalogue/index.ts';
import type { Job } from './job.ts';
import type { RigState, RodLoad } from './state.ts';

/** Thread turns between first bite and full make-up: L1 + L3 of ASME B1.20.1. */
export function madeUpTurns(job: Job): number {
  const thread = taperThreads[job.workpiece.teeSize];
  return thread.madeUpM / thread.pitchM;
}

/** Thread turns of hand-tight engagement, L1 of ASME B1.20.1. */
export function handTightTurns(job: Job): number {
  const thread = taperThreads[job.workpiece.teeSize];
  return thread.l1M / thread.pitchM;
}

export function geometryOf(job: Job) {
  return stackGeometry({ mainNps: job.workpiece.mainNps, teeSize: job.workpiece.teeSize });
}

/** The renewal tee stands in the coupling and is the tee the rig now works on. */
export function renewed(rig: Pick<RigState, 'renewal'>): boolean {
  return rig.renewal.at === 'coupling';
}

/** How far the renewal tee is from being fully made up, turns of its thread. */
export function renewalTurnsShort(rig: RigState): number {
  return madeUpTurns(rig.job) - rig.renewal.engagedTurns;
}

/** The same as the height it stands higher for it, m; 0 for a street tee, which stands as it was found. */
function renewalLiftM(rig: RigState): number {
  return renewed(rig) ? renewalTurnsShort(rig) * taperThreads[rig.job.workpiece.teeSize].pitchM : 0;
}

/** Where everything stands, m above the crown, with the tee that is in the coupling now. */
export function standingGeometry(rig: RigState): ReturnType<typeof geometryOf> {
  const as = geometryOf(rig.job);
  const lift = renewalLiftM(rig);
  if (lift === 0) return as;
  return {
    ...as,
    teeMaleEndZM: as.teeMaleEndZM + lift,
    portAxisZM: as.portAxisZM + lift,
    portUndersideZM: as.portUndersideZM + lift,
    hubUndersideZM: as.hubUndersideZM + lift,
    bossZM: as.bossZM + lift,
    plugShoulderZM: as.plugShoulderZM + lift,
    plugTopZM: as.plugTopZM + lift,
    stopperWasherZM: as.stopperWasherZM + lift,
    stopperBottomZM: as.stopperBottomZM + lift,
    firstSeatZM: as.firstSeatZM + lift,
  };
}

/** Circles the tee sweeps, m: as found, sawn flush, corners dressed. */
export function streetTeeSwept(job: Job) {
  return geometryOf(job).sweptM;
}

/** Elevations of the assembly as it stands, m above the crown of the main; null where nothing stands. */
export interface Elevations {
  readonly saddleSeatZM: number;
  readonly ballClearZM: number | null;
  readonly rodUpZM: number | null;
}

/** The last rig asked for and how it stands: asked for at every step of the gas, and changed by hands alone. */
let kept: { readonly rig: RigState; readonly stands: Elevations | null } | null = null;

/** Where the ball and the rod stand now. */
export function elevations(rig: RigState): Elevations | null {
  if (kept === null || kept.rig !== rig) kept = { rig, stands: elevationsOf(rig) };
  return kept.stands;
}

function elevationsOf(rig: RigState): Elevations | null {
  if (rig.saddle.on === 'board') return null;
  const geometry = standingGeometry(rig);
  const seatZM = rig.saddle.on === 'tee' ? geometry.firstSeatZM : geometry.secondSeatZM;
  const standing = stackUp(seatZM, ['saddle', ...rig.stack.map((p) => p.kind)]);
  const valve = standing.find((s) => s.kind === 'isolationValve');
  const barrel = standing.find((s) => s.kind === 'rodBarrel');
  return {
    saddleSeatZM: seatZM,
    ballClearZM: valve ? ballElevations(valve.seatZM).clearZM : null,
    rodUpZM: barrel ? rodRange(barrel.seatZM).upZM : null,
  };
}

/** Length of the tip below the rod's lower end, m. */
export function tipLengthM(rig: RigState): number {
  if (rig.rod.tip === null) return 0;
  const piece = rig.kit[rig.rod.tip];
  if (piece.kind === 'socket') return pieces.socket.dims(rig.job.workpiece.teeSize).lengthM;
  if (piece.kind === 'stopperHolder') return pieces.stopperHolder.dims().lengthM;
  return pieces.magnet.dims().lengthM;
}

/** How far the load hangs below the tip, m. */
export function loadLengthM(rig: RigState, load: RodLoad | null): number {
  if (load === null) return 0;
  const size = rig.job.workpiece.teeSize;
  const geometry = geometryOf(rig.job);
  switch (load) {
    case 'plug':
    case 'newPlug':
      return pieces.topPlug.dims(size).threadLengthM;
    case 'closing':
      return pieces.closingPlug.dims(size).threadLengthM;
    case 'keeper':
      return pieces.keeperPlug.dims(size).threadLengthM + pieces.keeperPlug.dims(size).stemM;
    case 'stopper':
      return pieces.boreStopper.dims(size).belowTopM;
    case 'tee':
    case 'renewal':
      return geometry.plugShoulderZM - geometry.teeMaleEndZM;
  }
}

/** Elevation of the tip's lower end, m, with the barrel on; null without one. */
export function tipZM(rig: RigState): number | null {
  const up = elevations(rig)?.rodUpZM;
  return up === undefined || up === null ? null : up - rig.rod.travelM - tipLengthM(rig);
}

/** Travel that puts the tip's lower end at an elevation, m. */
export function travelForTip(rig: RigState, zM: number): number | null {
  const up = elevations(rig)?.rodUpZM;
  return up === undefined || up === null ? null : up - tipLengthM(rig) - zM;
}

/** Greatest travel at which tip and load still leave the ball free to turn, m; null without valve and barrel. */
export function ballUpTravelM(rig: RigState): number | null {
  const clear = elevations(rig)?.ballClearZM;
  return clear === undefined || clear === null
    ? null
    : travelForTip(rig, clear + loadLengthM(rig, rig.rod.load));
}

/** What stands in the ball's bore: nothing may when it turns. */
export function ballObstructed(rig: RigState): boolean {
  const limit = ballUpTravelM(rig);
  return limit !== null && rig.rod.travelM > limit + 1e-9;
}

/** A thread's elevations at the tip: where it first bites, and how far it goes down a turn. */
export interface ThreadSeat {
  readonly biteTipZM: number;
  readonly pitchM: number;
}

/** Where the tip stands when the load's thread first bites, and its pitch. */
export function threadSeat(rig: RigState, load: RodLoad): ThreadSeat {
  if (load === 'renewal') return renewalSeat(rig);
  const size = rig.job.workpiece.teeSize;
  const geometry = standingGeometry(rig);
  const thread = taperThreads[size];
  const at = load === 'closing' ? geometry.closingShoulderZM : geometry.plugShoulderZM;
  return { biteTipZM: at + thread.madeUpM, pitchM: thread.pitchM };
}

/** The renewal tee hangs on its keeper's square; it bites so much above where it would be fully made up. */
function renewalSeat(rig: RigState): ThreadSeat {
  const thread = taperThreads[rig.job.workpiece.teeSize];
  return { biteTipZM: geometryOf(rig.job).plugShoulderZM + thread.madeUpM, pitchM: thread.pitchM };
}

/** Lowest elevation the tip can reach with what it carries, and what it meets there. */
export function tipFloor(rig: RigState): {
  readonly zM: number;
  readonly meets: RodLoad | 'boss' | 'coupling' | 'bore';
} {
  const geometry = standingGeometry(rig);
  const { load, tip } = rig.rod;
  const holder = tip !== null && rig.kit[tip].kind !== 'socket';
  if (rig.tee.at === 'coupling') {
    const lift = renewed(rig) ? 0 : rig.tee.turnsBack * taperThreads[rig.job.workpiece.teeSize].pitchM;
    const newPlug = rig.renewal.plug;
    if (rig.plug.at === 'tee') {
      const up = rig.plug.turnsBack * taperThreads[rig.job.workpiece.teeSize].pitchM;
      return load === null && !holder
        ? { zM: geometry.plugShoulderZM + up + lift, meets: 'plug' }
        : { zM: geometry.plugTopZM + up + lift + loadLengthM(rig, load), meets: 'boss' };
    }
    if (rig.keeper.at === 'tee') {
      const up =
        (madeUpTurns(rig.job) - rig.keeper.engagedTurns) * taperThreads[rig.job.workpiece.teeSize].pitchM;
      return load === null && !holder
        ? { zM: geometry.plugShoulderZM + up + lift, meets: 'keeper' }
        : { zM: geometry.plugTopZM + up + lift + loadLengthM(rig, load), meets: 'boss' };
    }
    if (newPlug.at === 'tee') {
      const up =
        (madeUpTurns(rig.job) - newPlug.engagedTurns) * taperThreads[rig.job.workpiece.teeSize].pitchM;
      return load === null && !holder
        ? { zM: geometry.plugShoulderZM + up, meets: 'newPlug' }
        : { zM: geometry.plugTopZM + up + loadLengthM(rig, load), meets: 'boss' };
    }
    if (load === 'keeper' || load === 'plug' || load === 'newPlug')
      return { zM: threadSeat(rig, load).biteTipZM + lift, meets: load };
    if (load === null && rig.stopper.at === 'fallen')
      return { zM: geometry.portUndersideZM - rig.stopper.belowPortM, meets: 'stopper' };
    if (load === 'stopper') return { zM: geometry.teeMaleEndZM - 0.05, meets: 'bore' };
    if (holder && load === null) {
      if (rig.stopper.at === 'set')
        return { zM: geometry.portUndersideZM - rig.stopper.belowPortM, meets: 'stopper' };
      return { zM: geometry.teeMaleEndZM, meets: 'bore' };
    }
    return { zM: geometry.bossZM + loadLengthM(rig, load), meets: 'boss' };
  }
  if (rig.closing.at === 'coupling') {
    const up =
      (madeUpTurns(rig.job) - rig.closing.engagedTurns) * taperThreads[rig.job.workpiece.teeSize].pitchM;
    return load === null && !holder
      ? { zM: geometry.closingShoulderZM + up, meets: 'closing' }
      : { zM: geometry.closingShoulderZM + up + 0.02 + loadLengthM(rig, load), meets: 'coupling' };
  }
  if (load === 'closing') return { zM: threadSeat(rig, 'closing').biteTipZM, meets: 'closing' };
  if (load === 'renewal') return { zM: threadSeat(rig, 'renewal').biteTipZM, meets: 'renewal' };
  if (load === 'tee') {
    return { zM: geometry.couplingTopZM + loadLengthM(rig, 'tee'), meets: 'tee' };
  }
  return { zM: geometry.couplingTopZM + loadLengthM(rig, load), meets: 'coupling' };
}
