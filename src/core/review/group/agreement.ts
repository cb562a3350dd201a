import { decisionWords, digestOfDecision, type Decision } from '../decision.ts';
import { cohenKappa, type Agreement } from './kappa.ts';

/**
 * How far two assessors agree, over the runs that both decided. Of several decisions by one assessor on one run the one
 * that nothing replaces counts.
 */
export function agreementOf(decisions: readonly Decision[], first: string, second: string): Agreement {
  const replaced = new Set(decisions.flatMap(({ replaces }) => (replaces === null ? [] : [replaces])));
  const standing = decisions.filter((decision) => !replaced.has(digestOfDecision(decision)));
  const byRun = (name: string) =>
    new Map(
      standing
        .filter(({ assessor }) => assessor.name === name)
        .map(({ run, decision }) => [run.digest, decision] as const),
    );
  const theirs = byRun(second);
  const pairs = [...byRun(first)].flatMap(([run, decision]) => {
    const other = theirs.get(run);
    return other === undefined ? [] : [[decision, other] as const];
  });
  return cohenKappa(pairs, decisionWords);
}
