import { stageOfHoldPoint } from '../../panel/index.ts';
import type { RunState } from '../../core/run/index.ts';
import type { KeptRun } from '../../store/index.ts';

type Stage = RunState['procedure']['stage'];

/** Held so often, a stage is known: its steps are shown only when asked for (assumed). */
const timesKnown = 2;

/**
 * Stages this person has come through well in the runs kept here: every hold point of the stage held at least twice,
 * and in the newest run that reached it. A stage without one is known when the job was passed as often.
 */
export function knowsStage(runs: readonly KeptRun[], stage: Stage): boolean {
  const finished = runs.filter(({ state }) => state === 'finished');
  const holds = Object.entries(stageOfHoldPoint)
    .filter(([, of]) => of === stage)
    .map(([id]) => id);
  const done = (run: KeptRun): boolean =>
    holds.length === 0 ? run.verdict === 'pass' : holds.every((id) => run.held?.includes(id));
  return finished.filter(done).length >= timesKnown && done(finished[0]);
}
