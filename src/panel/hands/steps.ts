import { turnsOf } from '../../text/index.ts';
import type { Action } from '../../core/rig/index.ts';
import type { Offer } from './offer.ts';

/** Steps of a turn a hand can tell apart. */
export const fineTurns = [1 / 24, 1 / 12, 1 / 4, 1] as const;
export const coarseTurns = [1 / 6, 1 / 4, 1 / 2, 1, 4] as const;
export const legTurns = [1 / 24, 1 / 12, 1 / 6] as const;
export const slackTurns = [1 / 12, 1, 3] as const;

/** A button for each step of a turn. The action is made from the turns with their sign. */
export function turnOffers(
  turns: readonly number[],
  sign: 1 | -1,
  action: (turns: number) => Action,
  name: (words: string) => string = (words) => words,
): Offer[] {
  return turns.map((size) => ({ name: name(turnsOf(size)), action: action(sign * size) }));
}
