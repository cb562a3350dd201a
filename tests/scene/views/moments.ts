import scenarioFile from '../../../scenarios/abandon-1in-tee-on-4in-main/scenario.json';
import { drive, steady } from '../../../src/core/hands/index.ts';
import type { Action } from '../../../src/core/rig/index.ts';
import { read, trueFlows, truePressures, type RunState } from '../../../src/core/run/index.ts';
import type { Scenario } from '../../../src/core/scenario/index.ts';
import { describe, shownOf, type SceneView, type ViewName } from '../../../src/scene/index.ts';

/** A moment of the steady hand's job, and how it is looked at. */
interface Moment {
  readonly file: string;
  readonly view: ViewName;
  /** The moment after this action was done so many times. */
  readonly after: (action: Action) => boolean;
  readonly times?: number;
}

const places = (piece: string) => (a: Action) => a.kind === 'piece.place' && a.piece === piece;
const does = (kind: Action['kind']) => (a: Action) => a.kind === kind;

export const moments: readonly Moment[] = [
  { file: 'as-found', view: 'wholeRig', after: (a) => a.kind === 'look' && a.at === 'boss' },
  { file: 'chains-tapped', view: 'followTheWork', after: does('chain.tap') },
  { file: 'first-proof', view: 'stack', after: does('pump.stroke'), times: 8 },
  { file: 'plug-drawn', view: 'wholeRig', after: (a) => a.kind === 'rod.turn', times: 8 },
  { file: 'stopper-squeezed', view: 'teeAndBore', after: does('innerRod.turn'), times: 18 },
  {
    file: 'stopper-seen',
    view: 'sightCap',
    after: (a) => a.kind === 'look' && a.at === 'downBore',
    times: 2,
  },
  { file: 'service-capped', view: 'holeFromAbove', after: places('serviceCap-1') },
  {
    file: 'coupling-closed',
    view: 'teeAndBore',
    after: (a) => a.kind === 'leakFluid.apply' && a.at === 'closingPlug',
  },
];

/** The views of all moments, in order, from one run of the exercise. */
export function viewsOfMoments(): Map<string, SceneView> {
  const views = new Map<string, SceneView>();
  const counts = new Map<string, number>();
  let facts = 0;
  drive(scenarioFile as unknown as Scenario, steady, (run: RunState) => {
    for (; facts < run.facts.length; facts++) {
      const fact = run.facts[facts];
      if (fact.fact !== 'done') continue;
      for (const { file, after, times = 1 } of moments) {
        if (views.has(file) || !after(fact.action)) continue;
        counts.set(file, (counts.get(file) ?? 0) + 1);
        if (counts.get(file) === times) views.set(file, viewOf(run));
      }
    }
  });
  return views;
}

function viewOf(run: RunState): SceneView {
  const truth = { pressuresGaugePa: truePressures(run), flows: trueFlows(run) };
  return describe(run.rig, shownOf(run, read(run), truth));
}
