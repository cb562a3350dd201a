import { digestOfDecision, type Decision, type RunRow } from '../core/review/index.ts';

/** Decisions that nothing has taken the place of, by the run they are about. */
export function standingOf(decisions: readonly Decision[]): ReadonlyMap<string, Decision> {
  const replaced = new Set(decisions.flatMap(({ replaces }) => (replaces === null ? [] : [replaces])));
  const standing = decisions.filter((decision) => !replaced.has(digestOfDecision(decision)));
  return new Map(standing.map((decision) => [decision.run.digest, decision]));
}

/** Rows with others added; one that is there already gives way to the one that came. */
export function joined(rows: readonly RunRow[], came: readonly RunRow[]): RunRow[] {
  const byDigest = new Map([...rows, ...came].map((row) => [row.digest, row]));
  return [...byDigest.values()];
}

/** A set of names, and the same with one more. */
export const setOf = (names: Iterable<string>): ReadonlySet<string> => new Set(names);
