import type { Action, Hindrance } from '../rig/index.ts';
import type { Readings } from '../run/index.ts';
import type { FeltFact } from './felt.ts';
import type { Order } from './order.ts';
import type { RigSeen } from './seen.ts';

/** The next thing a hand does: an act, or so many seconds of waiting. */
export type Step = Action | { readonly waitS: number };

/** What a hand has to go by after each step. */
export interface View {
  readonly readings: Readings;
  /** The rig before its eyes. */
  readonly rig: RigSeen;
  /** What was noticed since the step before. */
  readonly facts: readonly FeltFact[];
  /** Why the last act could not be done, or null. */
  readonly hindrance: Hindrance | null;
}

/** A piece of work: steps out, views in. */
export type Work<T = void> = Generator<Step, T, View>;

/** A crew that performs an exercise from its order alone. */
export type Hand = (order: Order, first: View) => Work;
