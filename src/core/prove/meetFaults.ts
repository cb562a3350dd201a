import { drive, steady } from '../hands/index.ts';
import { assess, conditionsMet } from '../judge/index.ts';
import { advance, attempt, begin, type RecordEntry, type RunState } from '../run/index.ts';
import type { Scenario } from '../scenario/index.ts';
import type { FaultResult, Note } from './types.ts';

/**
 * Of every planted fault: whether a crew that does what is asked has it before its eyes, ears or gauges before the work
 * it endangers, and what a crew that never looks is caught by. The second is the sound job's work played on regardless.
 */
export function meetFaults(scenario: Scenario, steadily: RunState): readonly FaultResult[] {
  if (scenario.faults.length === 0) return [];
  const met = conditionsMet(steadily);
  const blind = assess(playOn(scenario, drive({ ...scenario, faults: [] }, steady).entries));
  const failed = blind.holdPoints
    .filter((h) => h.outcome === 'missed' || h.outcome === 'false')
    .map((h) => h.id);
  return scenario.faults.map(({ fault }) => {
    const condition = met.find((one) => one.id === fault);
    const named = blind.findings.filter(
      (finding) => finding.items.includes(fault) && (finding.points > 0 || finding.critical),
    );
    const critical = blind.findings.filter((finding) => finding.critical);
    const caughtBy = [...named, ...critical].map((finding) => finding.id);
    return {
      id: fault,
      felt:
        condition !== undefined &&
        condition.noticedAt !== null &&
        (condition.endangeredAt === null || condition.noticedAt <= condition.endangeredAt),
      caughtBy: [...new Set<string>([...caughtBy, ...failed])],
    };
  });
}

/** Plays entries open loop, each as long after the one before as it was; what the hand can no longer do is left out. */
function playOn(scenario: Scenario, entries: readonly RecordEntry[]): RunState {
  let run = begin(scenario);
  let [lateS, lastS] = [run.clockS, entries[0]?.atS ?? 0];
  for (const { atS, action } of entries) {
    lateS = Math.max(lateS + atS - lastS, run.busyUntilS);
    lastS = atS;
    run = advance(run, lateS);
    lateS = run.clockS;
    const attempted = attempt(run, action);
    if ('run' in attempted) run = attempted.run;
  }
  return run.rig.ending === null ? advance(run, run.busyUntilS) : run;
}

export function faultNotes(scenario: Scenario, results: readonly FaultResult[]): readonly Note[] {
  return results.flatMap(({ id, felt, caughtBy }, i): Note[] => {
    const field = `faults.${i}`;
    const note = { field, numbers: {}, about: id, grave: false } as const;
    // struck only later than a crew that stops where it should: nothing to be felt yet
    const hidden = !felt && scenario.intendedEnding === 'complete';
    return [
      ...(hidden ? [{ ...note, id: 'faultHidden' as const }] : []),
      ...(caughtBy.length === 0 ? [{ ...note, id: 'faultUncaught' as const }] : []),
    ];
  });
}
