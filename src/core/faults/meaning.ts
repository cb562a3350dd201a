import { constants, constantsByTeeSize } from '../catalogue/index.ts';
import {
  AIR,
  driftPaPerK,
  FUEL_GAS,
  nozzleCurve,
  nozzleMassFlowKgPerS,
  type GasProperties,
} from '../physics/index.ts';
import { serviceVolumeM3, type Job } from '../rig/index.ts';
import { ATM_PA, GAS_CONSTANT } from '../units/index.ts';
import type { Cost, Fault } from './fault.ts';

/** In which words a cost is told. */
export type MeaningKey = Cost;

/** What a fault of so much costs in this job: the words to tell it in, and its figures in SI units. */
export interface Meaning {
  readonly says: MeaningKey;
  readonly numbers: Readonly<Record<string, number>>;
}

const c = constants;

/**
 * What a fault costs at that severity, worked out by the model's own laws: pressure a proof loses in a second, gas lost
 * in an hour, the hole's share of the lower explosive limit once it is steady, a gauge's drift, a longer hiss.
 */
export function meaning(fault: Fault, severity: number, job: Job): Meaning {
  const { mainPressureGaugePa, temperatureK } = job.system;
  const upstreamAbsPa = ATM_PA + mainPressureGaugePa;
  switch (fault.costs) {
    case 'firstChamber':
      return loss('firstChamber', severity, firstChamberM3(), job);
    case 'secondChamber':
      return loss('secondChamber', severity, secondChamberM3(job), job);
    case 'ballPasses':
      return {
        says: 'ballPasses',
        numbers: { risesPaPerS: pressureLossPaPerS(severity, aboveBallM3(), job, FUEL_GAS) },
      };
    case 'gasLost':
      return { says: 'gasLost', numbers: { kgPerS: massFlowKgPerS(severity, upstreamAbsPa, job, FUEL_GAS) } };
    case 'holeLel':
      return { says: 'holeLel', numbers: { lelShare: steadyLelShare(severity, job) } };
    case 'drift':
      return { says: 'drift', numbers: { pa: severity * driftPaPerK(upstreamAbsPa, temperatureK) } };
    case 'hiss':
      return { says: 'hiss', numbers: { share: 1 + severity / serviceVolumeM3(job) } };
    case 'asPlanted':
      return { says: 'asPlanted', numbers: { size: severity } };
  }
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

function loss(says: 'firstChamber' | 'secondChamber', cdAM2: number, volumeM3: number, job: Job): Meaning {
  return { says, numbers: { lossPaPerS: pressureLossPaPerS(cdAM2, volumeM3, job, AIR) } };
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
