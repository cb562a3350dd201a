import { type Constant, type ConstantName, constants } from '../catalogue/index.ts';
import { ATM_PA, psi, psig, toAbs } from '../units/index.ts';
import { compile } from './compile.ts';
import { fillMol, pressuresAbsPa } from './contents.ts';
import { advanceExcavation, type ExcavationBox, lelShare } from './excavation.ts';
import type { Law, Network } from './network.ts';
import { firstStepS, stepTo } from './solver.ts';
import { type StopperRubber, torqueForWallStressNm } from './stopper.ts';

/** What the model says of three questions of the job, for one set of numbers. */
export interface JobOutcomes {
  /** What a gritty ring costs the first chamber in five minutes of proof at 35 psig, Pa. */
  proofDropPa: number;
  /** Torque at the inner rod that seals the stopper against 35 psig, gland drag included, N·m. */
  stopTorqueNm: number;
  /** Peak of the hole, as a share of LEL, when chamber and service are bled into it by mistake. */
  peakLel: number;
}

/** One assumed number at both ends of its range, the others as they are. */
export interface SensitivityRow {
  name: ConstantName;
  low: JobOutcomes;
  high: JobOutcomes;
}

type Values = (name: ConstantName) => number;

const MINUTES_5_S = 300;
/** The bleed into the hole is followed in slices this long, so that wind and gas meet as they would. */
const SLICE_S = 0.25;
const SLICES = 100;

/** What each assumed number does, across its range, to the proof, the stop and the hole; the still ones are left out. */
export function readSensitivity(): { base: JobOutcomes; rows: SensitivityRow[] } {
  const base = outcomesWith((name) => constants[name].value);
  const rows: SensitivityRow[] = [];
  for (const [name, constant] of Object.entries(constants) as [ConstantName, Constant][]) {
    if (constant.source !== 'assumed') continue;
    const low = outcomesWith((asked) => (asked === name ? constant.low : constants[asked].value));
    const high = outcomesWith((asked) => (asked === name ? constant.high : constants[asked].value));
    if (differ(low, base) || differ(high, base)) rows.push({ name, low, high });
  }
  return { base, rows };
}

function differ(one: JobOutcomes, other: JobOutcomes): boolean {
  return (
    one.proofDropPa !== other.proofDropPa ||
    one.stopTorqueNm !== other.stopTorqueNm ||
    one.peakLel !== other.peakLel
  );
}

function outcomesWith(v: Values): JobOutcomes {
  return { proofDropPa: proofDropPa(v), stopTorqueNm: stopTorqueNm(v), peakLel: peakLel(v) };
}

function valveM3(v: Values): number {
  return v('valveBelowBallM3') + v('valveBallM3') + v('valveAboveBallM3');
}

function proofDropPa(v: Values): number {
  const volumeM3 = v('saddleNetFirstM3') + valveM3(v) + v('testHeadM3');
  const cdAM2 = v('grittyRingCdAM2') + v('weepingJointCdAM2');
  return toAbs(psig(35)) - pressureAfter(v, volumeM3, { law: 'orifice', cdAM2 }, MINUTES_5_S);
}

function stopTorqueNm(v: Values): number {
  const stopper: StopperRubber = {
    boreM: v('stopperBoreM'),
    freeM: v('stopperFreeM'),
    coreM: v('stopperCoreM'),
    lengthM: v('stopperLengthM'),
    shearModulusPa: v('stopperShearModulusPa'),
    screwM: v('stopperScrewM'),
    nutFactor: v('stopperNutFactor'),
  };
  return torqueForWallStressNm(stopper, psi(35) + v('stopperSealMarginPa')) + v('stopperTorqueFeltNm');
}

function peakLel(v: Values): number {
  const serviceM3 = (Math.PI / 4) * v('serviceBoreM') * v('serviceBoreM') * v('serviceLengthM');
  const volumeM3 = v('saddleNetFirstM3') + valveM3(v) + v('rodBarrelNetM3') + serviceM3;
  const bleedM2 = (v('bleedDischarge') * Math.PI * v('bleedDiameterM') * v('bleedDiameterM')) / 4;
  const network = vesselOf(v, volumeM3, { law: 'orifice', cdAM2: bleedM2 });
  const net = compile(network);
  const fill = fillMol(volumeM3, toAbs(psig(35)), 1, network.temperatureK);
  let contents = { airMol: [fill.airMol], gasMol: [fill.gasMol] };
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
