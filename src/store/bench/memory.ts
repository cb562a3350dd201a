import { byChange, type BenchStore, type KeptExercise } from './types.ts';

/** Keeps exercises for as long as the page is open: for browsers that refuse storage. */
export function openBenchMemory(notKept: string): BenchStore {
  const exercises = new Map<string, KeptExercise>();
  return {
    notKept,
    list: async () => byChange([...exercises.values()]),
    find: async (id) => exercises.get(id),
    keep: async (exercise) => void exercises.set(exercise.id, exercise),
    remove: async (id) => void exercises.delete(id),
  };
}
