import { describe, expect, it } from 'vitest';
import { cohenKappa } from '../../src/core/review/index.ts';
import { comparing } from './compare.ts';

/* Cohen, Educational and Psychological Measurement 20 (1960) 37; the worked example of teaching pages. */
const kappa = comparing('Cohen 1960', 'agreement of two, worked example of teaching pages', 'copy', '1');
const times = (n: number, a: string, b: string) => Array.from({ length: n }, () => [a, b] as const);

describe('Cohen’s kappa', () => {
  it('of 20 and 15 agreed, 5 and 10 not, is 0.40', () => {
    const pairs = [
      ...times(20, 'yes', 'yes'),
      ...times(5, 'yes', 'no'),
      ...times(10, 'no', 'yes'),
      ...times(15, 'no', 'no'),
    ];
    const ours = cohenKappa(pairs, ['yes', 'no']);
    kappa('observed agreement', ours.observed, 0.7, { absolute: 1e-12 });
    kappa('agreement by chance', ours.expected, 0.5, { absolute: 1e-12 });
    kappa('kappa', ours.kappa ?? NaN, 0.4, { absolute: 1e-12 });
    expect(ours.table).toEqual([
      [20, 5],
      [10, 15],
    ]);
  });

  it('has no value where chance alone would always agree, or nothing was decided by both', () => {
    expect(cohenKappa(times(7, 'yes', 'yes')).kappa).toBeNull();
    expect(cohenKappa([]).kappa).toBeNull();
  });

  it('is 1 for full agreement and below 0 for less than chance', () => {
    expect(cohenKappa([...times(3, 'a', 'a'), ...times(4, 'b', 'b'), ...times(5, 'c', 'c')]).kappa).toBe(1);
    expect(cohenKappa([...times(5, 'a', 'b'), ...times(5, 'b', 'a')]).kappa).toBe(-1);
  });
});
