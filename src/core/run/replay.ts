import type { Scenario } from '../scenario/index.ts';
import { advance } from './advance.ts';
import { attempt } from './attempt.ts';
import { begin } from './begin.ts';
import type { RecordEntry, RunState } from './types.ts';

/** An entry a record holds that the rig does not accept: the record is not of this scenario or engine. */
export class ReplayRefused extends Error {
  constructor(
    readonly index: number,
    readonly hindrance: string,
  ) {
    super(`action ${index + 1} of the record is not possible there: ${hindrance}`);
  }
}

/**
 * Plays a record again from the beginning: the same two functions as the live run. `visit` sees the run after each
 * action. Throws ReplayRefused where an action is refused.
 */
export function replay(
  scenario: Scenario,
  entries: readonly RecordEntry[],
  visit?: (run: RunState, index: number) => void,
  endS?: number,
): RunState {
  let run = begin(scenario);
  for (let i = 0; i < entries.length; i += 1) {
    const attempted = attempt(advance(run, entries[i].atS), entries[i].action);
    if ('hindrance' in attempted) throw new ReplayRefused(i, attempted.hindrance);
    run = attempted.run;
    visit?.(run, i);
  }
  return endS === undefined ? run : advance(run, endS);
}
