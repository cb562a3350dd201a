import { linearRegression, mean } from 'simple-statistics';
import type { RunRow } from '../row.ts';

/** One person's judged runs in the order they were made. */
export interface PersonAttempts {
  readonly person: string;
  readonly runs: readonly {
    readonly digest: string;
    readonly attempt: number;
    readonly score: number;
    readonly verdict: NonNullable<RunRow['verdict']>;
  }[];
  /** Last score less first. */
  readonly change: number | null;
  /** Points an attempt, by least squares; null with fewer than two attempts. */
  readonly perAttempt: number | null;
}

/** Change over attempts, person by person, in the order of their names. Runs without a person or score are left out. */
export function attemptsOf(rows: readonly RunRow[]): readonly PersonAttempts[] {
  const people = new Map<string, RunRow[]>();
  for (const row of rows) {
    if (row.person === null || row.score === null || row.verdict === null) continue;
    const runs = people.get(row.person);
    if (runs) runs.push(row);
    else people.set(row.person, [row]);
  }
  return [...people]
    .sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
    .map(([person, runs]) => personAttempts(person, runs));
}

function personAttempts(person: string, rows: readonly RunRow[]): PersonAttempts {
  const ordered = [...rows].sort(byTime);
  const runs = ordered.flatMap(({ digest, score, verdict }, i) =>
    score === null || verdict === null ? [] : [{ digest, attempt: i + 1, score, verdict }],
  );
  const several = runs.length > 1;
  return {
    person,
    runs,
    change: several ? runs[runs.length - 1].score - runs[0].score : null,
    perAttempt: several ? linearRegression(runs.map((run) => [run.attempt, run.score])).m : null,
  };
}

function byTime(a: RunRow, b: RunRow): number {
  const [whenA, whenB] = [a.begunAt ?? '', b.begunAt ?? ''];
  if (whenA !== whenB) return whenA < whenB ? -1 : 1;
  if (a.attempt !== b.attempt) return (a.attempt ?? 0) - (b.attempt ?? 0);
  return a.digest < b.digest ? -1 : 1;
}

/** Mean score at each attempt, with how many got so far. */
export function meanByAttempt(
  people: readonly PersonAttempts[],
): readonly { readonly attempt: number; readonly n: number; readonly mean: number }[] {
  const most = people.reduce((longest, { runs }) => Math.max(longest, runs.length), 0);
  return Array.from({ length: most }, (_, i) => {
    const scores = people.flatMap(({ runs }) => (runs.length > i ? [runs[i].score] : []));
    return { attempt: i + 1, n: scores.length, mean: mean(scores) };
  });
}
