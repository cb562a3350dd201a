import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { judgeSet, type SetAssessment } from '../core/judge/index.ts';
import { parseSet, type ExerciseSet } from '../core/scenario/index.ts';
import { driveScenario, type DrivenRun } from './driveScenario.ts';
import { reasonOf, Unusable } from './io.ts';
import { readBytes, readScenario } from './readInput.ts';

/** What a hand made of a set of exercises. */
export interface DrivenSet extends SetAssessment {
  readonly set: string;
  readonly runs: readonly ({ readonly scenario: string } & DrivenRun)[];
}

/** The set in a file that says it is one, or null: an exercise is a file of the same kind. Throws Unusable. */
export function setIn(file: string): ExerciseSet | null {
  if (!file.endsWith('.json')) return null;
  const bytes = readBytes(file);
  if (!/"format"\s*:\s*"stillmain-set"/.test(bytes.toString('utf8'))) return null;
  const parsed = parseSet(bytes);
  if ('set' in parsed) return parsed.set;
  const [{ where, says }] = parsed.problems;
  throw new Unusable(`${where === '' ? file : `${file}, ${where}`}: ${says}`);
}

/**
 * Lets a hand perform every exercise of a set, found in the folder above the set's own. Runs are written into a folder
 * where asked. Throws Unusable.
 */
export function driveSet(
  set: ExerciseSet,
  file: string,
  hand: string,
  folder: string | undefined,
  tell: (says: string) => void,
): DrivenSet {
  const place = dirname(dirname(file));
  if (folder !== undefined) makeFolder(folder);
  const runs = set.exercises.map((name) => {
    const scenario = readScenario(join(place, name));
    tell(`Driving ${scenario.id} by the ${hand} hand …`);
    const output = folder === undefined ? undefined : join(folder, `${name}.json`);
    return { scenario: name, ...driveScenario(scenario, hand, output) };
  });
  const judged = judgeSet(set, new Map(runs.map((run) => [run.scenario, run])));
  return { set: set.id, ...judged, runs };
}

function makeFolder(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    throw new Unusable(`${folder}: cannot be made (${reasonOf(error)}).`);
  }
}

/** A driven set as lines for a person. */
export function wordSet({ set, verdict, passed, meanScore, runs }: DrivenSet): string {
  return [
    ...runs.map((run) => `${run.scenario}: ${run.verdict}, ${run.ending}, ${run.score.toFixed(1)}`),
    `${set}: ${verdict}, ${passed} of ${runs.length} passed, mean ${meanScore.toFixed(1)}`,
  ].join('\n');
}
