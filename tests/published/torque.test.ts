import { describe, expect, it } from 'vitest';
import { forceForTorqueN, tensionerTorqueNm, torqueForForceNm } from '../../src/core/physics/index.ts';
import { INCH_M, POUND_FOOT_NM, POUND_FORCE_N } from '../../src/core/units/index.ts';
import { comparing } from './compare.ts';

/*
 * Source: fastener engineering tables, worked example 3/8-16 grade 5, 4,940 lb: 30 lb·ft at K 0.20 and 23 at 0.15 (read
 * in a secondary copy, rounded to whole lb·ft). Tolerance 4 %.
 */
const hold = comparing('Fastener engineering tables', '3/8-16 grade 5 at 4,940 lb', 'copy', 'lb·ft');

describe('T = K F d', () => {
  it.each([
    [0.2, 30],
    [0.15, 23],
  ])('with K %s asks %s lb·ft', (k, printed) => {
    const ours = torqueForForceNm(4940 * POUND_FORCE_N, 0.375 * INCH_M, k) / POUND_FOOT_NM;
    hold(`K ${k}`, ours, printed, { share: 0.04 });
  });

  it('goes back the way it came, and a tensioner with two threads asks twice', () => {
    expect(forceForTorqueN(torqueForForceNm(1000, 0.0127, 0.2), 0.0127, 0.2)).toBeCloseTo(1000, 9);
    expect(tensionerTorqueNm(1000, 0.0127, 0.2)).toBeCloseTo(2 * torqueForForceNm(1000, 0.0127, 0.2), 12);
  });
});
