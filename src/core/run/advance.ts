import { changed } from './changed.ts';
import { pend, type Pending } from './step.ts';
import { settle } from './settle.ts';
import type { RunState } from './types.ts';

/** The last step worked out and not taken: kept to spare work, never part of a run. One is enough, runs being one at a time. */
let kept: { readonly run: RunState; readonly pending: Pending } | null = null;

function pendingOf(run: RunState): Pending {
  return kept !== null && sameButForTheClock(kept.run, run) ? kept.pending : pend(run);
}

function sameButForTheClock(a: RunState, b: RunState): boolean {
  return (
    a.gas === b.gas &&
    a.rig === b.rig &&
    a.network === b.network &&
    a.air === b.air &&
    a.ear === b.ear &&
    a.markS === b.markS &&
    a.scenario === b.scenario
  );
}

/**
 * Lets time pass up to untilS, s. Steps depend on the run alone: advance(advance(run, a), b) equals advance(run, b)
 * bit for bit for any a < b. A time before the clock changes nothing.
 */
export function advance(run: RunState, untilS: number): RunState {
  let now = run;
  while (now.rig.ending === null) {
    const pending = pendingOf(now);
    if (pending.step.endS > untilS) {
      kept = { run: now, pending };
      break;
    }
    now = settle(now, pending);
  }
  const clockS = Math.max(now.clockS, untilS);
  return clockS === now.clockS ? now : changed(now, { clockS });
}
