import type { Action } from '../../rig/index.ts';
import { advance, attempt, type RunState } from '../../run/index.ts';
import type { Deviation, Step } from './deviations.ts';

/** A run played on open loop, and what the hand could not do any more. */
export interface Played {
  readonly run: RunState;
  readonly dropped: readonly Action[];
}

/**
 * Plays steps open loop from any moment: each so long after the one before as in the model, or when the hands are
 * free; what is refused is dropped. `keep` sees the run before each step.
 */
export function playOn(from: RunState, steps: readonly Step[], keep?: (run: RunState) => void): Played {
  const dropped: Action[] = [];
  let run = from;
  for (const { action, gapS } of steps) {
    keep?.(run);
    run = advance(run, Math.max(run.clockS + gapS, run.busyUntilS));
    const attempted = attempt(run, action);
    if ('hindrance' in attempted) dropped.push(action);
    else run = attempted.run;
  }
  return { run: run.rig.ending === null ? advance(run, run.busyUntilS) : run, dropped };
}

/** Plays the rest of a deviation from the run as it stood before its act. */
export function playDeviation(before: readonly RunState[], { from, tail }: Deviation): Played {
  return playOn(before[from], tail);
}
