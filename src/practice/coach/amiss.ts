import type { Finding } from '../../core/judge/index.ts';

/** Below this many points the coach holds its tongue while the work goes on: the debrief tells it. */
const leastPoints = 1;

/**
 * Findings of a run under way that were not there before and are worth a word now. That a hold point is still open,
 * or a condition still unnoticed, is no fault while the job goes on.
 */
export function freshFindings(before: readonly Finding[], now: readonly Finding[]): readonly Finding[] {
  const known = new Set(before.map(nameOf));
  return now.filter(
    (finding) =>
      !stillOpen.has(finding.id) &&
      (finding.critical || finding.points >= leastPoints) &&
      !known.has(nameOf(finding)),
  );
}

const stillOpen: ReadonlySet<Finding['id']> = new Set(['holdNotReached', 'abnormalNotNoticed', 'coachAsked']);

const nameOf = ({ id, holdPoint }: Finding): string => `${id} ${holdPoint ?? ''}`;
