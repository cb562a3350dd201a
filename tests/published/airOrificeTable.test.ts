import { describe, expect, it } from 'vitest';
import { nozzleCurve, nozzleMassFlowKgPerS } from '../../src/core/physics/index.ts';
import { CUBIC_FOOT_M3, fahrenheitK, GAS_CONSTANT, INCH_M, psi } from '../../src/core/units/index.ts';
import { comparing } from './compare.ts';

/*
 * Source: handbook table "discharge of air through an orifice", cfm of free air at 14.7 psia and 70 °F, coefficient
 * 1.0; read in a secondary copy. The table computes 1 to 15 psig adiabatically and above by Moss, whose 0.5303 lies
 * 0.3 % under the exact 0.532, and prints three figures. Tolerance 0.6 %.
 */
const INCHES = [1 / 16, 1 / 8, 1 / 4, 1 / 2, 3 / 4, 1];
const TABLE: readonly [number, readonly number[]][] = [
  [1, [0.45, 1.8, 7.18, 28.7, 64.7, 115]],
  [5, [0.993, 3.97, 15.9, 63.5, 143, 254]],
  [12, [1.52, 6.07, 24.3, 97.0, 218, 388]],
  [15, [1.68, 6.72, 26.9, 108, 242, 430]],
  [30, [2.53, 10.1, 40.5, 162, 365, 648]],
  [50, [3.66, 14.7, 58.6, 235, 528, 938]],
  [60, [4.23, 16.9, 67.6, 271, 609, 1082]],
  [100, [6.49, 26.0, 104, 415, 934, 1661]],
];
const hold = comparing(
  'Handbook table of air through a round orifice',
  'coefficient 1.0, 14.7 psia, 70 °F',
  'copy',
  'cfm',
);
const AIR = { molarMassKgPerMol: 0.0289647, temperatureK: fahrenheitK(70) };
const FREE = (psi(14.7) * AIR.molarMassKgPerMol) / (GAS_CONSTANT * AIR.temperatureK);

describe('air through a round orifice', () => {
  const cells = TABLE.flatMap(([psig, row]) =>
    row.map((cfm, i): [number, number, number] => [psig, INCHES[i], cfm]),
  );

  it.each(cells)('at %s psig through %s in passes %s cfm, within 0.6 %%', (psig, inch, cfm) => {
    const d = inch * INCH_M;
    const flow = nozzleMassFlowKgPerS(
      nozzleCurve(1.4),
      { cdAM2: (Math.PI * d * d) / 4, upstreamAbsPa: psi(14.7 + psig), downstreamAbsPa: psi(14.7) },
      AIR,
    );
    const ours = (flow / FREE / CUBIC_FOOT_M3) * 60;
    hold(`${psig} psig through ${inch} in`, ours, cfm, { share: 0.006 });
  });

  it('has 48 cells', () => {
    expect(cells).toHaveLength(48);
  });
});
