import { sampleVariance, sum } from 'simple-statistics';

/**
 * Cronbach's alpha, k/(k−1) · (1 − Σ item variances / variance of totals). One row a person, one figure an item.
 * Null where it has no meaning: fewer than two people or two items, or totals that do not vary.
 * Throws RangeError where rows are of unequal length.
 */
export function cronbachAlpha(rows: readonly (readonly number[])[]): number | null {
  const items = rows[0]?.length ?? 0;
  if (rows.some((row) => row.length !== items)) throw new RangeError('rows of unequal length');
  if (rows.length < 2 || items < 2) return null;
  const total = sampleVariance(rows.map((row) => sum([...row])));
  if (total === 0) return null;
  let within = 0;
  for (let i = 0; i < items; i += 1) within += sampleVariance(rows.map((row) => row[i]));
  return (items / (items - 1)) * (1 - within / total);
}
