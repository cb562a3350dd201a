import type { ExerciseSet } from '../scenario/index.ts';
import type { Assessment } from './types.ts';

/** How a set of exercises went. */
export interface SetAssessment {
  readonly verdict: 'pass' | 'fail';
  readonly passed: number;
  readonly critical: number;
  /** Over all exercises of the set; one that was not done counts as nothing. */
  readonly meanScore: number;
  /** Exercises of the set without an assessment. */
  readonly missing: readonly string[];
}

/** Judges a set from what was made of its exercises, by name. The rule is the set's own. */
export function judgeSet(
  { exercises, pass }: ExerciseSet,
  made: ReadonlyMap<string, Pick<Assessment, 'verdict' | 'score'>>,
): SetAssessment {
  const all = exercises.flatMap((id) => made.get(id) ?? []);
  const passed = all.filter(({ verdict }) => verdict === 'pass').length;
  const critical = all.filter(({ verdict }) => verdict === 'critical').length;
  const meanScore = all.reduce((sum, { score }) => sum + score, 0) / exercises.length;
  const met = passed >= pass.atLeast && meanScore >= pass.meanScore && (critical === 0 || !pass.noneCritical);
  return {
    verdict: met ? 'pass' : 'fail',
    passed,
    critical,
    meanScore: Math.floor(meanScore * 100 + 0.5) / 100,
    missing: exercises.filter((id) => !made.has(id)),
  };
}
