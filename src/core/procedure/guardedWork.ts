import type { Fact, Job } from '../rig/index.ts';
import type { Limits } from './settings.ts';
import { kindOf, latestDone } from './recall.ts';

/** What a guard may know beside the fact: what came before it (the fact itself may be in it or not). */
export interface GuardContext {
  readonly facts: readonly Fact[];
  readonly limits: Limits;
  readonly job: Job;
}

/** The work a hold point guards: does it begin with this fact? */
export interface Guard {
  /** Kinds of fact it listens to; anything else costs nothing. */
  readonly kinds: readonly Fact['fact'][];
  readonly begins: (fact: Fact, context: GuardContext) => boolean;
}

/** The piece last put on the rod's tip is of that kind. */
export function loaded({ facts, job }: GuardContext, kind: string): boolean {
  const load = latestDone(facts, 'rod.load');
  return load !== null && kindOf(job, load.action.piece) === kind;
}

/** Slackening the chains or taking off what stands under the valve, once the coupling has been opened. */
export function opensRig(fact: Fact, { facts, job }: GuardContext): boolean {
  if (fact.fact === 'chain.released') return true;
  if (fact.fact === 'tensioner.turned') return (latestDone(facts, 'tensioner.turn')?.action.turns ?? 0) < 0;
  if (fact.fact !== 'piece.removed') return false;
  const kind = kindOf(job, fact.piece);
  return kind === 'isolationValve' || kind === 'lowerSpool' || kind === 'saddle' || kind === 'chain';
}
