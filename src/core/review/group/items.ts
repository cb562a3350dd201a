import { mean } from 'simple-statistics';

/** Ebel's bands of discrimination. Negative: the better do worse, so look at the item itself first. */
export const ebelBands = ['veryGood', 'good', 'marginal', 'poor', 'negative'] as const;
export type EbelBand = (typeof ebelBands)[number];

/** The band of a discrimination index: ≥ 0.40, 0.30–0.39, 0.20–0.29, ≤ 0.19, below 0. */
export function ebelBand(discrimination: number): EbelBand {
  // An index is told to two decimals, and banded as told.
  const told = Math.floor(discrimination * 100 + 0.5) / 100;
  if (told >= 0.4) return 'veryGood';
  if (told >= 0.3) return 'good';
  if (told >= 0.2) return 'marginal';
  return told >= 0 ? 'poor' : 'negative';
}

/** Share of the group in each of the two outer groups (Kelley 1939). */
const OUTER_SHARE = 0.27;

/** How one item does in a group: passed or not by each, beside each one's total. */
export interface ItemFigures {
  /** Share of all who got it right. */
  readonly difficulty: number;
  /** Share right in the upper group less share right in the lower; null where there are no two groups. */
  readonly discrimination: number | null;
  readonly band: EbelBand | null;
  readonly upper: number | null;
  readonly lower: number | null;
  /** People in each outer group. */
  readonly outer: number;
}

/**
 * Difficulty and discrimination of one item. Outer groups of 27 %, at least one person each; people with equal totals
 * stay in the order given. Throws RangeError for an empty group.
 */
export function itemFigures(
  people: readonly { readonly right: boolean; readonly total: number }[],
): ItemFigures {
  if (people.length === 0) throw new RangeError('nobody in the group');
  const right = (group: typeof people): number => mean(group.map((one) => (one.right ? 1 : 0)));
  const difficulty = right(people);
  const outer = Math.max(1, Math.floor(people.length * OUTER_SHARE + 0.5));
  if (people.length < 2 * outer)
    return { difficulty, discrimination: null, band: null, upper: null, lower: null, outer: 0 };
  const ranked = [...people].sort((a, b) => b.total - a.total);
  const upper = right(ranked.slice(0, outer));
  const lower = right(ranked.slice(-outer));
  const discrimination = upper - lower;
  return { difficulty, discrimination, band: ebelBand(discrimination), upper, lower, outer };
}
