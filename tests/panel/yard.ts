import type { Action } from '../../src/core/rig/index.ts';
import { advance, attempt, begin, type RunState } from '../../src/core/run/index.ts';
import { yardScenario } from '../session/yard.ts';

export { yardScenario };

/** The yard's run after these acts, each with its hands' time. */
export function runAfter(...actions: readonly Action[]): RunState {
  return actions.reduce((run, action) => {
    const tried = attempt(run, action);
    if ('hindrance' in tried) throw new Error(`${action.kind}: ${tried.hindrance}`);
    return advance(tried.run, tried.run.busyUntilS);
  }, begin(yardScenario()));
}
