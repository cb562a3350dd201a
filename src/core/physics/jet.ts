import { GAS_CONSTANT } from '../units/index.ts';
import type { GasProperties } from './network.ts';

/**
 * Diameter that passes the same jet at the atmosphere's pressure, m: an opening choked far above it swells by the
 * square root of throat over outside pressure. Assumed, a common notional-nozzle rule.
 */
export function notionalDiameterM(diameterM: number, throatAbsPa: number, outsideAbsPa: number): number {
  return diameterM * Math.sqrt(Math.max(1, throatAbsPa / outsideAbsPa));
}

/**
 * How far along a free jet the gas stays above a fraction, m: 5·d·√(ρair/ρgas)/fraction. A near-field estimate
 * beside the average of the hole.
 */
export function jetReachM(
  diameterM: number,
  airOverGasDensity: number,
  fraction: number,
  factor = 5,
): number {
  return (factor * diameterM * Math.sqrt(airOverGasDensity)) / fraction;
}

/** Gas density, kg/m³ (ideal). */
export function densityKgPerM3(gas: GasProperties, pressureAbsPa: number, temperatureK: number): number {
  return (pressureAbsPa * gas.molarMassKgPerMol) / (GAS_CONSTANT * temperatureK);
}
