import type { Note } from '../../core/prove/index.ts';
import { clock } from '../units.ts';
import { filled } from '../sentence.ts';
import { words } from '../words.ts';
import type { NoteWords } from './words.ts';

export { englishNotes } from './en.ts';
export { spanishNotes } from './es.ts';
export type { NoteWords } from './words.ts';

/** A note in words: the field it concerns, what it says of it, and what it suggests. */
export interface WordedNote {
  readonly field: string;
  readonly says: string;
  readonly suggests: string;
}

const percent = (share: number): string => `${Math.round(share * 1000) / 10} %`;

/** Words a note. `name` calls what it is about by the name a reader knows; without one its id stands. */
export function wordNote(note: Note, said: NoteWords, name: (about: string) => string = nameOf): WordedNote {
  const { numbers } = note;
  const values: Record<string, string | number> = {
    about: note.about === null ? '' : name(note.about),
    clock: clock(numbers.atS ?? 0),
    steady: clock(numbers.steadyS ?? 0),
    limit: clock(numbers.timeLimitS ?? 0),
  };
  for (const [key, value] of Object.entries(numbers)) {
    values[key] = key === 'share' ? percent(value) : Math.round(value * 10) / 10;
  }
  const { says, suggests } = said[note.id];
  return { field: note.field, says: filled(says, values), suggests: filled(suggests, values) };
}

/** Names of findings, hold points, endings and reasons, where the catalogue has one. */
function nameOf(about: string): string {
  const { conditions, findings, holdPoints, endings, referReasons, headings } = words();
  const named: Readonly<Record<string, unknown>> = {
    ...conditions,
    ...findings,
    ...holdPoints,
    ...endings,
    ...referReasons,
    ...headings,
  };
  const found = named[about];
  if (typeof found === 'string') return found;
  if (typeof found === 'object' && found !== null && 'title' in found && typeof found.title === 'string')
    return about.length <= 3 ? `${about} ${found.title}` : found.title;
  return about;
}
