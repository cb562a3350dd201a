import type { Decision, Opinion, RunRow } from '../../core/review/index.ts';

/** A note of an assessor pinned to a moment of a run, simulated s. */
export interface Note {
  readonly atS: number;
  readonly says: string;
}

/** A file handed in: its line of the table and its bytes. */
export interface HandedIn {
  readonly row: RunRow;
  readonly bytes: Uint8Array;
}

/** Why something may not be deleted. */
export type Kept = 'mustBeKept' | 'notExported' | 'unknown';

/**
 * What an assessor's desk keeps: runs received, opinions and notes under way, decisions. Every promise resolves once
 * the change is on the disk. A decision is never changed and never overwritten.
 */
export interface Desk {
  /** Why it lasts only until the page is closed, or null where it is kept. */
  readonly notKept: string | null;
  /** Takes runs in, all or none of those given. A file that is there already is left as it is. */
  takeIn(handedIn: readonly HandedIn[]): Promise<void>;
  listRows(): Promise<RunRow[]>;
  /** Puts lines that were judged otherwise in the place of those kept; the files stay as they are. */
  keepRows(rows: readonly RunRow[]): Promise<void>;
  findBytes(digest: string): Promise<Uint8Array | undefined>;
  /** The opinion under way on a run; none at all where nothing was kept. */
  findOpinion(digest: string): Promise<Opinion>;
  /** Digests of the runs that an opinion or a note is under way on. */
  listBegun(): Promise<string[]>;
  keepOpinion(digest: string, opinion: Opinion): Promise<void>;
  listNotes(digest: string): Promise<readonly Note[]>;
  keepNotes(digest: string, notes: readonly Note[]): Promise<void>;
  /**
   * Keeps a decision. Rejects with an Error where it contradicts itself, is there already, or takes the place of one
   * that is not here.
   */
  decide(decision: Decision): Promise<void>;
  /** All decisions in the order they were made. */
  listDecisions(): Promise<Decision[]>;
  /** Everything as one file: runs, opinions, notes, decisions. Marks all of it as exported. */
  exportAll(): Promise<string>;
  /** Why a run with all that hangs on it may not be deleted today (ISO day), or null where it may. */
  keptBecause(digest: string, today: string): Promise<Kept | null>;
  /** Deletes a run and all that hangs on it. Rejects with an Error where it must be kept or was not exported. */
  remove(digest: string, today: string): Promise<void>;
}

/** What is said when something may not be deleted. */
export class MustBeKept extends Error {
  constructor(readonly why: Kept) {
    super(`This run cannot be deleted: ${why}.`);
  }
}
