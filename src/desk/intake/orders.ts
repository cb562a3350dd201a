import type { JudgingChange, Rejudged, RunRow } from '../../core/review/index.ts';
import type { RecordEntry } from '../../core/run/index.ts';
import type { Scenario } from '../../core/scenario/index.ts';

/** A file to be judged: as it was dropped, or as this desk keeps it. */
export interface FileGiven {
  readonly name: string;
  /** Null where the system would not hand it over. */
  readonly file: Blob | null;
}

/** What the desk has its workers do, away from the page. */
export type Order =
  | { readonly kind: 'judge'; readonly files: readonly FileGiven[] }
  | { readonly kind: 'demo'; readonly size: number; readonly seed: number }
  | {
      readonly kind: 'rejudge';
      readonly runs: readonly { readonly digest: string; readonly bytes: Uint8Array }[];
      readonly change: JudgingChange;
    }
  | { readonly kind: 'model'; readonly scenario: Scenario };

/** One run of a folder as it is judged and as it would be. */
export interface RejudgedRun {
  readonly digest: string;
  readonly rejudged: Rejudged;
}

/** What a worker tells, one run at a time. */
export type Told =
  | { readonly kind: 'judged'; readonly row: RunRow; readonly bytes: Uint8Array }
  /** The file could not be opened at all. */
  | { readonly kind: 'unread'; readonly name: string; readonly why: string }
  | ({ readonly kind: 'rejudged' } & RejudgedRun)
  /** What the steady hand did of an exercise. */
  | { readonly kind: 'performed'; readonly entries: readonly RecordEntry[]; readonly endS: number }
  | { readonly kind: 'done' };
