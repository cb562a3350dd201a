import { writeFileSync } from 'node:fs';
import { drive, steadyUpTo } from '../core/hands/index.ts';
import { stageOfHoldPoint, stages, type StageId } from '../core/procedure/index.ts';
import { parseScenario, type Scenario } from '../core/scenario/index.ts';
import { reasonOf, Unusable } from './io.ts';

export interface DrillAsked {
  readonly stage: string;
  readonly to?: string;
  readonly id?: string;
  readonly output: string;
}

/**
 * A drill cut out of an exercise: what the steady hand did before a stage becomes its prelude, and it keeps the hold
 * points of its own stages. Title, brief and number stay as they were, to be written anew. Throws Unusable.
 */
export function makeDrill(scenario: Scenario, asked: DrillAsked): Scenario {
  const from = stageNamed(asked.stage);
  const to = stageNamed(asked.to ?? asked.stage);
  const { entries, run } = drive(scenario, steadyUpTo(from));
  if (run.rig.ending !== null)
    throw new Unusable(`${scenario.id}: its steady hand ends the work before stage ${from}.`);
  const within = (stage: StageId) =>
    stages.indexOf(stage) >= stages.indexOf(from) && stages.indexOf(stage) <= stages.indexOf(to);
  const drill: Scenario = {
    ...scenario,
    id: asked.id ?? `drill-${from}-${scenario.id}`,
    kind: 'drill',
    family: 'drill',
    drill: { from, to },
    prelude: [...entries],
    holdPoints: scenario.holdPoints.filter(({ id }) => within(stageOfHoldPoint[id])),
  };
  const parsed = parseScenario(structuredClone(drill));
  if ('problems' in parsed)
    throw new Unusable(`${drill.id}, ${parsed.problems[0].where}: ${parsed.problems[0].says}`);
  write(asked.output, parsed.scenario);
  return parsed.scenario;
}

function stageNamed(name: string): StageId {
  const stage = stages.find((one) => one === name && one !== 'done');
  if (stage === undefined) throw new Unusable(`There is no stage called ${name}; there are s1 to s12.`);
  return stage;
}

/** Written with one action of the prelude a line: hundreds of them would fill a screen each otherwise. */
function write(file: string, drill: Scenario): void {
  const { prelude } = drill;
  const text = JSON.stringify({ ...drill, prelude: [] }, null, 2);
  const lines = prelude.map(({ atS, action }) => `    ${inOneLine({ atS, action })}`);
  try {
    writeFileSync(file, `${text.replace('"prelude": []', `"prelude": [\n${lines.join(',\n')}\n  ]`)}\n`);
  } catch (error) {
    throw new Unusable(`${file}: cannot be written (${reasonOf(error)}).`);
  }
}

/** An object on one line, as the house's formatter leaves it. */
function inOneLine(value: object): string {
  return JSON.stringify(value)
    .replaceAll('{', '{ ')
    .replaceAll('}', ' }')
    .replaceAll('":', '": ')
    .replaceAll(',"', ', "');
}
