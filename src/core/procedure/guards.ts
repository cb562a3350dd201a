import { holdPointIds, type Fact, type HoldPointId, type Job } from '../rig/index.ts';
import type { Limits } from './settings.ts';
import { isKind, kindOf, latest, latestDone } from './recall.ts';

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

/** Turning past a limit is told from reading error by this much, turns. */
const TURN_SLACK = 0.005;
/** A stopper this far down the rod's travel with the valve open has passed the ball, m. */
const PAST_BALL_M = 0.15;
/** Turns back from which the tee's thread is on its way out. */
const TEE_OPENING_TURNS = 3;

/** What each hold point guards (holdpoints in the handbook: "must not start before"). */
export const guards: Readonly<Record<HoldPointId, Guard>> = {
  H1: {
    kinds: ['plug.turned', 'tee.turned', 'done'],
    begins: (f) =>
      f.fact === 'plug.turned' ||
      f.fact === 'tee.turned' ||
      (isKind(f, 'done') && (f.action.kind === 'plug.turn' || f.action.kind === 'tee.turn')),
  },
  H2: {
    kinds: ['plug.turned', 'plug.free'],
    begins: (f, { limits }) =>
      f.fact === 'plug.free' || (f.fact === 'plug.turned' && f.turnsBack > limits.biteTurns + TURN_SLACK),
  },
  H3: {
    kinds: ['rod.moved', 'stopper.squeezed', 'stopper.left'],
    begins: (f, context) =>
      (f.fact === 'rod.moved' && f.travelM > PAST_BALL_M && loaded(context, 'boreStopper')) ||
      (f.fact === 'stopper.squeezed' && f.inBore) ||
      f.fact === 'stopper.left',
  },
  H4: {
    kinds: ['stopper.left', 'keeper.turned', 'rod.engaged'],
    begins: (f) =>
      f.fact === 'stopper.left' ||
      f.fact === 'keeper.turned' ||
      (f.fact === 'rod.engaged' && f.with === 'keeper'),
  },
  H5: {
    kinds: ['keeper.turned', 'rod.engaged'],
    begins: (f) => f.fact === 'keeper.turned' || (f.fact === 'rod.engaged' && f.with === 'keeper'),
  },
  H6: { kinds: ['branch.cut'], begins: (f) => f.fact === 'branch.cut' },
  H7: { kinds: ['branch.cut'], begins: (f) => f.fact === 'branch.cut' && f.part === 'through' },
  H8: {
    kinds: ['tee.turned'],
    begins: (f, { facts }) =>
      f.fact === 'tee.turned' && f.turnsBack > 0 && latestDone(facts, 'tee.turn') !== null,
  },
  H9: {
    kinds: ['tee.turned', 'tee.free'],
    begins: (f, { limits, facts }) =>
      f.fact === 'tee.free' ||
      (f.fact === 'tee.turned' &&
        f.turnsBack > limits.biteTurns + TURN_SLACK &&
        latest(facts, 'branch.cut', (cut) => cut.part === 'through') !== null),
  },
  H10: {
    kinds: ['tee.turned', 'tee.free'],
    begins: (f) => f.fact === 'tee.free' || (f.fact === 'tee.turned' && f.turnsBack > TEE_OPENING_TURNS),
  },
  H11: {
    kinds: ['tensioner.turned', 'chain.released', 'piece.removed'],
    begins: (f, context) => latest(context.facts, 'tee.free') !== null && opensRig(f, context),
  },
  H12: {
    kinds: ['site.done', 'ended'],
    begins: (f) =>
      (f.fact === 'site.done' && f.task === 'cover') || (f.fact === 'ended' && f.ending.kind === 'complete'),
  },
};

const listeners = new Map<Fact['fact'], HoldPointId[]>();
for (const id of holdPointIds) {
  for (const kind of guards[id].kinds) listeners.set(kind, [...(listeners.get(kind) ?? []), id]);
}

/** Hold points whose guarded work begins with this fact. Most facts have no listener at all. */
export function begunBy(fact: Fact, context: GuardContext): readonly HoldPointId[] {
  const ids = listeners.get(fact.fact);
  return ids ? ids.filter((id) => guards[id].begins(fact, context)) : [];
}

function loaded({ facts, job }: GuardContext, kind: string): boolean {
  const load = latestDone(facts, 'rod.load');
  return load !== null && kindOf(job, load.action.piece) === kind;
}

/** Slackening the chains or taking off what stands under the valve, once the coupling has been opened. */
function opensRig(fact: Fact, { facts, job }: GuardContext): boolean {
  if (fact.fact === 'chain.released') return true;
  if (fact.fact === 'tensioner.turned') return (latestDone(facts, 'tensioner.turn')?.action.turns ?? 0) < 0;
  if (fact.fact !== 'piece.removed') return false;
  const kind = kindOf(job, fact.piece);
  return kind === 'isolationValve' || kind === 'lowerSpool' || kind === 'saddle' || kind === 'chain';
}
