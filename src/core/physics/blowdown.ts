import { pow } from '../units/index.ts';

/**
 * Time, s, for a vessel to fall to a share of its absolute pressure through a choked opening, if it gave no heat back:
 * tau·(share^(−(k−1)/(2k)) − 1)·2/(k − 1), tau being what it holds over its first flow. The bound beside our
 * isothermal cells: a real vessel empties between the two (textbook form).
 */
export function adiabaticBlowdownS(tauS: number, pressureShare: number, heatCapacityRatio: number): number {
  const k = heatCapacityRatio;
  return ((pow(pressureShare, -(k - 1) / (2 * k)) - 1) * 2 * tauS) / (k - 1);
}
