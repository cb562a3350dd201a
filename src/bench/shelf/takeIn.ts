import { parseScenario, SCENARIO_TEXT_MOST, type Problem, type Scenario } from '../../core/scenario/index.ts';

/** What a file turned out to be. */
export type TakenIn =
  | { readonly kind: 'exercise'; readonly scenario: Scenario }
  | { readonly kind: 'notes'; readonly id: string; readonly text: string }
  | { readonly kind: 'tooLarge' }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/** A file longer than any exercise is not even read. */
const mostBytes = SCENARIO_TEXT_MOST;
const notesEnding = '.notes.md';

/** Reads an exercise file, or the notes laid beside one. Nothing of a refused file is kept. */
export async function takeIn(file: Blob & { readonly name: string }): Promise<TakenIn> {
  if (file.size > mostBytes) return { kind: 'tooLarge' };
  if (file.name.endsWith(notesEnding))
    return { kind: 'notes', id: file.name.slice(0, -notesEnding.length), text: await file.text() };
  const parsed = parseScenario(new Uint8Array(await file.arrayBuffer()));
  return 'problems' in parsed
    ? { kind: 'refused', problems: parsed.problems }
    : { kind: 'exercise', scenario: parsed.scenario };
}

/** The file a trainee gets: the document and nothing else. */
export function fileOf(document: Scenario): { readonly name: string; readonly text: string } {
  return { name: `${document.id}.json`, text: `${JSON.stringify(document, null, 2)}\n` };
}

/** The file of the instructor's notes. */
export function notesFileOf(id: string, notes: string): { readonly name: string; readonly text: string } {
  return { name: `${id}${notesEnding}`, text: notes };
}
