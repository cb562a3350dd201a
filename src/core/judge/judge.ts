import { digestOf, ENGINE, replay, type RecordEntry } from '../run/index.ts';
import type { Scenario } from '../scenario/index.ts';
import { assess } from './assess.ts';
import type { Assessment } from './types.ts';

/** What of a record counts: what the hands did and when, and how long the run went on. Everything else is derived. */
export interface JudgedRecord {
  readonly entries: readonly RecordEntry[];
  readonly endS?: number;
  readonly sitting?: { readonly asked: number };
}

/**
 * The judge. Plays the record again and assesses what that gives; a number stored in a record is never believed.
 * The same everywhere: screen, command line and review. Throws ReplayRefused where the rig refuses an entry.
 */
export function judge(scenario: Scenario, record: JudgedRecord): Assessment {
  const run = replay(scenario, record.entries, undefined, record.endS);
  return { ...assess(run, record.sitting?.asked ?? 0), digest: digestOf(run), engine: ENGINE };
}
