import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { preludeProblem } from '../core/run/index.ts';
import { parseScenario, type Scenario } from '../core/scenario/index.ts';
import { reasonOf, Unusable } from './io.ts';

/** The exercise named by its folder or its file. Throws Unusable with place and reason. */
export function readScenario(place: string): Scenario {
  const file = isFolder(place) ? join(place, 'scenario.json') : place;
  const parsed = parseScenario(readBytes(file));
  if ('scenario' in parsed) {
    const refused = preludeProblem(parsed.scenario);
    if (refused !== null) throw new Unusable(`${file}, ${refused.where}: ${refused.says}`);
    return parsed.scenario;
  }
  const [first] = parsed.problems;
  const more = parsed.problems.length - 1;
  const where = first.where === '' ? file : `${file}, ${first.where}`;
  throw new Unusable(`${where}: ${first.says}${more > 0 ? ` (${more} more)` : ''}`);
}

/** All run files that these places name: a file itself, a folder's `.json` files at any depth, in a fixed order. */
export function listRuns(places: readonly string[]): string[] {
  const files = places.flatMap((place) => (isFolder(place) ? filesUnder(place) : [place]));
  if (files.length === 0) throw new Unusable(`${places.join(', ')}: there is no run file here.`);
  return files;
}

/** A file's bytes as text. Throws Unusable. */
export function readFile(file: string): string {
  return readBytes(file).toString('utf8');
}

/** A file's bytes. Throws Unusable. */
export function readBytes(file: string): Buffer {
  try {
    return readFileSync(file);
  } catch (error) {
    throw new Unusable(`${file}: cannot be read (${reasonOf(error)}).`);
  }
}

function isFolder(place: string): boolean {
  const found = statSync(place, { throwIfNoEntry: false });
  if (!found) throw new Unusable(`${place}: there is no such file or folder.`);
  return found.isDirectory();
}

function filesUnder(folder: string): string[] {
  const entries = readdirSync(folder, { withFileTypes: true });
  entries.sort((a, b) => (a.name < b.name ? -1 : 1));
  return entries.flatMap((entry) => {
    const place = join(folder, entry.name);
    if (entry.isDirectory()) return filesUnder(place);
    return entry.name.endsWith('.json') ? [place] : [];
  });
}
