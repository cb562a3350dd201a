import { constants, constantsByTeeSize, pieces } from '../catalogue/index.ts';
import {
  circleM2,
  cupGasketHoldsPa,
  seatRingSlot,
  seatSaddle,
  selfEnergisedLeakCdAM2,
  squeezeUnderGas,
  type ChainSet,
  type SeatSpring,
  type Seating,
} from '../physics/index.ts';
import { GRAVITY_M_PER_S2, psi } from '../units/index.ts';
import type { RigState } from './state.ts';
import type { Sense } from './sense.ts';
import { renewed } from './reach.ts';
import { troubleSize } from './troubles.ts';
import { cradleMains, type Job, type TeeSize } from './job.ts';

const c = constants;
const bySize = constantsByTeeSize;

/** Gap of a saddle that has lifted off its seat as far as slack chains let it, m (assumed). */
const LIFTED_GAP_M = 4e-3;
/** Share of the lifting pressure by which it must be passed for the whole gap, with no taut leg against it (assumed). */
const LIFT_SPAN = 0.1;
/** Lowest opening of a good seat, m² effective. */
const GOOD_SEAT_CDA_M2 = c.goodJointCdAM2.value;

export type SeatOpening =
  | { readonly law: 'orifice'; readonly cdAM2: number }
  | {
      readonly law: 'slot';
      readonly perimeterM: number;
      readonly gapM: number;
      readonly lengthM: number;
      readonly cd: number;
    }
  | {
      readonly law: 'relief';
      readonly cdAM2: number;
      readonly setDropPa: number;
      readonly fullDropPa: number;
    };

/** Chains as they are hooked now; legs 0 when none is. */
export function chainSet(rig: RigState): ChainSet {
  const hooked = rig.chains.filter((chain) => chain.hooked).length;
  return {
    legs: 2 * hooked,
    legStiffnessNPerM: c.chainLegStiffnessNPerM.value,
    advancePerTurnM: c.tensionerAdvanceM.value,
    spanM: c.chainSpanM.value,
  };
}

/** Rubber the saddle bears on at its first seat. */
export function seatSpring(size: TeeSize): SeatSpring {
  const ring = pieces.seatRing.dims(size);
  return {
    stiffnessNPerM: bySize.seatRingStiffnessNPerM[size].value,
    thicknessM: c.seatRingRubberM.value,
    stopSqueeze: c.seatRingStopSqueeze.value,
    outerDiameterM: ring.rubberOdM,
  };
}

/** The last rig asked for and how its saddle sits: asked for several times between two acts of the hand. */
let kept: { readonly rig: RigState; readonly sits: Seating } | null = null;

/** How the saddle sits on its seat by the chains alone. */
export function seating(rig: RigState): Seating {
  if (kept === null || kept.rig !== rig) kept = { rig, sits: seatingOf(rig) };
  return kept.sits;
}

function seatingOf(rig: RigState): Seating {
  let hooked = 0;
  let left = 0;
  let right = 0;
  let settledM = 0;
  for (let i = 0; i < rig.chains.length; i += 1) {
    const chain = rig.chains[i];
    if (!chain.hooked) continue;
    hooked += 1;
    left += chain.left;
    right += chain.right;
    settledM += chain.settledM;
  }
  if (hooked === 0) {
    return { clampN: 0, leftLegN: 0, rightLegN: 0, squeeze: 0, edgeSqueezeLost: 0, onMetal: false };
  }
  const spring = seatSpring(rig.job.workpiece.teeSize);
  return seatSaddle(chainSet(rig), spring, left / hooked, right / hooked, settledM / hooked);
}

/**
 * Diameter on which gas lifts the saddle, m: of the seat it stands on. The gasket's flange fills the saddle's own recess
 * and so is one for all sizes.
 */
