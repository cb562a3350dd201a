import type { Proof } from '../../core/prove/index.ts';
import type { Scenario } from '../../core/scenario/index.ts';

/** What a proof found, and of which document: another digest, and it no longer counts. */
export interface KeptProof {
  /** SHA-256 of the document's canonical text. */
  readonly digest: string;
  readonly proof: Proof;
}

/** An exercise of one's own as the bench keeps it. */
export interface KeptExercise {
  /** The document's own name, by which practice opens it. */
  readonly id: string;
  /** May be a draft: shaped like an exercise, and not yet one that parses. */
  readonly document: Scenario;
  /** For the instructor alone; never part of the document. */
  readonly notes: string;
  /** Whether the document parses, so that it can be worked. */
  readonly workable: boolean;
  readonly proof: KeptProof | null;
  /** ISO 8601, wall clock. */
  readonly changedAt: string;
}

/** Where exercises of one's own are kept. Every promise resolves once the change is on the disk. */
export interface BenchStore {
  /** Why they last only until the page is closed, or null where they are kept. */
  readonly notKept: string | null;
  /** Newest first. */
  list(): Promise<KeptExercise[]>;
  find(id: string): Promise<KeptExercise | undefined>;
  keep(exercise: KeptExercise): Promise<void>;
  remove(id: string): Promise<void>;
}

/** Newest first; of the same moment, by name. */
export function byChange(exercises: readonly KeptExercise[]): KeptExercise[] {
  return [...exercises].sort((a, b) =>
    a.changedAt < b.changedAt ? 1 : a.changedAt > b.changedAt ? -1 : a.id < b.id ? -1 : 1,
  );
}
