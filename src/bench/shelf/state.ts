import type { KeptExercise } from '../../store/index.ts';

/** How far an exercise has come; only a proved one is for a class. */
export type ExerciseState = 'unsound' | 'draft' | 'stale' | 'refused' | 'proved';

/** The wall clock, as it is kept beside an exercise. */
export const momentNow = (): string => new Date().toISOString();

/** Reads the state of an exercise; `digest` is that of its document as it stands. */
export function stateOf({ workable, proof }: KeptExercise, digest: string): ExerciseState {
  if (!workable) return 'unsound';
  if (proof === null) return 'draft';
  if (proof.digest !== digest) return 'stale';
  return proof.proof.proved ? 'proved' : 'refused';
}
