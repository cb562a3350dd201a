import { holdPointIds, type Fact, type HoldPointId } from '../rig/index.ts';
import { loaded, opensRig, type Guard, type GuardContext } from './guardedWork.ts';
import { isKind, latest, latestDone } from './recall.ts';
import { renewalGuards, threaded } from './renewalGuards.ts';

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
    begins: (f, context) => opensRig(f, context) && couplingOpened(context),
  },
  ...renewalGuards,
  H12: {
    kinds: ['site.done', 'ended'],
    begins: (f) =>
      (f.fact === 'site.done' && f.task === 'cover') || (f.fact === 'ended' && f.ending.kind === 'complete'),
  },
};

/** The tee is out, and no renewal tee stands there instead. */
function couplingOpened({ facts }: GuardContext): boolean {
  return latest(facts, 'tee.free') !== null && latest(facts, 'renewal.turned', threaded) === null;
}

const listeners = new Map<Fact['fact'], HoldPointId[]>();
for (const id of holdPointIds) {
  for (const kind of guards[id].kinds) listeners.set(kind, [...(listeners.get(kind) ?? []), id]);
}

/**
 * Hold points whose guarded work begins with this fact, but for those that are `history` already. Most facts have no
 * listener at all.
 */
export function begunBy(
  fact: Fact,
  context: GuardContext,
  history: (id: HoldPointId) => boolean,
): readonly HoldPointId[] {
  const ids = listeners.get(fact.fact);
  return ids ? ids.filter((id) => !history(id) && guards[id].begins(fact, context)) : [];
}
