import type { FactOf } from './recall.ts';

type Look = FactOf<'leak.looked'>;

/**
 * The last look under leak fluid that tells anything, or null. Bubbles always tell; quiet tells only where the look
 * `counts`: watched long enough, under pressure enough.
 */
export function lastTelling(looks: readonly Look[], counts: (look: Look) => boolean): Look | null {
  return looks.filter((look) => look.bubbles !== 'none' || counts(look)).pop() ?? null;
}
