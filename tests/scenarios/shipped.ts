import { readdirSync, readFileSync } from 'node:fs';
import { parseScenario, type Scenario } from '../../src/core/scenario/index.ts';

const folder = 'scenarios';

/** Names of the folders of all shipped exercises. */
export const shippedNames: readonly string[] = readdirSync(folder)
  .filter((name) => name !== 'sets' && !name.includes('.'))
  .sort((a, b) => (a < b ? -1 : 1));

/** Names of the shipped sets, and the text of one. */
export const setNames: readonly string[] = readdirSync(`${folder}/sets`)
  .filter((file) => file.endsWith('.json'))
  .map((file) => file.replace('.json', ''));
export const setText = (name: string): string => readFileSync(`${folder}/sets/${name}.json`, 'utf8');

/** Text of one shipped exercise. */
export const shippedText = (name: string): string =>
  readFileSync(`${folder}/${name}/scenario.json`, 'utf8');

/** One shipped exercise, read as the product reads it. */
export function shipped(name: string): Scenario {
  const parsed = parseScenario(shippedText(name));
  if ('problems' in parsed) throw new Error(`${name}: ${parsed.problems[0].where} ${parsed.problems[0].says}`);
  return parsed.scenario;
}

/** What its notes say to the instructor. */
export const notesOf = (name: string): string =>
  readFileSync(`${folder}/${name}/notes.md`, 'utf8');
