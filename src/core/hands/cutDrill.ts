import { stageOfHoldPoint, stages, stagesOf, type StageId } from '../procedure/index.ts';
import { parseScenario, type Problem, type Scenario } from '../scenario/index.ts';
import { StopWork } from './crew.ts';
import { drive } from './drive.ts';
import { steadyUpTo } from './steady/index.ts';

/** Which stages of an exercise become the drill, and what it is called; by itself, by its stage and the exercise. */
export interface DrillWanted {
  readonly from: StageId;
  readonly to: StageId;
  readonly id?: string;
}

export type CutDrill = { readonly drill: Scenario } | { readonly problems: readonly Problem[] };

/**
 * A drill cut out of an exercise: what the steady hand did before a stage becomes its prelude, and it keeps the hold
 * points of its own stages. Title, brief and number stay as they were, to be written anew. Pure; it takes as long as the
 * steady hand needs up to there.
 */
export function cutDrill(scenario: Scenario, { from, to, id }: DrillWanted): CutDrill {
  const own = stagesOf(scenario.job);
  const missing = [from, to].find((stage) => !own.includes(stage) || stage === 'done');
  if (missing !== undefined) return refused('drill', `This work has no stage ${missing}.`);
  const prelude = workBefore(scenario, from);
  if (prelude === null) return refused('drill.from', `A steady crew ends this work before stage ${from}.`);
  const within = (stage: StageId): boolean =>
    stages.indexOf(stage) >= stages.indexOf(from) && stages.indexOf(stage) <= stages.indexOf(to);
  const parsed = parseScenario({
    ...structuredClone(scenario),
    id: id ?? `drill-${from}-${scenario.id}`.slice(0, ID_MOST),
    kind: 'drill',
    family: 'drill',
    drill: { from, to },
    prelude: structuredClone(prelude),
    holdPoints: scenario.holdPoints.filter((hold) => within(stageOfHoldPoint[hold.id])),
  });
  return 'problems' in parsed ? parsed : { drill: parsed.scenario };
}

/** Longest name an exercise may have. */
const ID_MOST = 61;

function refused(where: string, says: string): CutDrill {
  return { problems: [{ where, says }] };
}

/** What the steady hand did before a stage, or null where it had stopped by then. */
function workBefore(scenario: Scenario, stage: StageId): Scenario['prelude'] | null {
  try {
    const { entries, run } = drive(scenario, steadyUpTo(stage));
    return run.rig.ending === null ? [...entries] : null;
  } catch (stop) {
    if (stop instanceof StopWork) return null;
    throw stop;
  }
}