function endLoadDiameterM(rig: RigState): number {
  const { teeSize } = rig.job.workpiece;
  return rig.saddle.on === 'tee' ? bySize.seatRingEndLoadM[teeSize].value : c.cupGasketEndLoadM.value;
}

/** What gas lifts the saddle with, N. */
export function endLoadN(rig: RigState, chamberGaugePa: number): number {
  return Math.max(0, chamberGaugePa) * circleM2(endLoadDiameterM(rig));
}

/** Weight that holds the saddle down besides the chains, N: grows with what stands on it. */
export function rigWeightN(rig: RigState): number {
  const share = 0.35 + 0.65 * Math.min(1, rig.stack.length / 2);
  return c.rigMassKg.value * GRAVITY_M_PER_S2 * share;
}

/** True when gas has lifted the saddle off its seat. */
export function lifted(rig: RigState, chamberGaugePa: number): boolean {
  if (rig.saddle.on === 'board') return false;
  return endLoadN(rig, chamberGaugePa) > seating(rig).clampN + rigWeightN(rig);
}

/** What a saddle that leans takes from the clamp at its second seat, N a share of squeeze lost at the edge (assumed). */
const LEAN_N = 600;

/**
 * A saddle lifts as a relief does: shut up to what chains and weight hold, then by as much as the excess stretches the
 * legs, or freely where none is taut. It so comes to hover where the gas under it and its gap are in balance; looked
 * at only now and then, it would be found wide open and shut by turns.
 */
function liftOpening(rig: RigState): SeatOpening {
  const diameterM = endLoadDiameterM(rig);
  const { clampN, edgeSqueezeLost } = seating(rig);
  const heldN = clampN + rigWeightN(rig);
  const setDropPa =
    rig.saddle.on === 'tee'
      ? heldN / circleM2(diameterM)
      : cupGasketHoldsPa(heldN, edgeSqueezeLost * LEAN_N, circleM2(diameterM), c.cupGasketMargin.value);
  const legsN = clampN > 0 ? chainSet(rig).legs * c.chainLegStiffnessNPerM.value * LIFTED_GAP_M : 0;
  const spanPa = Math.max(LIFT_SPAN * setDropPa, legsN / circleM2(diameterM));
  const cdAM2 = c.slotDischarge.value * Math.PI * diameterM * LIFTED_GAP_M;
  return { law: 'relief', cdAM2, setDropPa, fullDropPa: setDropPa + spanPa };
}

function cradlesRight(rig: RigState): boolean {
  const small = cradleMains.includes(rig.job.workpiece.mainNps);
  const hooked = rig.chains.filter((chain) => chain.hooked).length;
  if (!small || hooked === 0) return true;
  const fitting = rig.saddle.cradles.filter(
    (id) => rig.kit[id].trueSize === rig.job.workpiece.mainNps,
  ).length;
  return fitting >= hooked;
}

/** Openings between chamber and hole at the saddle's seat: its flaws, what it lacks in squeeze, and its lifting. */
export function seatOpenings(rig: RigState, sense: Sense): SeatOpening[] {
  const gauge = sense.gaugePa('chamber');
  const seat = rig.saddle.on === 'tee' ? firstSeat(rig, gauge) : secondSeat(rig, gauge);
  return [...seat, liftOpening(rig)];
}

/** The face the ring bears on, as clean as it is. A renewal tee brings a new one. */
function bossFace(rig: RigState): Job['workpiece']['boss'] {
  if (renewed(rig)) return 'sound';
  const { boss } = rig.job.workpiece;
  return rig.site.cleaned.boss || boss !== 'sound' ? boss : 'pitted';
}

