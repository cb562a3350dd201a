import { parseScenario, type Scenario } from '../../core/scenario/index.ts';
import type { BenchStore, KeptExercise } from './types.ts';

const longestName = 60;

/** The same name, or the first with a number behind it that is not taken. */
export function freeName(name: string, taken: readonly string[]): string {
  let free = name;
  for (let n = 2; taken.includes(free); n += 1) free = `${name.slice(0, longestName - 4)}-${n}`;
  return free;
}

/** An exercise as it is kept from now on. */
export function keptFrom(document: Scenario, notes = ''): KeptExercise {
  return {
    id: document.id,
    document,
    notes,
    workable: 'scenario' in parseScenario(document),
    proof: null,
    changedAt: new Date().toISOString(),
  };
}

/**
 * Keeps an exercise that came in a file. One that is here already, word for word, is not kept twice; one whose name is
 * taken, by a shipped exercise or by another of one's own, gets a name of its own.
 */
export async function takeInExercise(
  store: BenchStore,
  scenario: Scenario,
  shipped: readonly string[],
): Promise<{ readonly exercise: KeptExercise; readonly already: boolean }> {
  const same = await store.find(scenario.id);
  if (same !== undefined && JSON.stringify(same.document) === JSON.stringify(scenario))
    return { exercise: same, already: true };
  const own = (await store.list()).map(({ id }) => id);
  const exercise = keptFrom({ ...scenario, id: freeName(scenario.id, [...shipped, ...own]) });
  await store.keep(exercise);
  return { exercise, already: false };
}
