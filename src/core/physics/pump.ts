import { GAS_CONSTANT } from '../units/index.ts';

/** Air one stroke of a hand pump moves, mol. */
export function pumpStrokeMol(strokeM3: number, airAbsPa: number, temperatureK: number): number {
  return (airAbsPa * strokeM3) / (GAS_CONSTANT * temperatureK);
}
