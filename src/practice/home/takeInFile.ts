import { parseRecord } from '../../core/run/index.ts';
import { judge } from '../../core/judge/index.ts';
import { parseScenario, type Problem } from '../../core/scenario/index.ts';
import { openBench, takeInExercise, type KeptExercise, type KeptRun, type Store } from '../../store/index.ts';
import { fetchWords, spoken, words } from '../../text/index.ts';
import { shippedExercises } from '../scenarios.ts';

export type TakenIn =
  { readonly run: KeptRun } | { readonly exercise: KeptExercise } | { readonly why: string };

/**
 * Opens a file that was made here or elsewhere and keeps it: a run, which is judged anew, or an exercise, which can then
 * be worked. A file that cannot be read is refused with the place and the reason in one sentence.
 */
export async function takeInFile(store: Store, file: Blob): Promise<TakenIn> {
  const text = await file.text();
  const exercise = parseScenario(text);
  if ('scenario' in exercise) {
    const shipped = shippedExercises.map(({ id }) => id);
    return takeInExercise(await openBench(), exercise.scenario, shipped);
  }
  // a run holds its exercise, but never at its beginning
  if (/^\s*\{\s*"format":\s*"stillmain-scenario"/.test(text)) return refused(exercise.problems[0]);
  const parsed = parseRecord(text);
  if (parsed.state === 'unusable') return refused(parsed.problem);
  const { record } = parsed;
  const { verdict, score } = judge(record.scenario, record);
  const { person, attempt } = record.by ?? {};
  const sat = {
    mode: record.sitting?.mode ?? 'practice',
    ...(person === undefined ? {} : { person, attempt }),
  };
  return { run: await store.takeIn(record.scenario, text, record.endS, { verdict, score, ...sat }) };
}

async function refused({ where, says }: Problem): Promise<TakenIn> {
  await fetchWords(spoken());
  const said = words().problem(says);
  return { why: where === '' ? said : `${where}: ${said}` };
}
