import { GAS_CONSTANT, log10, pow } from '../units/index.ts';
import type { GasProperties } from './network.ts';

/** A jet as the ear meets it. */
export interface JetSound {
  massFlowKgPerS: number;
  /** Effective area of the opening (discharge coefficient times area), m². */
  cdAM2: number;
  /** Pressure it blows into, Pa absolute. */
  downstreamAbsPa: number;
}

/** How the ear is taken. */
export interface Ear {
  distanceM: number;
  /** Sound power over jet power at Mach 1; falls as the fifth power of Mach. */
  efficiency: number;
  /** Peak frequency · diameter / speed of sound. */
  strouhal: number;
  /** Highest frequency that counts, Hz. */
  bandHz: number;
}

/** Sound level nobody can hear, dB: what a jet without flow gives. */
export const SILENCE_DB = -40;

/**
 * Sound level of a leak at the ear, dB re 20 µPa: mechanical power of the jet × efficiency × Mach^5, of which the
 * share below the ear's band counts, spread over a half sphere. The scaling with Mach^5 (power with the eighth of
 * speed) is Lighthill's; the efficiency and the share within the band, 1/(1 + (peak/band)²), are assumed.
 */
export function soundLevelDb(jet: JetSound, gas: GasProperties, temperatureK: number, ear: Ear): number {
  const flow = Math.abs(jet.massFlowKgPerS);
  if (flow <= 0 || jet.cdAM2 <= 0) return SILENCE_DB;
  const soundSpeed = Math.sqrt((gas.heatCapacityRatio * GAS_CONSTANT * temperatureK) / gas.molarMassKgPerMol);
  const densityKgPerM3 = (jet.downstreamAbsPa * gas.molarMassKgPerMol) / (GAS_CONSTANT * temperatureK);
  const speed = Math.min(soundSpeed, flow / (densityKgPerM3 * jet.cdAM2));
  const mach = speed / soundSpeed;
  const mach5 = mach * mach * mach * mach * mach;
  const soundW = ear.efficiency * mach5 * 0.5 * flow * speed * speed * bandShare(jet.cdAM2, soundSpeed, ear);
  const levelDb = 10 * log10(soundW / 1e-12) - 20 * log10(ear.distanceM) - 8;
  return Math.max(SILENCE_DB, levelDb);
}

/** True when a level stands out of the noise of the street. */
export function isAudible(levelDb: number, streetNoiseDb: number): boolean {
  return levelDb >= streetNoiseDb;
}

/** Two or more sounds at one ear, dB. */
export function addLevelsDb(levelsDb: readonly number[]): number {
  let power = 0;
  for (const level of levelsDb) power += pow(10, level / 10);
  return power > 0 ? 10 * log10(power) : SILENCE_DB;
}

function bandShare(cdAM2: number, soundSpeed: number, ear: Ear): number {
  const diameterM = Math.sqrt((4 * cdAM2) / Math.PI);
  const peakOverBand = (ear.strouhal * soundSpeed) / diameterM / ear.bandHz;
  return 1 / (1 + peakOverBand * peakOverBand);
}
