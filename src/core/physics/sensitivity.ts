import { type Constant, type ConstantName, constants } from '../catalogue/index.ts';
import { ATM_PA, GRAVITY_M_PER_S2, psi, psig, toAbs } from '../units/index.ts';
import { type ChainSet, seatSaddle, type SeatSpring, squeezeUnderGas, turnsForClamp } from './chain.ts';
import { compile } from './compile.ts';
import { fillMol, pressuresAbsPa } from './contents.ts';
import { advanceExcavation, type ExcavationBox, lelShare } from './excavation.ts';
import { circleM2 } from './forces.ts';
import type { Contents, Law, Network } from './network.ts';
import { relaxationShare } from './seals.ts';
import { firstStepS, stepTo } from './solver.ts';
import { holdTorqueNm, type StopperRubber, torqueForWallStressNm } from './stopper.ts';

/** What the model says of the chambers' proofs, of the stop and of the hole, for one set of numbers. */
export interface JobOutcomes {
  /** Turns past snug, each tensioner of two chains, at which a sound ring is shut under 35 psig. */
  firstTurns: number;
  /** The same for the second chamber: where chains and weight of the rig outdo the gas by the gasket's margin. */
  secondTurns: number;
  /** What a gritty ring costs the first chamber in five minutes of proof at 35 psig, Pa. */
  proofDropPa: number;
  /** Torque at the inner rod that seals the stopper against 35 psig, gland drag included, N·m. */
  stopSealNm: number;
  /** Torque that still holds it by friction on an oily bore half an hour later, gland drag included, N·m. */
  stopHoldNm: number;
  /** Peak of the hole, as a share of LEL, when chamber and service are bled into it by mistake. */
  peakLel: number;
}

/** One assumed number at both ends of its range, the others as they are. */
export interface SensitivityRow {
  name: ConstantName;
  low: JobOutcomes;
  high: JobOutcomes;
}

/** The answers as the numbers stand, what each assumed number moves, and the assumed numbers that move none of them. */
export interface Sensitivity {
  base: JobOutcomes;
  rows: SensitivityRow[];
  still: ConstantName[];
}

type Values = (name: ConstantName) => number;

const MINUTES_5_S = 300;
const HALF_HOUR_S = 1800;
/** The bleed into the hole is followed in slices this long, so that wind and gas meet as they would. */
const SLICE_S = 0.25;
const SLICES = 100;

/** What each assumed number does, across its range, to the proof, the stop and the hole. */
export function readSensitivity(): Sensitivity {
  const base = outcomesWith((name) => constants[name].value);
  const rows: SensitivityRow[] = [];
  const still: ConstantName[] = [];
  for (const [name, constant] of Object.entries(constants) as [ConstantName, Constant][]) {
    if (constant.source !== 'assumed') continue;
    const low = outcomesWith((asked) => (asked === name ? constant.low : constants[asked].value));
    const high = outcomesWith((asked) => (asked === name ? constant.high : constants[asked].value));
    if (differ(low, base) || differ(high, base)) rows.push({ name, low, high });
    else still.push(name);
  }
  return { base, rows, still };
}

function differ(one: JobOutcomes, other: JobOutcomes): boolean {
  return (Object.keys(one) as (keyof JobOutcomes)[]).some((key) => one[key] !== other[key]);
}

function outcomesWith(v: Values): JobOutcomes {
  const stopper = stopperOf(v);
  const felt = v('stopperTorqueFeltNm');
  const left = relaxationShare(HALF_HOUR_S, v('relaxationPerDecade'), v('relaxationFromS'));
  return {
    firstTurns: firstTurns(v),
    secondTurns: secondTurns(v),
    proofDropPa: proofDropPa(v),
    stopSealNm: torqueForWallStressNm(stopper, psi(35) + v('stopperSealMarginPa')) + felt,
    stopHoldNm: holdTorqueNm(stopper, psi(35) / left, v('stopperFrictionOily')) + felt,
    peakLel: peakLel(v),
  };
}

function chainsOf(v: Values): ChainSet {
  return {
    legs: 4,
    legStiffnessNPerM: v('chainLegStiffnessNPerM'),
    advancePerTurnM: v('tensionerAdvanceM'),
    spanM: v('chainSpanM'),
  };
}

function ringOf(v: Values): SeatSpring {
  return {
    stiffnessNPerM: v('seatRingStiffnessNPerM'),
    thicknessM: v('seatRingRubberM'),
    stopSqueeze: v('seatRingStopSqueeze'),
    outerDiameterM: v('seatRingOuterM'),
  };
}

