import { follow, procedureAtStart, stages, type StageId } from '../../core/procedure/index.ts';
import type { RunState } from '../../core/run/index.ts';

/** When a stage of the work began in a run, simulated s. */
export interface StageBegun {
  readonly stage: StageId;
  readonly atS: number;
}

/** The stages a run came to, in the order of the work; the first begins at zero. */
export function stagesOf(run: RunState): readonly StageBegun[] {
  const { job, limits } = run.scenario;
  const begun: StageBegun[] = [{ stage: stages[0], atS: 0 }];
  let now = procedureAtStart();
  run.facts.forEach((fact, i) => {
    const next = follow(now, fact, { job, limits, facts: run.facts.slice(0, i + 1) });
    if (next.stage !== now.stage) begun.push({ stage: next.stage, atS: fact.atS });
    now = next;
  });
  return begun;
}

/** One stage in two runs: when it began and how long it took, s; null in a run that did not come to it. */
export interface StagePair {
  readonly stage: StageId;
  readonly one: { readonly atS: number; readonly tookS: number } | null;
  readonly other: { readonly atS: number; readonly tookS: number } | null;
}

/** Both runs side by side, stage by stage. */
export function pairStages(
  one: readonly StageBegun[],
  oneEndS: number,
  other: readonly StageBegun[],
  otherEndS: number,
): readonly StagePair[] {
  return stages
    .map((stage) => ({ stage, one: spanOf(one, oneEndS, stage), other: spanOf(other, otherEndS, stage) }))
    .filter((pair) => pair.one !== null || pair.other !== null);
}

function spanOf(begun: readonly StageBegun[], endS: number, stage: StageId): StagePair['one'] {
  const at = begun.findIndex((one) => one.stage === stage);
  if (at < 0) return null;
  const { atS } = begun[at];
  return { atS, tookS: (begun[at + 1]?.atS ?? endS) - atS };
}

/**
 * Where a moment of the other run lies on this run's clock, s: within a stage both came to, by the share of the stage
 * that had passed; a stage only the other came to has no place here.
 */
export function alignedS(pairs: readonly StagePair[], otherAtS: number): number | null {
  const pair = pairs.findLast(({ other }) => other !== null && other.atS <= otherAtS);
  if (!pair?.one || !pair.other) return null;
  const share = pair.other.tookS === 0 ? 0 : (otherAtS - pair.other.atS) / pair.other.tookS;
  return pair.one.atS + Math.min(1, share) * pair.one.tookS;
}
