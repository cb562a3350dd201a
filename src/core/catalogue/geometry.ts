import { taperThreads } from './npt.ts';
import { onceASize } from './piece.ts';
import { pieces } from './pieces/index.ts';
import { WASHER_BELOW_PORT_M } from './pieces/keeperPlug.ts';
import { mm, type MainNps, type TeeSize } from './sizes.ts';
import { squarePlugs } from './fittings.ts';

/** Kinds that stand on one another above a seat and share the rig's bore. */
export type StackKind =
  | 'saddle'
  | 'lowerSpool'
  | 'isolationValve'
  | 'upperSpool'
  | 'sightCap'
  | 'testHead'
  | 'rodBarrel'
  | 'valveCap';

export interface Standing {
  readonly kind: StackKind;
  /** Where its bore begins (its seat) and where the next piece's seat is, m above the crown of the main. */
  readonly seatZM: number;
  readonly topZM: number;
}

/** A tip may not stop the ball turning: this much is kept clear above the ball's pole (assumed). */
export const BALL_CLEARANCE_M = mm(3);

/** Elevations, m above the crown of the main along the coupling's axis, up positive; tee made up tight. */
export interface StackGeometry {
  readonly mainRadiusM: number;
  readonly couplingTopZM: number;
  readonly teeMaleEndZM: number;
  readonly portAxisZM: number;
  /** Underside of the port inside: what the stopper must stay below. */
  readonly portUndersideZM: number;
  /** Underside of the hub outside: lower, a known trap. */
  readonly hubUndersideZM: number;
  readonly bossZM: number;
  /** Top of the made-up plug's (or keeper's) threaded body; its square stands on it. */
  readonly plugShoulderZM: number;
  readonly plugTopZM: number;
  /** Aimed-at top of the stopper's upper washer, and its lowest point there. */
  readonly stopperWasherZM: number;
  readonly stopperBottomZM: number;
  readonly closingShoulderZM: number;
  /** Seat face inside the saddle's recess on the boss (rubber not yet squeezed) and on the collar. */
  readonly firstSeatZM: number;
  readonly secondSeatZM: number;
  /** Circle swept by the tee as it turns about the coupling's axis, m: as found, sawn flush, corners dressed. */
  readonly sweptM: { readonly untrimmed: number; readonly sawn: number; readonly dressed: number };
}

const hypot = (a: number, b: number): number => Math.sqrt(a * a + b * b);

/** Where everything stands for a main and a tee. Diameters and lengths come from the catalogue's own pieces. */
export function stackGeometry(job: { mainNps: MainNps; teeSize: TeeSize }): StackGeometry {
  return onMain(job.mainNps)(job.teeSize);
}

const onMain = onceASize((mainNps: MainNps) =>
  onceASize((teeSize: TeeSize) => geometryFor({ mainNps, teeSize })),
);

function geometryFor(job: { mainNps: MainNps; teeSize: TeeSize }): StackGeometry {
  const tee = pieces.serviceTee.dims(job.teeSize);
  const thread = taperThreads[job.teeSize];
  const plug = squarePlugs[job.teeSize];
  const ring = pieces.seatRing.dims(job.teeSize);
  const stopper = pieces.boreStopper.dims(job.teeSize);
  const couplingTopZM = pieces.coupling.dims(job.teeSize).heightM;
  const teeMaleEndZM = couplingTopZM - thread.madeUpM;
  const portAxisZM = teeMaleEndZM + tee.axisToMaleEndM;
  const portUndersideZM = portAxisZM - tee.portIdM / 2;
  const bossZM = portAxisZM + tee.axisToBossM;
  const aboveFaceM = plug.threadLengthM - thread.madeUpM;
  const plugShoulderZM = bossZM + aboveFaceM;
  const stopperWasherZM = portUndersideZM - WASHER_BELOW_PORT_M;
  const collarTopZM = couplingTopZM - pieces.splitCollar.dims(job.teeSize).belowFaceM;
  return {
    mainRadiusM: pieces.main.dims(job.mainNps).odM / 2,
    couplingTopZM,
    teeMaleEndZM,
    portAxisZM,
    portUndersideZM,
    hubUndersideZM: portAxisZM - tee.bandOdM / 2,
    bossZM,
    plugShoulderZM,
    plugTopZM: plugShoulderZM + plug.squareHeightM,
    stopperWasherZM,
    stopperBottomZM: stopperWasherZM - stopper.belowTopM,
    closingShoulderZM: couplingTopZM + aboveFaceM,
    firstSeatZM: bossZM + ring.rubberThickM + ring.plateThickM,
    secondSeatZM: collarTopZM + pieces.cupGasket.dims(job.teeSize).flangeThickM,
    sweptM: {
      untrimmed: 2 * hypot(tee.axisToBossM, tee.bandOdM / 2),
      sawn: 2 * hypot(tee.bodyOdM / 2, tee.bodyOdM / 2),
      dressed: tee.bandOdM,
    },
  };
}

/** Stand pieces on one another from a seat upward. */
export function stackUp(seatZM: number, kinds: readonly StackKind[]): Standing[] {
  const recessM = pieces.saddle.dims().recessDepthM;
  let z = seatZM;
  return kinds.map((kind) => {
    const height = kind === 'saddle' ? pieces.saddle.dims().heightM - recessM : pieces[kind].dims().heightM;
    const standing = { kind, seatZM: z, topZM: z + height };
    z = standing.topZM;
    return standing;
  });
}

/** Where the ball's centre and pole are for a valve standing at this seat, m. */
export function ballElevations(valveSeatZM: number): { centreZM: number; poleZM: number; clearZM: number } {
  const valve = pieces.isolationValve.dims();
  const centreZM = valveSeatZM + valve.ballCentreM;
  const poleZM = centreZM + valve.ballRadiusM;
  return { centreZM, poleZM, clearZM: poleZM + BALL_CLEARANCE_M };
}

/** Range of the rod's lower end, m, for a barrel standing at this seat. The tip hangs below it. */
export function rodRange(barrelSeatZM: number): { upZM: number; downZM: number } {
  const { fullyUpM, strokeM } = pieces.rod.dims();
  return { upZM: barrelSeatZM + fullyUpM, downZM: barrelSeatZM + fullyUpM - strokeM };
}

/** Travels of the rod, m: from the lowest place at which what it carries leaves the ball free, down to the work. */
export interface RodTravels {
  readonly plugM: number;
  readonly stopperM: number;
  readonly teeM: number;
  readonly closingPlugM: number;
}

/**
 * First chamber: saddle and valve on the boss. Second: saddle, lower spool and valve on the collar.
 * The carried piece's lowest point must stand clear of the ball in the upper place.
 */
export function rodTravels(job: { mainNps: MainNps; teeSize: TeeSize }): RodTravels {
  const g = stackGeometry(job);
  const madeUpM = taperThreads[job.teeSize].madeUpM;
  const first = ballElevations(stackUp(g.firstSeatZM, ['saddle'])[0].topZM);
  const second = ballElevations(stackUp(g.secondSeatZM, ['saddle', 'lowerSpool'])[1].topZM);
  return {
    plugM: first.clearZM - (g.bossZM - madeUpM),
    stopperM: first.clearZM - g.stopperBottomZM,
    teeM: second.clearZM - g.teeMaleEndZM,
    closingPlugM: second.clearZM - (g.couplingTopZM - madeUpM),
  };
}
