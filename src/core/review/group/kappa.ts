/** Agreement of two assessors on the same runs. */
export interface Agreement {
  /** Words used, in a fixed order. */
  readonly categories: readonly string[];
  /** Counts: rows the first assessor's word, columns the second's. */
  readonly table: readonly (readonly number[])[];
  readonly n: number;
  readonly observed: number;
  readonly expected: number;
  /** Cohen's kappa, (observed − expected)/(1 − expected); null where chance alone would agree always, or nothing is there. */
  readonly kappa: number | null;
}

/** Cohen's kappa (1960) of pairs of words, unweighted, with its table. `order` says which words come first. */
export function cohenKappa(
  pairs: readonly (readonly [string, string])[],
  order: readonly string[] = [],
): Agreement {
  const used = new Set(pairs.flat());
  const rest = [...used].filter((word) => !order.includes(word)).sort((a, b) => (a < b ? -1 : 1));
  const categories = [...order.filter((word) => used.has(word)), ...rest];
  const place = new Map(categories.map((word, i) => [word, i]));
  const table = categories.map(() => categories.map(() => 0));
  for (const [a, b] of pairs) table[place.get(a) ?? 0][place.get(b) ?? 0] += 1;
  const n = pairs.length;
  if (n === 0) return { categories, table, n, observed: 0, expected: 0, kappa: null };
  let agreed = 0;
  let byChance = 0;
  categories.forEach((_, i) => {
    agreed += table[i][i];
    const rows = table[i].reduce((sum, count) => sum + count, 0);
    const columns = table.reduce((sum, row) => sum + row[i], 0);
    byChance += rows * columns;
  });
  const observed = agreed / n;
  const expected = byChance / (n * n);
  const kappa = byChance === n * n ? null : (observed - expected) / (1 - expected);
  return { categories, table, n, observed, expected, kappa };
}
