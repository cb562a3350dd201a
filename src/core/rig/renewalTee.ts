import { constantsByTeeSize, pieces, WASHER_BELOW_PORT_M } from '../catalogue/index.ts';
import { hashNoise } from '../units/index.ts';
import { keeperIn, stopperIn, type Job, type TeeSize } from './job.ts';
import { handTightTurns, renewalTurnsShort } from './reach.ts';
import type { Sense } from './sense.ts';
import { squeezeTurnsFor, stopperRubber } from './stopping.ts';
import type { KeeperState, RigState, StopperState } from './state.ts';

/**
 * The renewal tee comes from the bench with its stopper squeezed firm and its keeper made up over it, that morning
 * (assumed: six hours before the job begins). Its rubber is greased, so that it can be drawn again.
 */
const MADE_BEFORE_S = 21600;
/** Middle of the kit card's firm range, N·m (assumed). */
const BENCH_STOPPER_NM: Readonly<Record<TeeSize, number>> = { '3/4': 1.4, '1': 2.25, '1-1/4': 4.5 };
/** Turns past hand-tight to which the bench makes the keeper up (assumed). */
const KEEPER_PAST_TURNS = 2.44;
/**
 * Its machined thread, dressed with sealant, turns by this share of the torque a cast one asks for (assumed): a whole
 * turn lies within what the rod gives, so that every heading can be reached by going on.
 */
const EASY_THREAD_SHARE = 0.55;

/** Its stopper as the bench left it. */
export function benchStopper(rig: RigState): StopperState {
  const { piece } = rig.renewal;
  const { teeSize } = rig.job.workpiece;
  return {
    piece: piece === null ? null : stopperIn(piece),
    at: 'set',
    belowPortM: WASHER_BELOW_PORT_M,
    torqueNm: BENCH_STOPPER_NM[teeSize],
    squeezeTurns: squeezeTurnsFor(stopperRubber(teeSize, teeSize), BENCH_STOPPER_NM[teeSize]),
    squeezedAtS: -MADE_BEFORE_S,
    tiltRad: 0,
    slippedM: 0,
  };
}

/** Its keeper as the bench left it. */
export function benchKeeper(rig: RigState): KeeperState {
  const { piece } = rig.renewal;
  return {
    piece: piece === null ? null : keeperIn(piece),
    at: 'tee',
    engagedTurns: handTightTurns(rig.job) + KEEPER_PAST_TURNS,
    torqueNm: KEEPER_PAST_TURNS * perTurnNm(rig.job),
    movedTurns: 0,
  };
}

function perTurnNm(job: Job): number {
  return constantsByTeeSize.nptMakeUpTorquePerTurnNm[job.workpiece.teeSize].value;
}

/** Torque of the tee's thread in the coupling after so many engaged turns, N·m. */
export function renewalNm(job: Job, engagedTurns: number): number {
  const past = engagedTurns - handTightTurns(job);
  return past <= 0 ? RUN_ON_NM : RUN_ON_NM + past * EASY_THREAD_SHARE * perTurnNm(job);
}
const RUN_ON_NM = 3;

/** Engaged turns at which the thread takes so much torque. */
export function renewalTurnsAt(job: Job, torqueNm: number): number {
  return handTightTurns(job) + (torqueNm - RUN_ON_NM) / (EASY_THREAD_SHARE * perTurnNm(job));
}

/** How far off the service's heading the branch points, rad, −π to π: where a thread bites is the coupling's own. */
export function offHeadingRad(engagedTurns: number, sense: Pick<Sense, 'seed'>): number {
  const turns = engagedTurns + (hashNoise(sense.seed, 'renewal:bite', 0) + 1) / 2;
  return 2 * Math.PI * (turns - Math.floor(turns + 0.5));
}

/** The branch's direction is read off the mark on the rod's handle to two degrees (assumed). */
const HEADING_READ_RAD = 0.035;

/** The same as a hand reads it. */
export function offHeadingReadRad(engagedTurns: number, sense: Pick<Sense, 'seed' | 'atS'>): number {
  const noise = hashNoise(sense.seed, 'heading', Math.floor(sense.atS)) * HEADING_READ_RAD;
  return offHeadingRad(engagedTurns, sense) + noise;
}

/** The thread has bitten: from now on the rig's tee, stopper and keeper are the renewal tee's. */
export function biteIn(rig: RigState): RigState {
  const { piece } = rig.renewal;
  const { portLine } = rig.site.marks;
  const marks = portLine === undefined ? {} : { portLine };
  return {
    ...rig,
    kit: piece === null ? rig.kit : { ...rig.kit, [piece]: { ...rig.kit[piece], where: 'rig' } },
    site: { ...rig.site, marks, cleaned: { ...rig.site.cleaned, boss: true, bore: true } },
    rod: { ...rig.rod, load: null, engaged: 'renewal' },
    renewal: { ...rig.renewal, at: 'coupling' },
    tee: {
      at: 'coupling',
      turnsBack: renewalTurnsShort(rig),
      broken: true,
      strained: 0,
      sweptM: pieces.renewalTee.dims(rig.job.workpiece.teeSize).bodyOdM,
      trim: 'dressed',
      filed: true,
    },
    stopper: benchStopper(rig),
    keeper: benchKeeper(rig),
  };
}

/** Unscrewed again it hangs on the rod, and the coupling stands open. */
export function comeOut(rig: RigState): RigState {
  const { piece } = rig.renewal;
  return {
    ...rig,
    kit: piece === null ? rig.kit : { ...rig.kit, [piece]: { ...rig.kit[piece], where: 'rod' } },
    rod: { ...rig.rod, load: 'renewal', engaged: 'renewal' },
    renewal: { ...rig.renewal, at: 'rod', engagedTurns: 0, torqueNm: 0, mostTurns: 0 },
    tee: { ...rig.tee, at: 'out' },
    stopper: { ...rig.stopper, piece: null, at: 'board', torqueNm: 0, squeezeTurns: 0 },
    keeper: { ...rig.keeper, piece: null, at: 'board' },
  };
}
