import { drive, steady } from '../hands/index.ts';
import { assess, conditionsMet } from '../judge/index.ts';
import { begin } from '../run/index.ts';
import type { Scenario } from '../scenario/index.ts';
import { stepsOf } from './sensitivity/deviations.ts';
import { playOn } from './sensitivity/playOn.ts';
import type { FaultResult, Note } from './types.ts';

/**
 * Of every planted fault, by itself: whether a crew that does what is asked has it before its eyes, ears or gauges before
 * the work it endangers, and what a crew that never looks is caught by: the sound job's work played on regardless.
 */
export function meetFaults(scenario: Scenario): readonly FaultResult[] {
  if (scenario.faults.length === 0) return [];
  const sound = drive({ ...scenario, faults: [] }, steady).entries;
  return scenario.faults.map((planted) => {
    const alone = { ...scenario, faults: [planted] };
    const first = begin(alone);
    const blind = assess(playOn(first, stepsOf(sound, first.clockS)).run);
    const failed = blind.holdPoints.filter((h) => h.outcome === 'missed' || h.outcome === 'false');
    const charged = blind.findings.filter(
      (finding) => finding.critical || (finding.points > 0 && finding.items.includes(planted.fault)),
    );
    const caughtBy = [...charged.map((finding) => finding.id), ...failed.map((hold) => hold.id)];
    return {
      id: planted.fault,
      felt: isFelt(alone, planted.fault),
      caughtBy: [...new Set<string>(caughtBy)],
    };
  });
}

function isFelt(alone: Scenario, fault: string): boolean {
  const condition = conditionsMet(drive(alone, steady).run).find((one) => one.id === fault);
  if (condition === undefined || condition.noticedAt === null) return false;
  return condition.endangeredAt === null || condition.noticedAt <= condition.endangeredAt;
}

export function faultNotes(results: readonly FaultResult[]): readonly Note[] {
  return results.flatMap(({ id, felt, caughtBy }, i): Note[] => {
    const note = { field: `faults.${i}`, numbers: {}, about: id, grave: false } as const;
    return [
      ...(!felt ? [{ ...note, id: 'faultHidden' as const }] : []),
      ...(caughtBy.length === 0 ? [{ ...note, id: 'faultUncaught' as const }] : []),
    ];
  });
}
