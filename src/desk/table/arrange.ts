import { headings, type Heading } from '../../core/scenario/index.ts';
import { decisionWords, type RunRow } from '../../core/review/index.ts';

/** How far the review of a run has come. */
export const reviewStates = ['open', 'begun', ...decisionWords, 'divided'] as const;
export type ReviewState = (typeof reviewStates)[number];

/** One run as the desk lists it. */
export interface Line {
  readonly row: RunRow;
  readonly review: ReviewState;
  /** Everything a search looks through, in small letters. */
  readonly haystack: string;
}

export const columnIds = [
  'person',
  'exercise',
  'date',
  'sat',
  'verdict',
  'score',
  'critical',
  'integrity',
  'review',
  ...headings,
] as const;
export type ColumnId = (typeof columnIds)[number];

export const groupings = ['none', 'person', 'exercise', 'sat', 'verdict', 'integrity', 'review'] as const;
export type Grouping = (typeof groupings)[number];

/** How a run was sat, as its file says. */
export const sittings = ['practice', 'assessment', 'none'] as const;
export type Sitting = (typeof sittings)[number];
export const sittingOf = ({ sitting }: RunRow): Sitting => sitting?.mode ?? 'none';

/** What is looked for; null where everything will do. */
export interface Sieve {
  readonly text: string;
  readonly verdict: RunRow['verdict'] | 'unjudged';
  readonly integrity: RunRow['integrity'] | null;
  readonly review: ReviewState | null;
  readonly exercise: string | null;
  readonly sat: Sitting | null;
  /** A critical finding's id. */
  readonly critical: string | null;
}

export const everything: Sieve = {
  text: '',
  verdict: null,
  integrity: null,
  review: null,
  exercise: null,
  sat: null,
  critical: null,
};

export interface Sorting {
  readonly by: ColumnId;
  readonly down: boolean;
}

/** A row of the shown table: a run, or the heading of a group with how many it holds. */
export type Shown =
  | { readonly kind: 'run'; readonly line: Line }
  | { readonly kind: 'group'; readonly name: string; readonly first: Line; readonly runs: number };

const isHeading = (column: ColumnId): column is Heading => headings.some((heading) => heading === column);
const ranks: Readonly<Record<string, number>> = {
  pass: 0,
  fail: 1,
  critical: 2,
  same: 0,
  differs: 1,
  altered: 2,
  damaged: 3,
  ...Object.fromEntries(reviewStates.map((state, i) => [state, i])),
  ...Object.fromEntries(sittings.map((sat, i) => [sat, i])),
};
/** Sorts after everything there is. */
const last = '\uffff';

/** What a column sorts by: a number or a text, the same kind throughout a column. */
function keyOf({ row, review }: Line, column: ColumnId): number | string {
  if (isHeading(column)) {
    const told = row.headings?.[column];
    return told === undefined || told.of === 0 ? -1 : told.got / told.of;
  }
  switch (column) {
    case 'person':
      return row.person?.toLowerCase() ?? last;
    case 'exercise':
      return row.title?.toLowerCase() ?? last;
    case 'date':
      return row.begunAt ?? '';
    case 'sat':
      return ranks[sittingOf(row)];
    case 'verdict':
      return row.verdict === null ? 9 : ranks[row.verdict];
    case 'score':
      return row.score ?? -1;
    case 'critical':
      return row.critical.length;
    case 'integrity':
      return ranks[row.integrity];
    case 'review':
      return ranks[review];
  }
}

/** The lines a sieve lets through. */
export function sieved(lines: readonly Line[], sieve: Sieve): Line[] {
  const wanted = sieve.text.toLowerCase().split(/\s+/).filter(Boolean);
  return lines.filter(
    ({ row, review, haystack }) =>
      (sieve.verdict === null || (row.verdict ?? 'unjudged') === sieve.verdict) &&
      (sieve.integrity === null || row.integrity === sieve.integrity) &&
      (sieve.review === null || review === sieve.review) &&
      (sieve.exercise === null || row.scenarioId === sieve.exercise) &&
      (sieve.sat === null || sittingOf(row) === sieve.sat) &&
      (sieve.critical === null || row.critical.includes(sieve.critical)) &&
      wanted.every((part) => haystack.includes(part)),
  );
}

/** Sorted by one column; lines that are equal there keep the order they came in. */
export function sorted(lines: readonly Line[], { by, down }: Sorting): Line[] {
  const keyed = lines.map((line, i) => ({ line, i, key: keyOf(line, by) }));
  const sign = down ? -1 : 1;
  keyed.sort((a, b) => (a.key < b.key ? -sign : a.key > b.key ? sign : a.i - b.i));
  return keyed.map(({ line }) => line);
}

/** The table as it is shown: sorted lines, under the headings of their groups where they are grouped. */
export function grouped(lines: readonly Line[], by: Grouping): readonly Shown[] {
  if (by === 'none') return lines.map((line) => ({ kind: 'run', line }));
  const groups = new Map<string, Line[]>();
  for (const line of lines) {
    const name = groupOf(line, by);
    const group = groups.get(name);
    if (group) group.push(line);
    else groups.set(name, [line]);
  }
  return [...groups].flatMap(([name, members]): Shown[] => [
    { kind: 'group', name, first: members[0], runs: members.length },
    ...members.map((line): Shown => ({ kind: 'run', line })),
  ]);
}

function groupOf({ row, review }: Line, by: Exclude<Grouping, 'none'>): string {
  switch (by) {
    case 'person':
      return row.person ?? '';
    case 'exercise':
      return row.scenarioId ?? '';
    case 'sat':
      return sittingOf(row);
    case 'verdict':
      return row.verdict ?? 'unjudged';
    case 'integrity':
      return row.integrity;
    case 'review':
      return review;
  }
}

/** A run ready to be listed. */
export function lineOf(row: RunRow, review: ReviewState): Line {
  const parts = [row.person, row.title, row.scenarioId, row.file, row.digest.slice(0, 12), ...row.critical];
  return { row, review, haystack: parts.filter(Boolean).join('\n').toLowerCase() };
}
