import type { ReferReason } from '../../rig/index.ts';
import { act, attemptTo, lastOf, pick, StopWork, takeOff, wait, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { letGo } from './seating.ts';
import {
  barrelOnAndOpen,
  diesAway,
  lookDown,
  openBleed,
  rodDown,
  rodUpAndBarrelOff,
  shutBleed,
  sightCapOff,
} from './valveAndBleed.ts';

/** From this torque the thread is past hand-tight, N·m; it is turned on so far beyond the least asked for, N·m. */
const HAND_TIGHT_NM = 6;
const OVER_LEAST_NM = 6;
const TO_BE_SURE_S = 3;
/** Plugs tried: the first and the spare. */
const PLUGS_MOST = 2;

/** Threads seen, closing plug in, shown quiet with the valve open, seen square; then the rig comes off. */
export function* closeCoupling(crew: Crew): Work {
  yield* takeOff(crew, 'valveCap');
  const threads = yield* lookDown(crew);
  yield* sightCapOff(crew);
  yield* closedAtLast(crew, threads.threadsSound === false ? 'threadWorn' : 'proofFails');
  yield* act(crew, { kind: 'sign', holdPoint: 'H11' });
  yield* sightCapOff(crew);
  yield* rigOff(crew);
}

/**
 * A plug that crosses is turned back out and its thread felt for anew; one that does not seal or stand square is drawn
 * again, and the spare goes down. There is no way back from here but a closed coupling.
 */
function* closedAtLast(crew: Crew, otherwise: ReferReason): Work {
  for (let tries = 0; tries < PLUGS_MOST; tries += 1) {
    const piece = pick(crew, 'closingPlug');
    if (tries > 0) yield* act(crew, { kind: 'sealant.apply', piece });
    yield* act(crew, { kind: 'rod.load', piece });
    yield* barrelOnAndOpen(crew);
    if (!(yield* rodDown(crew))) throw new StopWork('other');
    const sealed = (yield* threadTaken(crew)) && (yield* shownTight(crew));
    yield* shutBleed(crew);
    if (sealed) {
      yield* rodUpAndBarrelOff(crew);
      const saw = yield* lookDown(crew);
      if (saw.closingSquare === true) return;
      yield* sightCapOff(crew);
      yield* ontoPlug(crew);
    }
    yield* act(crew, { kind: 'rod.turn', turns: -8 });
    yield* rodUpAndBarrelOff(crew);
    yield* act(crew, { kind: 'rod.load', piece: null });
    crew.setAside.add(piece);
  }
  throw new StopWork(otherwise);
}

/** Backwards until the start of the thread is felt, then in; true where it went in uncrossed. */
export function* threadTaken(
  crew: Crew,
  plug: 'closing.turned' | 'newPlug.turned' = 'closing.turned',
): Work<boolean> {
  for (let tries = 0; tries < 3; tries += 1) {
    yield* act(crew, { kind: 'rod.turn', turns: -1 / 4 });
    if (yield* screwIn(crew, plug)) return true;
    yield* act(crew, { kind: 'rod.turn', turns: -8 });
  }
  return false;
}

function* ontoPlug(crew: Crew): Work {
  yield* barrelOnAndOpen(crew);
  if (!(yield* rodDown(crew))) throw new StopWork('other');
}

/** Hand-tight first, then the right turns past it by feel: firm, not forced. True where it is in and not crossed. */
function* screwIn(crew: Crew, plug: 'closing.turned' | 'newPlug.turned' = 'closing.turned'): Work<boolean> {
  const { closingPastHandTurns, closingNm } = crew.order.limits;
  const [least, most] = closingPastHandTurns;
  const firmNm = closingNm[0] + OVER_LEAST_NM;
  let past = 0;
  for (let pulls = 0; pulls < 60; pulls += 1) {
    const turns = past > 0 ? 1 / 6 : 1 / 3;
    const facts = yield* attemptTo(crew, { kind: 'rod.turn', turns });
    if (facts === null) break;
    const turned = lastOf(facts, plug);
    if (turned === null || turned.crossed) return false;
    if (turned.torqueNm >= HAND_TIGHT_NM) past += turns;
    if (past >= least && (turned.torqueNm >= firmNm || past + turns > most)) return true;
  }
  return past >= least;
}

/** Bleed open with the valve open: quiet, shut in, and opened again without a puff. */
export function* shownTight(crew: Crew): Work<boolean> {
  const { quietS, shutS } = crew.order.limits;
  if ((yield* diesAway(crew)) === null) return false;
  yield* wait(crew, quietS + TO_BE_SURE_S);
  yield* shutBleed(crew);
  yield* wait(crew, shutS + TO_BE_SURE_S);
  return !(yield* openBleed(crew));
}

/** The rig off the coupling, chains last, then collar and gasket. */
export function* rigOff(crew: Crew): Work {
  yield* takeOff(crew, 'isolationValve');
  yield* takeOff(crew, 'lowerSpool');
  yield* letGo(crew);
  yield* takeOff(crew, 'saddle');
  yield* takeOff(crew, 'splitCollar');
  yield* takeOff(crew, 'cupGasket');
}
