import type { Fact, HoldPointId, Job } from '../rig/index.ts';
import { begunBy } from './guards.ts';
import { nextHold } from './holdMachine.ts';
import { latest } from './recall.ts';
import type { Limits } from './settings.ts';
import { milestoneOf, nextStage } from './stageMachine.ts';
import type { HoldState, ProcedureValue } from './types.ts';

/** What the procedure may look back at when a fact arrives. */
export interface FollowContext {
  readonly job: Job;
  readonly limits: Limits;
  /** Facts so far; the new one may be among them. */
  readonly facts: readonly Fact[];
}

/** Nothing begun, nothing signed. */
export function procedureAtStart(): ProcedureValue {
  return {
    stage: 's1',
    holds: {
      H1: 'open', H2: 'open', H3: 'open', H4: 'open', H5: 'open', H6: 'open',
      H7: 'open', H8: 'open', H9: 'open', H10: 'open', H11: 'open', H12: 'open',
      R1: 'open', R2: 'open', R3: 'open', R4: 'open', R5: 'open', R6: 'open',
    },
  }; // prettier-ignore
}

/**
 * The procedure after one more fact. It watches and blocks nothing: work begun without a signature only shows as
 * missed. Returns the same value when the fact is nothing to it.
 */
export function follow(value: ProcedureValue, fact: Fact, context: FollowContext): ProcedureValue {
  const holds = followHolds(value.holds, fact, context);
  const stage = followStage(value.stage, fact, context);
  return holds === value.holds && stage === value.stage ? value : { stage, holds };
}

type Holds = Readonly<Record<HoldPointId, HoldState>>;

function followHolds(holds: Holds, fact: Fact, context: FollowContext): Holds {
  if (fact.fact === 'signed') return changed(holds, fact.holdPoint, 'sign');
  if (fact.fact === 'withdrawn') return changed(holds, fact.holdPoint, 'withdraw');
  let next = holds;
  for (const id of begunBy(fact, context, (one) => isHistory(holds[one]))) next = changed(next, id, 'begin');
  return next;
}

/** Its work has begun: nothing changes it any more. */
function isHistory(state: HoldState): boolean {
  return state === 'passed' || state === 'missed';
}

function changed(holds: Holds, id: HoldPointId, event: 'sign' | 'withdraw' | 'begin'): Holds {
  const before = holds[id];
  if (isHistory(before)) return holds;
  const after = nextHold(id, before, event);
  return after === before ? holds : { ...holds, [id]: after };
}

function followStage(
  stage: ProcedureValue['stage'],
  fact: Fact,
  context: FollowContext,
): ProcedureValue['stage'] {
  const milestone = milestoneOf(fact, context.job, {
    teeOut: () => latest(context.facts, 'tee.free') !== null,
  });
  return milestone === null || milestone === stage ? stage : nextStage(stage, milestone);
}