function firstSeat(rig: RigState, gauge: number): SeatOpening[] {
  const { workpiece } = rig.job;
  const id = rig.seatRing.piece;
  if (id === null) return [{ law: 'orifice', cdAM2: c.bareSeatCdAM2.value }];
  const ringPiece = rig.kit[id];
  if (ringPiece.trueSize !== workpiece.teeSize) return [{ law: 'orifice', cdAM2: c.wrongRingCdAM2.value }];
  const ring = pieces.seatRing.dims(workpiece.teeSize);
  const spring = seatSpring(workpiece.teeSize);
  const set = chainSet(rig);
  const sits = seating(rig);
  const weight = rigWeightN(rig) / spring.stiffnessNPerM / spring.thicknessM;
  const held =
    set.legs === 0
      ? -endLoadN(rig, gauge) / spring.stiffnessNPerM / spring.thicknessM
      : squeezeUnderGas(sits, set, spring, endLoadN(rig, gauge));
  // what lifts it clear of the boss is the lift's own opening
  const squeeze = Math.max(0, Math.min(spring.stopSqueeze, held + (sits.onMetal ? 0 : weight)));
  const boss = bossFace(rig);
  const stiffer = 1 + troubleSize(rig, 'cold');
  const law = {
    gapM: boss === 'sound' ? c.gapSoundM.value : c.gapPittedM.value,
    sealSqueeze:
      stiffer *
      (boss === 'sound' ? c.sealSqueezeSound.value : boss === 'pitted' ? c.sealSqueezePitted.value : 2),
    exponent: c.gapExponent.value,
    floorM: 0,
  };
  const flat = {
    innerDiameterM: ring.rubberIdM,
    outerDiameterM: ring.rubberOdM,
    thicknessM: spring.thicknessM,
  };
  const lean = sits.edgeSqueezeLost + (cradlesRight(rig) ? 0 : 0.3) + ovalLean(rig);
  const slot = seatRingSlot(flat, law, squeeze, lean);
  const flaw = GOOD_SEAT_CDA_M2 + (ringPiece.defects.gritCdAM2 ?? 0);
  const flawed: SeatOpening = { law: 'orifice', cdAM2: flaw };
  return slot.gapM > 0 ? [flawed, { law: 'slot', ...slot, cd: c.slotDischarge.value }] : [flawed];
}

/** Squeeze lost at one edge where the chains draw down on a main out of round, a metre of its ovalness (assumed). */
const OVAL_LEAN_PER_M = 15;

function ovalLean(rig: RigState): number {
  return OVAL_LEAN_PER_M * troubleSize(rig, 'outOfRound');
}

/** Even pressing of the gasket by the collar's bolts: turns past snug, each side. */
export function collarEven(rig: RigState): boolean {
  const [left, right] = rig.collar.bolts;
  return left >= 0.5 && right >= 0.5 && Math.abs(left - right) <= 0.34;
}

function secondSeat(rig: RigState, gauge: number): SeatOpening[] {
  const { gasket, collar } = rig.collar;
  const size = rig.job.workpiece.teeSize;
  if (gasket === null || collar === null) return [{ law: 'orifice', cdAM2: c.bareSeatCdAM2.value }];
  if (rig.kit[gasket].trueSize !== size || rig.kit[collar].trueSize !== size) {
    return [{ law: 'orifice', cdAM2: c.wrongRingCdAM2.value }];
  }
  const pinched = collarEven(rig) ? 0 : c.hairOnGasketCdAM2.value;
  const dirty = rig.site.cleaned.coupling ? 0 : c.hairOnGasketCdAM2.value;
  const unbacked = cradlesRight(rig) ? 0 : c.oneSidedChainCdAM2.value;
  const caught = (rig.kit[gasket].defects.pinchedCdAM2 ?? 0) + troubleSize(rig, 'weldBead');
  const flaw = pinched + dirty + unbacked + caught + ovalLean(rig) * c.hairOnGasketCdAM2.value;
  const leak =
    GOOD_SEAT_CDA_M2 +
    (flaw > 0 ? selfEnergisedLeakCdAM2(flaw, c.cupGasketStressPa.value, gauge, psi(35)) : 0);
  return [{ law: 'orifice', cdAM2: leak }];
}
