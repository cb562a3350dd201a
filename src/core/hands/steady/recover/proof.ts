import { firstChamber, newTeeChamber, secondChamber, type ProofChamber } from '../../../procedure/index.ts';
import type { KitKind } from '../../../rig/index.ts';
import { StopWork, type Crew } from '../../crew.ts';
import type { Work } from '../../hand.ts';
import {
  bubblesAt,
  proveChamber,
  staysDown,
  headOffOpen,
  testHeadOn,
  ventDown,
  type Shown,
} from '../proof.ts';
import { drawUpMore } from '../seating.ts';
import { another, soundPiece } from './kit.ts';
import { collarSeat, teeSeat, type Seat } from './seats.ts';

/** How often a proof is tried before the work is referred back. */
const TRIES_MOST = 5;

/** The first chamber proved, and after it vented and watched: what hides behind a proof is a plug that passes. */
export const proveOnTee = (crew: Crew): Work => provedAtLast(crew, teeSeat, firstChamber);
/** The chamber on a renewal tee, which takes in the spool that its keeper needs. */
export const proveOnNewTee = (crew: Crew): Work => provedAtLast(crew, teeSeat, newTeeChamber);
/** The second, watched before anything is pumped: what lies under it is a tee that must not pass. */
export const proveOnCoupling = (crew: Crew): Work =>
  provedAtLast(crew, collarSeat, secondChamber(crew.order.teeSize));

/**
 * Proves until it holds. What it showed is looked for with leak fluid and mended where it shows: legs drawn up, seat
 * taken off and cleaned, a joint made anew, a piece changed, the thread below snugged. Every mend is proved again.
 */
function* provedAtLast(crew: Crew, seat: Seat, chamber: ProofChamber): Work {
  let drawnUp = false;
  for (let tries = 0; tries < TRIES_MOST; tries += 1) {
    const shown = yield* provedOnce(crew, chamber);
    if (shown === 'held') return;
    const place = yield* placeOf(crew, chamber, shown);
    if (place === 'seat' && !drawnUp) {
      drawnUp = true;
      yield* drawUpMore(crew);
      yield* ventDown(crew);
      continue;
    }
    yield* mend(crew, seat, shown, place);
  }
  throw new StopWork('proofFails');
}

function* provedOnce(crew: Crew, chamber: ProofChamber): Work<Shown> {
  const below = chamber.seat === 'coupling';
  if (below && !(yield* staysDown(crew))) return 'rises';
  const shown = yield* proveChamber(crew, chamber);
  if (shown !== 'held') return shown;
  yield* ventDown(crew);
  return below || (yield* staysDown(crew)) ? 'held' : 'rises';
}

/** Where it leaks, by the fluid: the place it showed already, or the one that a proof gone down still shows. */
function* placeOf(crew: Crew, chamber: ProofChamber, shown: Shown) {
  if (typeof shown === 'object') return shown.bubblesAt;
  return shown === 'neverBuilds' || shown === 'falls' ? yield* bubblesAt(crew, chamber) : null;
}

const joints: Readonly<Partial<Record<string, KitKind>>> = {
  valveJoint: 'isolationValve',
  spoolJoint: 'lowerSpool',
  topJoint: 'testHead',
};

function* mend(crew: Crew, seat: Seat, shown: Shown, place: string | null): Work {
  yield* headOffOpen(crew);
  if (shown === 'rises') {
    yield* seat.off(crew);
    if (!(yield* seat.snugBelow(crew))) throw new StopWork('proofFails');
    yield* seat.on(crew);
  } else if (shown === 'valvePasses') {
    yield* seat.stackOff(crew);
    if (!(yield* another(crew, 'isolationValve', 'valvePassing'))) throw new StopWork('valvePassing');
    yield* seat.stackOn(crew);
  } else if (place === 'seat') {
    yield* seat.off(crew);
    yield* seat.cleaned(crew);
    yield* seat.on(crew);
  } else {
    yield* jointAnew(crew, seat, joints[place ?? ''] ?? 'testHead');
  }
  yield* testHeadOn(crew);
}

/** A joint taken apart, its piece looked over and wiped or changed, and made up again. */
function* jointAnew(crew: Crew, seat: Seat, kind: KitKind): Work {
  if (kind !== 'testHead') yield* seat.stackOff(crew);
  yield* soundPiece(crew, kind, 0, 'proofFails');
  if (kind !== 'testHead') yield* seat.stackOn(crew);
}