/** The ring is shut where its squeeze, less what gas gives back, is what the face asks for. */
function firstTurns(v: Values): number {
  const chains = chainsOf(v);
  const ring = ringOf(v);
  const endLoadN = psi(35) * circleM2(v('seatRingEndLoadM'));
  const givenBack = -squeezeUnderGas(seatSaddle(chains, ring, 0, 0), chains, ring, endLoadN);
  const squeeze = v('sealSqueezeSound') + givenBack;
  return turnsForClamp(chains, ring, squeeze * ring.thicknessM * ring.stiffnessNPerM);
}

function secondTurns(v: Values): number {
  const endLoadN = psi(35) * circleM2(v('cupGasketEndLoadM'));
  const clampN = v('cupGasketMargin') * endLoadN - v('rigMassKg') * GRAVITY_M_PER_S2;
  return turnsForClamp(chainsOf(v), ringOf(v), Math.max(0, clampN));
}

function valveM3(v: Values): number {
  return v('valveBelowBallM3') + v('valveBallM3') + v('valveAboveBallM3');
}

function proofDropPa(v: Values): number {
  const volumeM3 = v('saddleNetFirstM3') + valveM3(v) + v('testHeadM3');
  const cdAM2 = v('grittyRingCdAM2') + v('weepingJointCdAM2');
  return toAbs(psig(35)) - pressureAfter(v, volumeM3, { law: 'orifice', cdAM2 }, MINUTES_5_S);
}

function stopperOf(v: Values): StopperRubber {
  return {
    boreM: v('stopperBoreM'),
    freeM: v('stopperFreeM'),
    coreM: v('stopperCoreM'),
    lengthM: v('stopperLengthM'),
    shearModulusPa: v('stopperShearModulusPa'),
    screwM: v('stopperScrewM'),
    nutFactor: v('stopperNutFactor'),
  };
}

function peakLel(v: Values): number {
  const serviceM3 = circleM2(v('serviceBoreM')) * v('serviceLengthM');
  const volumeM3 = v('saddleNetFirstM3') + valveM3(v) + v('rodBarrelNetM3') + serviceM3;
  const bleedM2 = v('bleedDischarge') * circleM2(v('bleedDiameterM'));
  const network = vesselOf(v, volumeM3, { law: 'orifice', cdAM2: bleedM2 });
  const net = compile(network);
  const fill = fillMol(volumeM3, toAbs(psig(35)), 1, network.temperatureK);
  let contents: Contents = { airMol: [fill.airMol], gasMol: [fill.gasMol] };
  let stepS = firstStepS(net, 0, contents);
  let box: ExcavationBox = {
    volumeM3: v('holeVolumeM3'),
    gasFraction: 0,
    freshAirM3PerS: v('holeAirLightM3PerS'),
    mixingFactor: v('holeMixingFactor'),
    temperatureK: network.temperatureK,
    pressureAbsPa: ATM_PA,
  };
  let peak = 0;
  for (let i = 0; i < SLICES; i += 1) {
    const step = stepTo(net, i * SLICE_S, contents, stepS, (i + 1) * SLICE_S);
    const inflow = { airMol: step.linkAirMol[0], gasMol: step.linkGasMol[0] };
    box = advanceExcavation(box, inflow, SLICE_S).box;
    peak = Math.max(peak, box.gasFraction);
    contents = step.contents;
    stepS = step.nextStepS;
  }
  return lelShare(peak, v('lelNfpaFraction'));
}

function vesselOf(v: Values, volumeM3: number, opening: Law): Network {
  return {
    cells: [{ id: 'vessel', volumeM3 }],
    boundaries: [{ id: 'air', pressureAbsPa: ATM_PA, gasFraction: 0 }],
    links: [{ id: 'opening', from: 'vessel', to: 'air', ...opening }],
    temperatureK: v('siteTemperatureK'),
    gas: {
      molarMassKgPerMol: v('gasMolarMassKgPerMol'),
      heatCapacityRatio: v('gasHeatCapacityRatio'),
      viscosityPaS: v('gasViscosityPaS'),
    },
    air: {
      molarMassKgPerMol: v('airMolarMassKgPerMol'),
      heatCapacityRatio: v('airHeatCapacityRatio'),
      viscosityPaS: v('airViscosityPaS'),
    },
  };
}

function pressureAfter(v: Values, volumeM3: number, opening: Law, durationS: number): number {
  const network = vesselOf(v, volumeM3, opening);
  const net = compile(network);
  const fill = fillMol(volumeM3, toAbs(psig(35)), 0, network.temperatureK);
  const start = { airMol: [fill.airMol], gasMol: [fill.gasMol] };
  return pressuresAbsPa(net, stepTo(net, 0, start, firstStepS(net, 0, start), durationS).contents)[0];
}
