import { holdPointIds } from '../../rig/index.ts';
import { headings } from '../../scenario/index.ts';
import type { Group } from '../group/index.ts';
import type { RunRow } from '../row.ts';

type Value = string | number | null;

/** The table of runs as CSV (RFC 4180): column names are fixed, so that another program can rely on them. */
export function csvOfRuns(rows: readonly RunRow[]): string {
  const head = [
    'digest',
    'file',
    'person',
    'attempt',
    'begun_at',
    'scenario',
    'title',
    'engine',
    'integrity',
    'first_bad',
    'verdict',
    'ending',
    'score',
    ...headings.map((id) => `points_${id}`),
    'critical_findings',
    'falsely_signed',
    ...holdPointIds,
    'actions',
    'simulated_s',
    'sat_as',
    'coach_asked',
    'said_verdict',
    'said_score',
  ];
  const lines = rows.map((row): Value[] => [
    row.digest,
    row.file,
    row.person,
    row.attempt,
    row.begunAt,
    row.scenarioId,
    row.title,
    row.engine,
    row.integrity,
    row.firstBad === null ? null : placeOf(row.firstBad),
    row.verdict,
    row.ending,
    row.score,
    ...headings.map((id) => row.headings?.[id].got ?? null),
    row.critical.join(' '),
    row.falselySigned.join(' '),
    ...holdPointIds.map((id) => row.holdPoints.find((hold) => hold.id === id)?.outcome ?? null),
    row.actions,
    row.simulatedS,
    row.sitting?.mode ?? null,
    row.sitting?.asked ?? null,
    row.said?.verdict ?? null,
    row.said?.score ?? null,
  ]);
  return csvOf([head, ...lines]);
}

/** The figures of a group as CSV, one line a hold point. Shares are of 1. */
export function csvOfGroup(group: Group): string {
  const head = [
    'hold_point',
    'reached',
    'failed',
    'falsely_signed',
    'failure_rate',
    'wilson95_low',
    'wilson95_high',
    'difficulty',
    'discrimination',
    'ebel_band',
    'outer_group',
    'small_group',
  ];
  const lines = group.holdPoints.map((hold): Value[] => [
    hold.id,
    hold.reached,
    hold.failed,
    hold.falselySigned,
    hold.failureRate,
    hold.interval?.low ?? null,
    hold.interval?.high ?? null,
    hold.reached === 0 ? null : hold.difficulty,
    hold.discrimination,
    hold.band,
    hold.outer,
    hold.small ? 'yes' : 'no',
  ]);
  return csvOf([head, ...lines]);
}

function placeOf({ where, byte }: NonNullable<RunRow['firstBad']>): string {
  return where !== '' ? where : byte === null ? 'file' : `byte ${byte}`;
}

function csvOf(lines: readonly (readonly Value[])[]): string {
  return lines.map((line) => `${line.map(field).join(',')}\r\n`).join('');
}

/** A field. What a spreadsheet would take for a formula is led by an apostrophe, so that it stays a text. */
function field(value: Value): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const text = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
