import { advance, attempt, begin, type RecordEntry, type RunState } from '../core/run/index.ts';
import type { Scenario } from '../core/scenario/index.ts';
import { UnreadableSitting } from './events.ts';
import { sampleEveryS, sampleRun, type Sample } from './trace.ts';

/** A finished run performed again: where it stood after every action, and the chart. */
export interface Performance {
  readonly scenario: Scenario;
  readonly entries: readonly RecordEntry[];
  /** The run at the start and after each action, so one more than the entries. */
  readonly moments: readonly RunState[];
  readonly trace: readonly Sample[];
  readonly end: RunState;
}

/**
 * Performs a record's actions again, keeping every moment so that any other can be had by a short advance.
 * @throws UnreadableSitting at the first action that the rig refuses now
 */
export function performAgain(scenario: Scenario, entries: readonly RecordEntry[], endS: number): Performance {
  let run = begin(scenario);
  const moments = [run];
  const trace = [sampleRun(run)];

  function pass(untilS: number): void {
    while (run.clockS < untilS) {
      run = advance(run, Math.min(untilS, run.clockS + sampleEveryS));
      trace.push(sampleRun(run));
    }
  }

  entries.forEach((entry, index) => {
    pass(entry.atS);
    const tried = attempt(run, entry.action);
    if ('hindrance' in tried) throw new UnreadableSitting(index, tried.hindrance);
    run = tried.run;
    moments.push(run);
    trace.push(sampleRun(run));
  });
  pass(endS);
  return { scenario, entries, moments, trace, end: run };
}

/** The run as it stood at a time, s. */
export function momentAt(performance: Performance, atS: number): RunState {
  const { moments, end } = performance;
  let low = 0;
  let high = moments.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (moments[middle].clockS <= atS) low = middle;
    else high = middle - 1;
  }
  const from = moments[low];
  return advance(from, Math.min(Math.max(atS, from.clockS), end.clockS));
}

/** The run as it stood when an act was about to be done, by its place in the record. */
export function momentBefore({ moments, entries }: Performance, index: number): RunState {
  return advance(moments[index], Math.max(entries[index].atS, moments[index].clockS));
}
