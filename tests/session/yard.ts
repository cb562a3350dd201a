import { readFileSync } from 'node:fs';
import { parseScenario, type Scenario } from '../../src/core/scenario/index.ts';
import type { Journal, SittingEvent } from '../../src/session/index.ts';

/** The shipped exercise, as a sitting gets it. */
export function yardScenario(): Scenario {
  const text = readFileSync('scenarios/abandon-1in-tee-on-4in-main/scenario.json', 'utf8');
  const parsed = parseScenario(text);
  if ('problems' in parsed) throw new Error(parsed.problems[0].says);
  return parsed.scenario;
}

/** A journal that can be read back, and that can be told to fail. */
export function paperJournal(): Journal & { readonly events: SittingEvent[]; full: boolean } {
  const events: SittingEvent[] = [];
  const journal = {
    events,
    full: false,
    async append(event: SittingEvent) {
      if (journal.full) throw new Error('the disk is full');
      events.push(event);
    },
  };
  return journal;
}
