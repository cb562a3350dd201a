import { act, attemptTo, StopWork, wait, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { airFit, shutQuickly } from './air.ts';
import { mainOpen } from '../seen.ts';
import { contained, safeSteps, type SafeStep } from './steps.ts';

/** A step that did not help so often is given up. */
const FAILS_MOST = 2;
const STEPS_MOST = 60;
/** Longest the valves of the main are waited for, s. */
const SHUTTING_MOST_S = 900;

/**
 * Brings any state to one that can be left: the nearest closed state of the stage it stands in, forward where only
 * forward is safe, the rig shut in as containment where that fails, and the main shut at its valves as the last. It
 * goes by what the crew sees, hears and reads. Where the main had to be shut the run has ended.
 */
export function* makeSafe(crew: Crew): Work {
  crew.answersSigns = false;
  const failed = new Map<string, number>();
  for (let steps = 0; steps < STEPS_MOST; steps += 1) {
    if (!(yield* airFit(crew))) return yield* isolate(crew);
    const step = nextOf(crew, failed);
    if (step === null) break;
    yield* tried(crew, step);
    if (step.needed(crew.view.rig)) failed.set(step.id, (failed.get(step.id) ?? 0) + 1);
  }
  yield* shutQuickly(crew);
  const { rig, readings } = crew.view;
  const held = !mainOpen(rig) || contained(rig);
  if (!held || readings.holeHeard || !(yield* airFit(crew))) yield* isolate(crew);
}

function nextOf(crew: Crew, failed: ReadonlyMap<string, number>): SafeStep | null {
  const { rig } = crew.view;
  return safeSteps.find((step) => (failed.get(step.id) ?? 0) < FAILS_MOST && step.needed(rig)) ?? null;
}

/** A step that cannot be finished is left where it stands: the next look at the rig says what to do then. */
function* tried(crew: Crew, step: SafeStep): Work {
  try {
    yield* step.work(crew);
  } catch (stop) {
    if (!(stop instanceof StopWork)) throw stop;
  }
}

/** Out of the hole, the valves found if they are not, and the main shut. The run ends when they are shut. */
export function* isolate(crew: Crew): Work {
  yield* attemptTo(crew, { kind: 'leaveHole' });
  if (crew.view.rig.done.findShutoff === undefined)
    yield* act(crew, { kind: 'site.do', task: 'findShutoff' });
  if (!crew.view.rig.isolating) yield* act(crew, { kind: 'main.isolate' });
  yield* wait(crew, SHUTTING_MOST_S);
}
