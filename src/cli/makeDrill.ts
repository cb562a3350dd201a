import { writeFileSync } from 'node:fs';
import { cutDrill } from '../core/hands/index.ts';
import { stages, type StageId } from '../core/procedure/index.ts';
import type { Scenario } from '../core/scenario/index.ts';
import { reasonOf, Unusable } from './io.ts';

export interface DrillAsked {
  readonly stage: string;
  readonly to?: string;
  readonly id?: string;
  readonly output: string;
}

/** Cuts a drill out of an exercise and writes it. Throws Unusable. */
export function makeDrill(scenario: Scenario, asked: DrillAsked): Scenario {
  const from = stageNamed(asked.stage);
  const cut = cutDrill(scenario, { from, to: stageNamed(asked.to ?? asked.stage), id: asked.id });
  if ('problems' in cut) {
    const [{ where, says }] = cut.problems;
    throw new Unusable(`${scenario.id}, ${where}: ${says}`);
  }
  write(asked.output, cut.drill);
  return cut.drill;
}

function stageNamed(name: string): StageId {
  const stage = stages.find((one) => one === name && one !== 'done');
  if (stage === undefined)
    throw new Unusable(`There is no stage called ${name}; there are ${stages.slice(0, -1).join(', ')}.`);
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
