import { pend, type Pending } from './step.ts';
import { settle } from './settle.ts';
import type { GasMesh, RunState } from './types.ts';

/** The pending step belongs to the gas it starts from: kept beside it, never part of the run. */
const kept = new WeakMap<GasMesh, { run: RunState; pending: Pending }>();

function pendingOf(run: RunState): Pending {
  const known = kept.get(run.gas);
  if (known !== undefined && sameButForTheClock(known.run, run)) return known.pending;
  const pending = pend(run);
  kept.set(run.gas, { run, pending });
  return pending;
}

function sameButForTheClock(a: RunState, b: RunState): boolean {
  return (
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
    if (pending.step.endS > untilS) break;
    now = settle(now, pending);
  }
  const clockS = Math.max(now.clockS, untilS);
  return clockS === now.clockS ? now : { ...now, clockS };
}
