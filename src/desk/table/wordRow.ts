import { findingIds, type FindingId } from '../../core/judge/index.ts';
import type { RunRow } from '../../core/review/index.ts';
import { momentFigure } from '../../panel/index.ts';
import { words } from '../../text/index.ts';
import { word } from '../words/word.svelte.ts';
import { sittingOf, type Grouping, type Shown } from './arrange.ts';

/** A verdict in a word; a run that was not judged says so. */
export function verdictWord(verdict: RunRow['verdict']): string {
  return word(`verdict.${verdict ?? 'none'}`);
}

/** How far a file may be believed, in a word. */
export function integrityWord(integrity: RunRow['integrity']): string {
  return word(`integrity.${integrity}`);
}

const isFinding = (id: string): id is FindingId => Object.hasOwn(findingIds, id);

/** The title of a finding; one that this engine does not know stands as it was written. */
export function findingWord(id: string): string {
  return isFinding(id) ? words().findings[id].title : id;
}

/** Who performed a run: by name, or else by the file it came in. */
export const whoWord = ({ person, file }: Pick<RunRow, 'person' | 'file'>): string => person ?? file;

/** When a run was performed, as its file says. */
export const whenWord = ({ begunAt }: Pick<RunRow, 'begunAt'>): string =>
  begunAt === null ? '–' : momentFigure(begunAt);

/** What was performed, as the exercise calls itself. */
export const exerciseWord = ({ title }: Pick<RunRow, 'title'>): string => title ?? word('row.noExercise');

/** The heading of a group of rows. */
export function groupWord(grouping: Grouping, { first }: Extract<Shown, { kind: 'group' }>): string {
  switch (grouping) {
    case 'sat':
      return word(`sat.${sittingOf(first.row)}`);
    case 'verdict':
      return verdictWord(first.row.verdict);
    case 'integrity':
      return integrityWord(first.row.integrity);
    case 'review':
      return word(`review.${first.review}`);
    case 'exercise':
      return exerciseWord(first.row);
    default:
      return first.row.person ?? word('row.nobody');
  }
}
