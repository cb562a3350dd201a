import { describe, it } from 'vitest';
import { driftPaPerK, heldPressureAbsPa } from '../../src/core/physics/index.ts';
import { fahrenheitK, psi, toPsi } from '../../src/core/units/index.ts';
import { comparing } from './compare.ts';

/*
 * Source: UFGS gas-distribution test clause, P2g = (P1g + 14.7)(T2 + 460)/(T1 + 460) − 14.7. It rounds the absolute
 * zero to −460 °F; we use −459.67, worth 0.001 psi here. Tolerance 0.01 psi.
 */
const held = comparing(
  'UFGS gas distribution, test clause',
  'pressure corrected for temperature, 70 to 60 °F',
  'read',
  'psig',
);
const drifts = comparing(
  'UFGS gas distribution, test clause',
  'drift at 90 psig',
  'arithmetic',
  'psi/°F, Pa/K',
);
const cooled = (psig: number): number =>
  toPsi(heldPressureAbsPa(psi(psig + 14.7), fahrenheitK(70), fahrenheitK(60))) - 14.7;

describe('a held pressure that cools from 70 to 60 °F', () => {
  it.each([
    [90, 88.02],
    [60, 58.59],
  ])('falls from %s to %s psig', (from, to) => {
    held(`from ${from} psig`, cooled(from), to, { absolute: 0.01 });
  });

  it('drifts 0.198 psi/°F at 90 psig, 2.45 kPa/K', () => {
    const drift = driftPaPerK(psi(104.7), fahrenheitK(70));
    drifts('psi/°F', toPsi(drift) / 1.8, 0.198, { absolute: 5e-4 });
    drifts('Pa/K', drift, 2450, { absolute: 5 });
  });
});
