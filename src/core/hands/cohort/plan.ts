import { evidence } from '../../procedure/index.ts';
import { handS, type Action, type HoldPointId } from '../../rig/index.ts';
import { advance, attempt, begin, type RecordEntry, type RunState } from '../../run/index.ts';
import type { Scenario } from '../../scenario/index.ts';
import { drive } from '../drive.ts';
import { steady } from '../steady/index.ts';

/** One step of a job known by heart: what is done, and how long is waited before it once the hands are free, s. */
export interface PlannedStep {
  readonly action: Action;
  readonly waitS: number;
}
export type Plan = readonly PlannedStep[];

/** The steady crew's job as a plan that can be slipped from. */
export function steadyPlan(scenario: Scenario): Plan {
  const { entries } = drive(scenario, steady);
  const begunS = begin(scenario).clockS;
  return entries.map(({ atS, action }, i) => {
    const freeS = i === 0 ? begunS : entries[i - 1].atS + handS(entries[i - 1].action);
    return { action, waitS: Math.max(0, atS - freeS) };
  });
}

/**
 * Performs a plan as it stands, without looking at what comes of it. What the hand then cannot do is left out. A hold
 * point is signed only on its evidence, but for the one named: that is signed whatever was seen.
 */
export function performPlan(
  scenario: Scenario,
  plan: Plan,
  signsFalsely: HoldPointId | null,
): { readonly entries: readonly RecordEntry[]; readonly run: RunState } {
  const entries: RecordEntry[] = [];
  let run = begin(scenario);
  for (const { action, waitS } of plan) {
    run = advance(run, Math.max(run.clockS, run.busyUntilS) + waitS);
    if (run.rig.ending !== null) break;
    if (action.kind === 'sign' && action.holdPoint !== signsFalsely && !supported(run, action.holdPoint))
      continue;
    const attempted = attempt(run, action);
    if ('hindrance' in attempted) continue;
    entries.push({ atS: run.clockS, action });
    run = attempted.run;
  }
  return { entries, run: advance(run, run.busyUntilS) };
}

function supported({ facts, scenario }: RunState, id: HoldPointId): boolean {
  return evidence(id, facts, scenario.limits, scenario.job).met;
}
