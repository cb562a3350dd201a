import { constants, pieces } from '../catalogue/index.ts';
import {
  circleM2,
  relaxationShare,
  squeezeStopper,
  stopperFrictionN,
  stopperLeak,
  type StopperRubber,
} from '../physics/index.ts';
import { renewed } from './reach.ts';
import type { RigState } from './state.ts';
import type { SeatOpening } from './seats.ts';
import type { TeeSize } from './job.ts';
import { troubleSize } from './troubles.ts';

const c = constants;

/** A bore stopper with the screw that squeezes it. */
export interface ScrewedRubber extends StopperRubber {
  readonly screwPitchM: number;
}

/** A bore stopper as the physics takes it; other sizes scale the NPS 1 rubber by their own dimensions. */
export function stopperRubber(stopperSize: TeeSize, boreSize: TeeSize): ScrewedRubber {
  const dims = pieces.boreStopper.dims(stopperSize);
  return {
    boreM: pieces.serviceTee.dims(boreSize).lowerBoreM,
    freeM: dims.freeOdM,
    coreM: dims.coreOdM,
    lengthM: dims.rubberLengthM,
    shearModulusPa: c.stopperShearModulusPa.value,
    screwM: dims.screwM,
    screwPitchM: dims.screwPitchM,
    nutFactor: c.stopperNutFactor.value,
  };
}

/** Torque felt on the inner rod after so many turns, N·m, before the drag of gland and rod. */
export function squeezeTorqueNm(rubber: ScrewedRubber, turns: number): number {
  const wound = turns * rubber.screwPitchM;
  const fillM = rubber.lengthM * (1 - fillStretch(rubber));
  const fillNm = fillForceTorqueNm(rubber);
  if (wound <= fillM) return fillM === 0 ? fillNm : (fillNm * Math.max(0, wound)) / fillM;
  return fillNm + (wound - fillM) * wallStiffnessNmPerM(rubber);
}

/** Turns of the squeezing screw at which that torque is reached. */
export function squeezeTurnsFor(rubber: ScrewedRubber, torqueNm: number): number {
  const fillM = rubber.lengthM * (1 - fillStretch(rubber));
  const fillNm = fillForceTorqueNm(rubber);
  const wound =
    torqueNm <= fillNm
      ? (fillM * torqueNm) / fillNm
      : fillM + (torqueNm - fillNm) / wallStiffnessNmPerM(rubber);
  return wound / rubber.screwPitchM;
}

/** How stiff the rubber is once the bore confines it, Pa (assumed). */
const CONFINED_RUBBER_PA = 25.6e6;

/** How fast the torque climbs with the washers' travel once the rubber is on the wall, N·m a metre. */
function wallStiffnessNmPerM(rubber: StopperRubber): number {
  const ringM2 = circleM2(rubber.boreM) - circleM2(rubber.coreM);
  return (rubber.nutFactor * rubber.screwM * CONFINED_RUBBER_PA * ringM2) / rubber.lengthM;
}

function fillStretch(rubber: StopperRubber): number {
  const core = circleM2(rubber.coreM);
  return Math.min(1, (circleM2(rubber.freeM) - core) / (circleM2(rubber.boreM) - core));
}

function fillForceTorqueNm(rubber: StopperRubber): number {
  const stretch = fillStretch(rubber);
  const ring = circleM2(rubber.freeM) - circleM2(rubber.coreM);
  const force = rubber.shearModulusPa * ring * (1 / (stretch * stretch) - stretch);
  return rubber.nutFactor * force * rubber.screwM;
}

/** Size of the stopper in play, by its real size. */
export function stopperSize(rig: RigState): TeeSize | null {
  const id = rig.stopper.piece;
  return id === null ? null : (rig.kit[id].trueSize as TeeSize);
}

/** Share of the rubber that stands beside the port instead of in the lower bore, 0 to 1. */
export function exposedShare(rig: RigState): number {
  const size = stopperSize(rig);
  if (size === null) return 1;
  const length = pieces.boreStopper.dims(size).rubberLengthM;
  const tee = pieces.serviceTee.dims(rig.job.workpiece.teeSize);
  const above = Math.max(0, -rig.stopper.belowPortM);
  const below = Math.max(0, rig.stopper.belowPortM + length + 0.004 - tee.lowerBoreLengthM);
  return Math.min(1, (above + below) / length);
}

