import type { Severity } from '../../../core/faults/index.ts';

/** Steps of the slider. */
export const notches = 100;
/** From this span on, each notch is a share more, not a step more. */
const wide = 50;

const isWide = ({ low, high }: Severity): boolean => low > 0 && high / low >= wide;

/** Where a severity stands on the slider, 0 to its last notch. */
export function notchOf(severity: number, range: Severity): number {
  const { low, high } = range;
  if (high <= low) return 0;
  const share = isWide(range)
    ? Math.log(severity / low) / Math.log(high / low)
    : (severity - low) / (high - low);
  return Math.round(Math.min(1, Math.max(0, share)) * notches);
}

/** The severity at a notch, to three figures, never outside its range. */
export function severityAt(notch: number, range: Severity): number {
  const { low, high } = range;
  if (notch <= 0) return low;
  if (notch >= notches) return high;
  const share = notch / notches;
  const severity = isWide(range) ? low * Math.pow(high / low, share) : low + (high - low) * share;
  return Math.min(high, Math.max(low, Number(severity.toPrecision(3))));
}
