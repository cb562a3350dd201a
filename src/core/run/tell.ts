import { follow } from '../procedure/index.ts';
import type { Fact } from '../rig/index.ts';
import { changed } from './changed.ts';
import type { RunState } from './types.ts';

/** Lets the procedure follow new facts. It is told and answers nothing back to the rig. */
export function tellProcedure(run: RunState, facts: readonly Fact[]): RunState {
  let value = run.procedure;
  const context = { job: run.scenario.job, limits: run.scenario.limits, facts: run.facts };
  for (const fact of facts) value = follow(value, fact, context);
  return value === run.procedure ? run : changed(run, { procedure: value });
}
