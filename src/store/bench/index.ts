import { openBenchDatabase } from './database.ts';
import { openBenchMemory } from './memory.ts';
import type { BenchStore } from './types.ts';

export { openBenchMemory } from './memory.ts';
export { freeName, keptFrom, takeInExercise } from './takeIn.ts';
export type { BenchStore, KeptExercise, KeptProof } from './types.ts';

let opened: Promise<BenchStore> | null = null;

/** The exercises of this browser's own. Falls back to memory, saying why, where it refuses to keep anything. */
export function openBench(): Promise<BenchStore> {
  opened ??= openBenchDatabase().catch((reason: unknown) =>
    openBenchMemory(reason instanceof Error ? reason.message : String(reason)),
  );
  return opened;
}
