import { describe, expect, it } from 'vitest';
import { ebelBand, itemFigures } from '../../src/core/review/index.ts';
import { comparing } from './compare.ts';

/* Item difficulty and discrimination as course pages print them, outer groups of 27 % after Kelley 1939. */
const items = comparing('Ebel, Kelley', 'difficulty and discrimination, course pages', 'copy', '1');

/** A hundred people of totals 100 … 1, of whom those named by their rank (from 0, the best first) are right. */
const hundred = (right: (rank: number) => boolean) =>
  Array.from({ length: 100 }, (_, rank) => ({ right: right(rank), total: 100 - rank }));

describe('one item in a group', () => {
  it('that 75 of 100 get right has a difficulty of 0.75', () => {
    items('75 of 100 right', itemFigures(hundred((rank) => rank < 75)).difficulty, 0.75, { absolute: 1e-12 });
  });

  it('that 60 % of the upper and 20 % of the lower group get right discriminates by 0.40', () => {
    // Groups of ten out of thirty-seven: 27 %, of whom six and two are right.
    const people = Array.from({ length: 37 }, (_, rank) => ({
      right: rank < 6 || rank > 34,
      total: 37 - rank,
    }));
    const ours = itemFigures(people);
    expect([ours.outer, ours.upper, ours.lower]).toEqual([10, 0.6, 0.2]);
    items('0.60 − 0.20', ours.discrimination ?? NaN, 0.4, { absolute: 1e-12 });
    expect(ours.band).toBe('veryGood');
  });

  it('is compared in outer groups of 27 in a hundred', () => {
    items('people in each outer group', itemFigures(hundred(() => true)).outer, 27, { absolute: 0 });
  });

  it('of a group too small for two outer groups has no discrimination', () => {
    expect(itemFigures([{ right: true, total: 1 }]).discrimination).toBeNull();
    expect(() => itemFigures([])).toThrow(RangeError);
  });
});

describe('Ebel’s bands', () => {
  it.each([
    [0.4, 'veryGood'],
    [0.395, 'veryGood'],
    [0.394, 'good'],
    [0.3, 'good'],
    [0.29, 'marginal'],
    [0.2, 'marginal'],
    [0.19, 'poor'],
    [0, 'poor'],
    [-0.01, 'negative'],
  ])('%s is %s', (discrimination, band) => {
    expect(ebelBand(discrimination)).toBe(band);
  });
});
