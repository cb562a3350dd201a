import { drive, driveFrom, steady, steadyUpTo, type Driven } from '../../src/core/hands/index.ts';
import { assess, type RunAssessment } from '../../src/core/judge/index.ts';
import { stageOfHoldPoint, stages, type StageId } from '../../src/core/procedure/index.ts';
import type { Defects, RigState } from '../../src/core/rig/index.ts';
import type { RunState } from '../../src/core/run/index.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import { exercise } from '../scenario/exercise.ts';

export type Strike = (rig: RigState) => RigState;

/** Something goes wrong with a piece that was sound when it was looked over. */
export const spoils =
  (id: string, defects: Defects): Strike =>
  (rig) => ({ ...rig, kit: { ...rig.kit, [id]: { ...rig.kit[id], defects } } });

export interface Met {
  readonly driven: Driven;
  readonly assessment: RunAssessment;
  /** Kinds of what the steady hand did from there on. */
  readonly did: readonly string[];
}

/**
 * The steady hand as it meets a trouble that struck unseen at the beginning of a stage: it goes on from there through
 * the last stage asked for. What is wrong it can only find.
 */
export function meets(
  from: StageId,
  to: StageId,
  strike: Strike,
  change: (s: Scenario) => void = () => {},
): Met {
  const scenario = exercise();
  change(scenario);
  const before = drive(scenario, steadyUpTo(from)).run;
  const within = stages.slice(stages.indexOf(from), stages.indexOf(to) + 1);
  const drill: Scenario = {
    ...scenario,
    kind: to === 's12' ? 'job' : 'drill',
    drill: { from, to },
    holdPoints: scenario.holdPoints.filter(({ id }) => within.includes(stageOfHoldPoint[id])),
  };
  const run: RunState = { ...before, scenario: drill, rig: strike(before.rig) };
  const driven = driveFrom(run, steady);
  return {
    driven,
    assessment: assess(driven.run),
    did: driven.entries.map(({ action }) => action.kind),
  };
}
