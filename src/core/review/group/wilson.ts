/** Two-sided 95 % quantile of the normal distribution. */
const Z95 = 1.959963984540054;

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/**
 * Wilson's score interval for a share, without continuity correction (Wilson 1927; method 3 of Newcombe 1998).
 * Throws RangeError unless 0 ≤ count ≤ of and of > 0.
 */
export function wilson(count: number, of: number, z = Z95): Interval {
  if (!(of > 0) || !(count >= 0) || count > of) throw new RangeError(`no share: ${count} of ${of}`);
  const share = count / of;
  const z2 = z * z;
  const middle = share + z2 / (2 * of);
  const spread = z * Math.sqrt((share * (1 - share)) / of + z2 / (4 * of * of));
  const scale = 1 + z2 / of;
  // Rounding must not push an end past the share itself, nor past what a share can be.
  return {
    low: Math.max(0, Math.min(share, (middle - spread) / scale)),
    high: Math.min(1, Math.max(share, (middle + spread) / scale)),
  };
}
