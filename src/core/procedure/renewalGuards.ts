import type { Fact, HoldPointId } from '../rig/index.ts';
import { loaded, opensRig, type Guard, type GuardContext } from './guardedWork.ts';
import { isKind, latest, latestDone, type FactOf } from './recall.ts';

/** A renewal tee this far down the rod's travel has passed the ball, m. */
const PAST_BALL_M = 0.15;
/** Turning past a limit is told from reading error by this much, turns. */
const TURN_SLACK = 0.005;

/** A turn with thread in its hole. */
export const threaded = (f: { readonly engagedTurns: number }): boolean => f.engagedTurns > 0;

/** What each hold point of a renewal guards. */
export const renewalGuards: Readonly<Record<Extract<HoldPointId, `R${number}`>, Guard>> = {
  R1: {
    kinds: ['rod.moved', 'renewal.turned'],
    begins: (f, context) =>
      (f.fact === 'rod.moved' && f.travelM > PAST_BALL_M && loaded(context, 'renewalTee')) ||
      (f.fact === 'renewal.turned' && threaded(f)),
  },
  R2: {
    kinds: ['tensioner.turned', 'chain.released', 'piece.removed'],
    begins: (f, context) => opensRig(f, context) && teeIn(context) !== null,
  },
  R3: {
    kinds: ['piece.placed'],
    begins: (f, { job }) =>
      f.fact === 'piece.placed' && job.kit.some((k) => k.id === f.piece && k.kind === 'tieIn'),
  },
  R4: { kinds: ['keeper.turned'], begins: (f, context) => pastBite(f, context) && teeIn(context) !== null },
  R5: {
    kinds: ['tensioner.turned', 'chain.released', 'piece.removed'],
    begins: (f, context) =>
      opensRig(f, context) && latest(context.facts, 'newPlug.turned', threaded) !== null,
  },
  R6: {
    kinds: ['site.done'],
    begins: (f) => f.fact === 'site.done' && f.task === 'relight',
  },
};

function teeIn({ facts }: GuardContext): FactOf<'renewal.turned'> | null {
  return latest(facts, 'renewal.turned', threaded);
}

/** The keeper unscrewed by the rod, or by wrench farther than its bite. */
function pastBite(fact: Fact, { facts, limits }: GuardContext): boolean {
  if (!isKind(fact, 'keeper.turned')) return false;
  const rod = latestDone(facts, 'rod.turn');
  const wrench = latestDone(facts, 'keeper.turn');
  const pulled = latestDone(facts, 'keeper.pull')?.atS ?? -1;
  const last = Math.max(rod?.atS ?? -1, wrench?.atS ?? -1, pulled);
  if (rod !== null && rod.atS === last) return rod.action.turns < 0;
  return wrench !== null && wrench.atS === last && wrench.action.turns < -limits.biteTurns - TURN_SLACK;
}
