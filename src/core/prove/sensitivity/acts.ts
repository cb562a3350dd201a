import type { HoldPointId } from '../../rig/index.ts';
import type { RecordEntry } from '../../run/index.ts';
import { keyOf } from './keys.ts';

/** One deliberate act of a run: consecutive entries of one key, as pulls in turn on four tensioners are one act. */
export interface Act {
  readonly key: string;
  /** Its entries: from this index up to and without `to`. */
  readonly from: number;
  readonly to: number;
  /** The hold point signed next, towards which it works; null after the last. */
  readonly toward: HoldPointId | null;
  /** Which act of this key in the run it is, counted from 1, and how many there are. */
  readonly occurrence: number;
  readonly of: number;
  /** Which of this key towards the same hold point it is, counted from 1; and from the last, counted from 1. */
  readonly inStage: number;
  readonly fromEnd: number;
}

/** The acts of a run, in order. Every entry belongs to one of them. */
export function actsOf(entries: readonly RecordEntry[]): readonly Act[] {
  const keys = entries.map(({ action }) => keyOf(action));
  const starts = keys.flatMap((key, i) => (i === 0 || key !== keys[i - 1] ? [i] : []));
  const seen = new Map<string, number>();
  const staged = new Map<string, number>();
  const acts = starts.map((from, i) => {
    const key = keys[from];
    const occurrence = (seen.get(key) ?? 0) + 1;
    seen.set(key, occurrence);
    const toward = signedNext(entries, from);
    const inStage = (staged.get(stageKey({ toward, key })) ?? 0) + 1;
    staged.set(stageKey({ toward, key }), inStage);
    return { key, from, to: starts[i + 1] ?? keys.length, toward, occurrence, inStage };
  });
  return acts.map((act) => ({
    ...act,
    of: seen.get(act.key) ?? act.occurrence,
    fromEnd: (staged.get(stageKey(act)) ?? act.inStage) - act.inStage + 1,
  }));
}

function stageKey({ toward, key }: Pick<Act, 'toward' | 'key'>): string {
  return `${toward}:${key}`;
}

function signedNext(entries: readonly RecordEntry[], from: number): HoldPointId | null {
  for (const { action } of entries.slice(from)) if (action.kind === 'sign') return action.holdPoint;
  return null;
}
