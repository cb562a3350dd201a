import { act, crewOf } from '../crew.ts';
import type { Hand } from '../hand.ts';
import { makeSafe } from './index.ts';

/** A crew that takes over anywhere, makes safe, and refers back. */
export const makingSafe: Hand = function* (order, first) {
  const crew = crewOf(order, first);
  yield* makeSafe(crew);
  yield* act(crew, { kind: 'refer', reason: 'other' });
};
