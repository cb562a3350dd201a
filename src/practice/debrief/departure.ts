import type { Assessment, Finding } from '../../core/judge/index.ts';
import { due, type Due } from '../../core/procedure/index.ts';
import { could, read, type RecordEntry } from '../../core/run/index.ts';
import { momentBefore, type Performance } from '../../session/index.ts';

/** The first act that left the right way in a manner that cost something, and what was due instead. */
export interface Departure {
  /** Place of the act in the record. */
  readonly index: number;
  readonly entry: RecordEntry;
  readonly finding: Finding;
  readonly due: Due | null;
}

/**
 * Finds it. Acts in another order than the coach's that cost nothing are no departure; an omission departs at the act
 * that went on without it, and what was due then is what was left out.
 */
export function firstDeparture(performance: Performance, assessment: Assessment): Departure | null {
  const finding = assessment.findings
    .filter(({ id, points, critical }) => (critical || points > 0) && id !== 'holdNotReached')
    .reduce<Finding | null>((first, one) => (first === null || one.atS < first.atS ? one : first), null);
  if (finding === null) return null;
  const index = performance.entries.findLastIndex(({ atS }) => atS <= finding.atS + 1e-6);
  if (index < 0) return null;
  return { index, entry: performance.entries[index], finding, due: dueBefore(performance, index) };
}

/** What was due when an act was done. */
export function dueBefore(performance: Performance, index: number): Due | null {
  const run = momentBefore(performance, index);
  return due(run, (action) => could(run, action) === null, read(run));
}

/** The finding that should be worked on next: what failed the run first, then what cost most. */
export function gravest(findings: readonly Finding[]): Finding | null {
  return findings.reduce<Finding | null>((worst, one) => {
    if (worst === null || (one.critical && !worst.critical)) return one;
    return one.critical === worst.critical && one.points > worst.points ? one : worst;
  }, null);
}
