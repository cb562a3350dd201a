import { Unusable } from './io.ts';

/** A whole number that was typed. Throws Unusable. */
export function countOf(text: string, least = 1): number {
  const count = Number(text);
  if (!Number.isInteger(count) || count < least)
    throw new Unusable(`A whole number from ${least} on is needed, not ${text}.`);
  return count;
}
