import {
  wholeKit,
  type Action,
  type ActionKind,
  type Fact,
  type Job,
  type KitEntry,
  type KitKind,
} from '../rig/index.ts';

/** The facts of one kind. */
export type FactOf<K extends Fact['fact']> = Extract<Fact, { readonly fact: K }>;
type ActionOf<K extends ActionKind> = Extract<Action, { readonly kind: K }>;

/** Every fact of one kind, in order; only those that answer to `where` when it is given. */
export function every<K extends Fact['fact']>(
  facts: readonly Fact[],
  kind: K,
  where?: (fact: FactOf<K>) => boolean,
): FactOf<K>[] {
  const found: FactOf<K>[] = [];
  for (const fact of facts) if (isKind(fact, kind) && (!where || where(fact))) found.push(fact);
  return found;
}

/** The last fact of one kind, or null. */
export function latest<K extends Fact['fact']>(
  facts: readonly Fact[],
  kind: K,
  where?: (fact: FactOf<K>) => boolean,
): FactOf<K> | null {
  for (let i = facts.length - 1; i >= 0; i -= 1) {
    const fact = facts[i];
    if (fact && isKind(fact, kind) && (!where || where(fact))) return fact;
  }
  return null;
}

/** The last action of one kind that a hand did, with its time in s, or null. */
export function latestDone<K extends ActionKind>(
  facts: readonly Fact[],
  kind: K,
  where?: (action: ActionOf<K>) => boolean,
): { readonly atS: number; readonly action: ActionOf<K> } | null {
  for (let i = facts.length - 1; i >= 0; i -= 1) {
    const fact = facts[i];
    if (fact?.fact !== 'done') continue;
    const action = fact.action;
    if (isAction(action, kind) && (!where || where(action))) return { atS: fact.atS, action };
  }
  return null;
}

/** Facts that came after a time, s (those at that very moment too when `inclusive`). */
export function since(facts: readonly Fact[], atS: number, inclusive = false): readonly Fact[] {
  return facts.filter((fact) => (inclusive ? fact.atS >= atS : fact.atS > atS));
}

/** What kind of piece an id of the kit board names, or null for a piece that is not in the kit. */
export function kindOf(job: Job, pieceId: string | null): KitKind | null {
  if (pieceId === null) return null;
  const named = (piece: KitEntry): boolean => piece.id === pieceId;
  // what comes inside another piece is worked out only for the few ids that are not on the board's own list
  return (job.kit.find(named) ?? wholeKit(job).find(named))?.kind ?? null;
}

/** The size stamped on a piece, or null where it has none. */
export function stampOf(job: Job, pieceId: string): string | null {
  return job.kit.find((piece) => piece.id === pieceId)?.stamped ?? null;
}

/** Whether a fact is of this kind. */
export function isKind<K extends Fact['fact']>(fact: Fact, kind: K): fact is FactOf<K> {
  return fact.fact === kind;
}

function isAction<K extends ActionKind>(action: Action, kind: K): action is ActionOf<K> {
  return action.kind === kind;
}
