import { constants, constantsByTeeSize } from '../catalogue/index.ts';
import {
  AIR,
  driftPaPerK,
  FUEL_GAS,
  nozzleCurve,
  nozzleMassFlowKgPerS,
  selfEnergisedLeakCdAM2,
  type GasProperties,
} from '../physics/index.ts';
import { serviceVolumeM3, type Job } from '../rig/index.ts';
import { ATM_PA, GAS_CONSTANT, psi } from '../units/index.ts';
import type { Cost, Fault, SeverityUnit } from './fault.ts';

/** In which words a cost is told. */
export type MeaningKey = Exclude<Cost, 'jointFlaw'>;

/** What a fault of so much costs in this job: the words to tell it in, and its figures in SI units. */
export interface Meaning {
  readonly says: MeaningKey;
  readonly numbers: Readonly<Record<string, number>>;
  /** What its severity is counted in; null where it has no degrees. */
  readonly unit: SeverityUnit | null;
}

const c = constants;

/**
 * What a fault costs at that severity, worked out by the model's own laws: pressure a proof loses in a second, gas lost
 * in a second, the hole's share of the lower explosive limit once it is steady, a gauge's drift, a longer hiss. A few
 * formulas: quick enough to be asked at every move of a slider.
 */
export function meaning(fault: Fault, severity: number, job: Job, on: string | null = null): Meaning {
  const says = wordedAs(fault.costs, job, on);
  return { says, numbers: figures(says, fault, severity, job), unit: fault.severity?.unit ?? null };
}

/** A joint above the ball is in no proof: it lets out what stands over the open valve. */
function wordedAs(costs: Cost, { kit }: Job, on: string | null): MeaningKey {
  if (costs !== 'jointFlaw') return costs;
  const kind = kit.find(({ id }) => id === on)?.kind;
  return kind === 'rodBarrel' || kind === 'sightCap' ? 'gasLost' : 'bothChambers';
}

function figures(says: MeaningKey, fault: Fault, severity: number, job: Job): Meaning['numbers'] {
  const { mainPressureGaugePa, temperatureK } = job.system;
  const upstreamAbsPa = ATM_PA + mainPressureGaugePa;
  const ring = (flawCdAM2: number): number =>
    energised(flawCdAM2, c.oRingStressPa.value, mainPressureGaugePa);
  switch (says) {
    case 'firstChamber':
      return { firstPaPerS: pressureLossPaPerS(severity, firstChamberM3(), job, AIR) };
    case 'secondChamber': {
      const cup = energised(severity, c.cupGasketStressPa.value, mainPressureGaugePa);
      return { secondPaPerS: pressureLossPaPerS(cup, secondChamberM3(job), job, AIR) };
    }
    case 'bothChambers':
      return inBoth(fault.id === 'oRingNicked' ? ring(severity) : severity, job);
    case 'looseJoint':
      return { size: severity, ...inBoth(ring(c.looseJointCdAM2.value), job) };
    case 'plugPasses':
      return { risesPaPerS: pressureLossPaPerS(severity, firstChamberM3(), job, FUEL_GAS) };
    case 'ballPasses':
      return { risesPaPerS: pressureLossPaPerS(severity, aboveBallM3(), job, FUEL_GAS) };
    case 'gasLost':
      return { kgPerS: massFlowKgPerS(severity, upstreamAbsPa, job, FUEL_GAS) };
    case 'holeLel':
      return { lelShare: steadyLelShare(severity, job) };
    case 'drift':
      return { pa: severity * driftPaPerK(upstreamAbsPa, temperatureK), size: severity };
    case 'hiss':
      return { share: 1 + severity / serviceVolumeM3(job) };
    case 'asPlanted':
      return { size: severity, mainGaugePa: mainAfter(fault, severity, job) };
  }
}

function inBoth(cdAM2: number, job: Job): Meaning['numbers'] {
  return {
    firstPaPerS: pressureLossPaPerS(cdAM2, firstChamberM3(), job, AIR),
    secondPaPerS: pressureLossPaPerS(cdAM2, secondChamberM3(job), job, AIR),
  };
}

/** A flaw of a ring or gasket at the main's pressure; its size is given at the reference the rig knows it by. */
function energised(flawCdAM2: number, fittedStressPa: number, gaugePa: number): number {
  return selfEnergisedLeakCdAM2(flawCdAM2, fittedStressPa, gaugePa, psi(35));
}

/** Where the main comes to stand with the fault in the job, Pa gauge. */
function mainAfter(fault: Fault, severity: number, job: Job): number {
  const { main, mainPressureGaugePa } = fault.plant(job, severity, null, 0).system;
  return main?.by === 'schedule' ? main.points[main.points.length - 1].gaugePa : mainPressureGaugePa;
}

function massFlowKgPerS(cdAM2: number, upstreamAbsPa: number, job: Job, gas: GasProperties): number {
  const opening = { cdAM2, upstreamAbsPa, downstreamAbsPa: ATM_PA };
  const { temperatureK } = job.system;
  return nozzleMassFlowKgPerS(nozzleCurve(gas.heatCapacityRatio), opening, { molarMassKgPerMol: gas.molarMassKgPerMol, temperatureK }); // prettier-ignore
}

/** What a shut volume loses at main pressure through an opening, Pa/s. */
function pressureLossPaPerS(cdAM2: number, volumeM3: number, job: Job, gas: GasProperties): number {
  const kgPerS = massFlowKgPerS(cdAM2, ATM_PA + job.system.mainPressureGaugePa, job, gas);
  return ((kgPerS / gas.molarMassKgPerMol) * GAS_CONSTANT * job.system.temperatureK) / volumeM3;
}

/** Saddle, valve and test head: everything under proof at the first seat, m³. */
function firstChamberM3(): number {
  return c.saddleNetFirstM3.value + valveM3() + c.testHeadM3.value;
}

/** Saddle, spools, valve and test head: everything under proof at the second seat, m³. */
function secondChamberM3(job: Job): number {
  const saddle = constantsByTeeSize.saddleNetSecondM3[job.workpiece.teeSize].value;
  return saddle + c.spoolLowerM3.value + c.spoolUpperM3.value + valveM3() + c.testHeadM3.value;
}

function valveM3(): number {
  return c.valveBelowBallM3.value + c.valveBallM3.value + c.valveAboveBallM3.value;
}

/** What stands above the ball with the rod barrel on, m³. */
function aboveBallM3(): number {
  return c.valveAboveBallM3.value + c.rodBarrelNetM3.value;
}

/** Share of the lower explosive limit in the hole once as much leaves as comes in. */
function steadyLelShare(molPerS: number, job: Job): number {
  const { freshAirM3PerS, lelFraction } = job.site;
  const gasM3PerS = (molPerS * GAS_CONSTANT * job.system.temperatureK) / ATM_PA;
  const airM3PerS = c.holeMixingFactor.value * freshAirM3PerS;
  return gasM3PerS / (gasM3PerS + airM3PerS) / lelFraction;
}
