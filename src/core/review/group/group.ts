import type { HoldPointId } from '../../rig/index.ts';
import type { RunRow } from '../row.ts';
import { cronbachAlpha } from './alpha.ts';
import { attemptsOf, meanByAttempt, type PersonAttempts } from './attempts.ts';
import { itemFigures, type ItemFigures } from './items.ts';
import { wilson, type Interval } from './wilson.ts';

/** Below so many a figure is shown as an interval and called small (judgement, no rule). */
export const SMALL_GROUP = 30;

/** How one hold point went in a group of runs. */
export interface HoldPointFigures extends ItemFigures {
  readonly id: HoldPointId;
  /** Runs that came to it. */
  readonly reached: number;
  /** Missed or signed without the evidence. Misled is no failure. */
  readonly failed: number;
  readonly falselySigned: number;
  /** Share of those that came to it; null where none did. */
  readonly failureRate: number | null;
  readonly interval: Interval | null;
  readonly small: boolean;
}

/** One person at one hold point. */
export interface Cell {
  readonly reached: number;
  readonly failed: number;
}

export interface Group {
  /** Runs judged and believed; all figures are of these. */
  readonly runs: number;
  readonly people: number;
  readonly leftOut: number;
  readonly small: boolean;
  readonly passed: { readonly count: number; readonly interval: Interval | null };
  /** By failure rate, the worst first. */
  readonly holdPoints: readonly HoldPointFigures[];
  /** Over hold points as items, one row a run; null where it has no meaning. */
  readonly alpha: number | null;
  readonly attempts: readonly PersonAttempts[];
  readonly meanByAttempt: ReturnType<typeof meanByAttempt>;
  /** Heat map: people down, hold points across in the order of the job. */
  readonly matrix: {
    readonly people: readonly string[];
    readonly holdPoints: readonly HoldPointId[];
    readonly cells: readonly (readonly Cell[])[];
  };
}

type Outcome = RunRow['holdPoints'][number]['outcome'];
const isFailed = (outcome: Outcome): boolean => outcome === 'missed' || outcome === 'false';

/** Everything told of a group of runs. Pure; runs that are not believed or not judged are counted and left out. */
export function groupOf(rows: readonly RunRow[]): Group {
  const judged = rows.filter((row) => row.integrity === 'same' && row.score !== null);
  const ids = orderOf(judged);
  const attempts = attemptsOf(judged);
  const passed = judged.filter(({ verdict }) => verdict === 'pass').length;
  return {
    runs: judged.length,
    people: attempts.length,
    leftOut: rows.length - judged.length,
    small: judged.length < SMALL_GROUP,
    passed: { count: passed, interval: judged.length === 0 ? null : wilson(passed, judged.length) },
    holdPoints: ids
      .map((id) => figuresOf(id, judged))
      .sort((a, b) => (b.failureRate ?? -1) - (a.failureRate ?? -1) || ids.indexOf(a.id) - ids.indexOf(b.id)),
    alpha: cronbachAlpha(judged.map((row) => ids.map((id) => (heldIn(row, id) ? 1 : 0)))),
    attempts,
    meanByAttempt: meanByAttempt(attempts),
    matrix: {
      people: attempts.map(({ person }) => person),
      holdPoints: ids,
      cells: attempts.map(({ person }) =>
        ids.map((id) =>
          cellOf(
            id,
            judged.filter((row) => row.person === person),
          ),
        ),
      ),
    },
  };
}

/** Hold points in the order of the job, of whatever exercises are in the group. */
function orderOf(rows: readonly RunRow[]): readonly HoldPointId[] {
  const ids = new Set(rows.flatMap((row) => row.holdPoints.map(({ id }) => id)));
  const number = (id: HoldPointId): number => Number(id.slice(1));
  return [...ids].sort((a, b) => (a[0] === b[0] ? number(a) - number(b) : a < b ? -1 : 1));
}

function outcomeIn(row: RunRow, id: HoldPointId): Outcome | null {
  return row.holdPoints.find((hold) => hold.id === id)?.outcome ?? null;
}

function heldIn(row: RunRow, id: HoldPointId): boolean {
  const outcome = outcomeIn(row, id);
  return outcome === 'held' || outcome === 'misled';
}

function cellOf(id: HoldPointId, rows: readonly RunRow[]): Cell {
  const outcomes = rows.map((row) => outcomeIn(row, id)).filter((o) => o !== null && o !== 'notReached');
  return { reached: outcomes.length, failed: outcomes.filter(isFailed).length };
}

function figuresOf(id: HoldPointId, rows: readonly RunRow[]): HoldPointFigures {
  const came = rows.filter((row) => {
    const outcome = outcomeIn(row, id);
    return outcome !== null && outcome !== 'notReached';
  });
  const failed = came.filter((row) => !heldIn(row, id)).length;
  const falselySigned = came.filter((row) => outcomeIn(row, id) === 'false').length;
  const reached = came.length;
  const base = { id, reached, failed, falselySigned, small: reached < SMALL_GROUP };
  if (reached === 0)
    return {
      ...base,
      failureRate: null,
      interval: null,
      difficulty: 0,
      discrimination: null,
      band: null,
      upper: null,
      lower: null,
      outer: 0,
    };
  const figures = itemFigures(came.map((row) => ({ right: heldIn(row, id), total: row.score ?? 0 })));
  return { ...figures, ...base, failureRate: failed / reached, interval: wilson(failed, reached) };
}
