import { digestOfDecision, type Decision, type RunRow } from '../core/review/index.ts';

/** Decisions that nothing has taken the place of, by the run they are about: one for each assessor who decided on it. */
export function standingOf(decisions: readonly Decision[]): ReadonlyMap<string, readonly Decision[]> {
  const replaced = new Set(decisions.flatMap(({ replaces }) => (replaces === null ? [] : [replaces])));
  const standing = new Map<string, Decision[]>();
  for (const decision of decisions) {
    if (replaced.has(digestOfDecision(decision))) continue;
    const { digest } = decision.run;
    standing.set(digest, [...(standing.get(digest) ?? []), decision]);
  }
  return standing;
}

/** What was decided about a run: the word of all who decided, or that they differ; null where nobody has. */
export function wordOf(standing: readonly Decision[]): Decision['decision'] | 'divided' | null {
  if (standing.length === 0) return null;
  const [{ decision }] = standing;
  return standing.every((one) => one.decision === decision) ? decision : 'divided';
}

/** Rows with others added; one that is there already gives way to the one that came. */
export function joined(rows: readonly RunRow[], came: readonly RunRow[]): RunRow[] {
  const byDigest = new Map([...rows, ...came].map((row) => [row.digest, row]));
  return [...byDigest.values()];
}

/** A set of names, and the same with one more. */
export const setOf = (names: Iterable<string>): ReadonlySet<string> => new Set(names);