/** So far down that none of its rubber is left in the lower bore. */
export function stopperClearsBore(rig: RigState): boolean {
  return rig.stopper.belowPortM > 0 && exposedShare(rig) >= 1;
}

/** In the bore at all: lowered past the tee's top into the run, on the holder or left there. */
export function stopperInBore(rig: RigState): boolean {
  if (rig.tee.at !== 'coupling') return false;
  if (rig.stopper.at === 'set') return true;
  const { lowerBoreLengthM } = pieces.serviceTee.dims(rig.job.workpiece.teeSize);
  const { belowPortM } = rig.stopper;
  const within = belowPortM > -0.02 && belowPortM < lowerBoreLengthM;
  return rig.stopper.at === 'holder' && rig.rod.load === 'stopper' && within;
}

/** Wall stress still there after relaxation, as an equivalent torque, N·m. */
export function liveTorqueNm(rig: RigState, atS: number): number {
  return (
    rig.stopper.torqueNm *
    relaxationShare(atS - rig.stopper.squeezedAtS, c.relaxationPerDecade.value, c.relaxationFromS.value)
  );
}

/** What keeps the stopper from moving, N. */
export function stopperHoldsN(rig: RigState, atS: number): number {
  const size = stopperSize(rig);
  if (size === null) return 0;
  const rubber = stopperRubber(size, rig.job.workpiece.teeSize);
  const fit = squeezeStopper(rubber, liveTorqueNm(rig, atS));
  const { oily: oiled, sealantSmeared } =
    rig.stopper.piece === null ? {} : rig.kit[rig.stopper.piece].defects;
  // the renewal tee's rubber is greased, so that it can be drawn again
  const oily = renewed(rig) || oiled === true || sealantSmeared === true;
  const friction = oily ? c.stopperFrictionOily.value : c.stopperFrictionDry.value;
  return stopperFrictionN(rubber, fit, friction) * (1 - exposedShare(rig));
}

/** On its holder still, and gripping the bore harder than two hands pull: the rod stays where it is. */
export function stopperKeepsRod(rig: RigState, atS: number): boolean {
  if (rig.rod.load !== 'stopper' || rig.stopper.torqueNm <= 0) return false;
  return stopperHoldsN(rig, atS) > c.handHoldN.value;
}

/** Gas thrust on the stopper, N, upward positive. */
export function stopperThrustN(rig: RigState, belowGaugePa: number, aboveGaugePa: number): number {
  return (
    (belowGaugePa - aboveGaugePa) * circleM2(pieces.serviceTee.dims(rig.job.workpiece.teeSize).lowerBoreM)
  );
}

/** Opening past the stopper between main and the tee's barrel. */
export function stopperOpening(rig: RigState, dropPa: number, atS: number): SeatOpening[] {
  const size = stopperSize(rig);
  const boreM = pieces.serviceTee.dims(rig.job.workpiece.teeSize).lowerBoreM;
  const open: SeatOpening = { law: 'orifice', cdAM2: c.boreDischarge.value * circleM2(boreM) };
  if (size === null || !stopperInBore(rig)) return [open];
  const rubber = stopperRubber(size, rig.job.workpiece.teeSize);
  const fit = squeezeStopper(rubber, liveTorqueNm(rig, atS));
  const scaled = rig.job.workpiece.boreScale && !rig.site.cleaned.bore && !renewed(rig);
  const softPa = scaled ? c.stopperSealMarginScaledPa.value : c.stopperSealMarginPa.value;
  const margin = softPa * (1 + troubleSize(rig, 'cold'));
  const leak = stopperLeak(rubber, fit, Math.abs(dropPa), margin, c.stopperGapM.value);
  const exposed = exposedShare(rig);
  const flaw =
    c.goodJointCdAM2.value +
    (rig.stopper.piece === null ? 0 : (rig.kit[rig.stopper.piece].defects.rubberWornCdAM2 ?? 0));
  const openings: SeatOpening[] = [
    {
      law: 'orifice',
      // rubber beside the port bulges into it and seals nothing to the branch
      cdAM2: flaw + c.boreDischarge.value * (leak.openAreaM2 + exposed * exposed * 0.25 * circleM2(boreM)),
    },
  ];
  if (leak.gapM > 1e-9) {
    openings.push({
      law: 'slot',
      perimeterM: leak.perimeterM,
      gapM: leak.gapM,
      lengthM: Math.max(0.002, leak.lengthM),
      cd: c.slotDischarge.value,
    });
  }
  return openings;
}
