import type { Scenario } from '../core/scenario/index.ts';

/** One run as kept in this browser. Wall-clock times are for the person; nothing is judged by them. */
export interface KeptRun {
  readonly id: string;
  readonly scenario: Scenario;
  /** ISO 8601, wall clock. */
  readonly begunAt: string;
  /** Simulated time of the last thing kept, s. */
  readonly reachedS: number;
  readonly state: 'working' | 'finished';
  /** Set when finished; what the judgement said then. The record is judged anew whenever it is opened. */
  readonly verdict: string | null;
  readonly score: number | null;
  /** Practised or assessed; runs kept before there was a choice were practised. */
  readonly mode?: 'practice' | 'assessment';
  /** Who works, by their own word, and their how manieth run of this exercise it is here; absent where no name was given. */
  readonly person?: string;
  readonly attempt?: number;
  /** Hold points that were held, of a finished run: what the coach fades by. */
  readonly held?: readonly string[];
}

/** How a run is sat, and by whom. */
export type Sat = Pick<KeptRun, 'mode' | 'person' | 'attempt'>;

/** What a finished run came to, kept beside its record so that a list needs not judge it. */
export interface Judged {
  readonly verdict: string;
  readonly score: number;
  readonly held?: readonly string[];
}

/** Where runs are kept. Every promise resolves once the change is on the disk, or rejects with why it is not. */
export interface Store {
  /** Why runs last only until the page is closed, or null when they are kept. */
  readonly notKept: string | null;
  begin(scenario: Scenario, sat?: Sat): Promise<KeptRun>;
  listRuns(): Promise<KeptRun[]>;
  findRun(id: string): Promise<KeptRun | undefined>;
  /** The run's events in order, as they were written; whoever reads them checks them. */
  listEvents(id: string): Promise<unknown[]>;
  /** Adds one event in one transaction with the time it reached, s. A finished run is under way again by that. */
  append(id: string, event: unknown, reachedS: number): Promise<void>;
  /** Adds many events at once: a run that is taken up where another stood. */
  appendAll(id: string, events: readonly unknown[], reachedS: number): Promise<void>;
  /** Keeps the sealed record and what was judged. */
  finish(id: string, record: string, judged: Judged): Promise<void>;
  findRecord(id: string): Promise<string | undefined>;
  /** Takes in a run that was made elsewhere. */
  takeIn(scenario: Scenario, record: string, reachedS: number, judged: Judged & Sat): Promise<KeptRun>;
  remove(id: string): Promise<void>;
}

/** A name that no other run has: 96 random bits. */
export function nameRun(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** A run at its beginning. */
export function freshRun(scenario: Scenario, sat: Sat = {}): KeptRun {
  return {
    id: nameRun(),
    scenario,
    begunAt: new Date().toISOString(),
    reachedS: 0,
    state: 'working',
    verdict: null,
    score: null,
    mode: 'practice',
    ...sat,
  };
}

/** A run that something was just added to: under way, also where it had ended and was gone back in. */
export function atWork(run: KeptRun, reachedS: number): KeptRun {
  return { ...run, reachedS, state: 'working', verdict: null, score: null };
}

/** Newest first. */
export function newestFirst(runs: readonly KeptRun[]): KeptRun[] {
  return [...runs].sort((a, b) =>
    a.begunAt < b.begunAt ? 1 : a.begunAt > b.begunAt ? -1 : a.id < b.id ? 1 : -1,
  );
}
