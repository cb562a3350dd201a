import type { Problem } from './problem.ts';
import { placeIn } from './text/unsound.ts';

/**
 * First place at which what was read is not all that was written. A set whose entries may all be left out would
 * otherwise take an empty list for itself.
 */
export function lostFrom(written: unknown, read: unknown, where = ''): Problem | null {
  if (typeof written !== 'object' || written === null) return null;
  if (typeof read !== 'object' || read === null || Array.isArray(written) !== Array.isArray(read))
    return { where, says: 'A set of named entries belongs here, not a list.' };
  const kept = new Map(Object.entries(read));
  for (const [key, value] of Object.entries(written)) {
    const lost = lostFrom(value, kept.get(key), placeIn(written, where, key));
    if (lost) return lost;
  }
  return null;
}
