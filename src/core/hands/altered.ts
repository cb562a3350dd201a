import type { FeltFact } from './felt.ts';
import type { Hand, Step, View, Work } from './hand.ts';
import type { Order } from './order.ts';

/** What becomes of one step that a hand means to do: other steps in its place, or a belief instead of the work. */
export type Instead =
  | { readonly steps: readonly Step[] }
  /** Nothing is done; the hand takes these for what it would have noticed. */
  | { readonly believed: readonly FeltFact[] };

/** One crew's way of doing what another means to do. */
export interface Manner {
  readonly instead: (step: Step, view: View) => Instead;
  /** How what happened feels to it. */
  readonly feels: (fact: FeltFact) => FeltFact;
}

/** The same work done in another manner. What the work is told is what this crew noticed, or believes. */
export function altered(hand: Hand, mannerOf: (order: Order) => Manner): Hand {
  return function* (order, first) {
    const manner = mannerOf(order);
    const work = hand(order, first);
    let view = first;
    for (let next = work.next(); !next.done; next = work.next(view)) {
      view = yield* inManner(manner, next.value, view);
    }
  };
}

function* inManner(manner: Manner, step: Step, before: View): Work<View> {
  const instead = manner.instead(step, before);
  if ('believed' in instead) return { ...before, facts: instead.believed, hindrance: null };
  let view: View = { ...before, facts: [], hindrance: null };
  for (const each of instead.steps) {
    const seen = yield each;
    view = { ...seen, facts: view.facts.concat(seen.facts.map(manner.feels)) };
  }
  return view;
}
