import type { Action, ActionKind } from '../actions.ts';
import type { FactBody } from '../facts.ts';
import type { Hindrance } from '../hindrance.ts';
import type { Sense } from '../sense.ts';
import type { KitPiece, RigState } from '../state.ts';

/** What came of a hand's act: a new rig with what happened, or why the hand could not. */
export type Outcome = Hindrance | Moved;
export interface Moved {
  readonly rig: RigState;
  readonly facts: readonly FactBody[];
}

export type Act<K extends ActionKind> = (
  rig: RigState,
  action: Extract<Action, { kind: K }>,
  sense: Sense,
) => Outcome;

/** One table: what each action does to the rig. */
export type Acts<K extends ActionKind> = { readonly [P in K]: Act<P> };

export function did(rig: RigState, ...facts: FactBody[]): Moved {
  return { rig, facts };
}

export function withPiece(rig: RigState, id: string, change: Partial<KitPiece>): RigState {
  return { ...rig, kit: { ...rig.kit, [id]: { ...rig.kit[id], ...change } } };
}

/** Piece that lies ready on the board, or why it does not. */
export function onBoard(rig: RigState, id: string): KitPiece | Hindrance {
  const piece = rig.kit[id];
  if (piece === undefined || piece.where !== 'board') return 'notOnBoard';
  return piece.rejected ? 'rejected' : piece;
}

/** Float dust from turning and counting back is taken off, so that zero is zero. */
export function tidy(value: number): number {
  const rounded = Math.floor(value * 1e9 + 0.5) / 1e9;
  return rounded === 0 ? 0 : rounded;
}
