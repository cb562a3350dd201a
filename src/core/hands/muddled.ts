import type { Action, ActionKind } from '../rig/index.ts';
import { drawUniform, seedGenerator, type Generator } from '../units/index.ts';
import { believed } from './believed.ts';
import type { FeltFact } from './felt.ts';
import type { Hand, Step, View, Work } from './hand.ts';
import type { Order } from './order.ts';
import { steady } from './steady/index.ts';

/** How often it takes the next thing first, where it could (assumed). */
const SWAPS_SHARE = 0.2;

/** Acts whose outcome nothing later hangs on, so that they can be put off for one step. */
const canWait: ReadonlySet<ActionKind> = new Set<ActionKind>([
  'site.do',
  'clean',
  'mark',
  'hose.lead',
  'sealant.apply',
  'valve.turn',
  'vent.turn',
  'bleed.turn',
  'rod.hold',
  'rod.move',
  'collar.set',
  'chain.tap',
  'piece.place',
  'piece.remove',
  'bond.clamp',
  'tee.trim',
  'service.purge',
  'gauge.zero',
  'sign',
]);

/** A crew that knows every step and swaps neighbours now and then, by a seed. What cannot be done so is done as due. */
export function muddledBy(seed: number): Hand {
  return function* (order, first) {
    const work = steady(order, first);
    let chance = seedGenerator(seed);
    let view = first;
    let next = work.next();
    while (!next.done) {
      const due: Step = next.value;
      const swap = mayWait(due, order, view);
      const drawn: { value: number; generator: Generator } = drawUniform(chance);
      chance = drawn.generator;
      if (swap === null || 'waitS' in due || drawn.value >= SWAPS_SHARE) {
        view = yield due;
        next = work.next(view);
        continue;
      }
      next = work.next({ ...view, facts: swap, hindrance: null });
      view = yield* theOtherFirst(due, next.done ? null : next.value);
      if (!next.done) next = work.next(view);
    }
  };
}

/** The muddled crew that the command line drives. */
export const muddled: Hand = muddledBy(20517);

/** What the work is told of an act that is put off, or null where it cannot be. */
function mayWait(step: Step, order: Order, view: View): readonly FeltFact[] | null {
  if ('waitS' in step) return null;
  return canWait.has(step.kind) ? [] : believed(step, order, view);
}

/** The later step, then the earlier; one that cannot be done yet is tried again once the other is done. */
function* theOtherFirst(earlier: Action, later: Step | null): Work<View> {
  if (later === null) return yield earlier;
  const tried = yield later;
  const caughtUp = yield earlier;
  if (tried.hindrance === null) return { ...caughtUp, facts: tried.facts, hindrance: null };
  return yield later;
}
