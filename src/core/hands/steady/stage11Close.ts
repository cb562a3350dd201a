import { act, attemptTo, lastOf, pick, StopWork, takeOff, wait, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { letGo } from './seating.ts';
import {
  barrelOnAndOpen,
  bleedDown,
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

/** Threads seen, closing plug in, shown quiet with the valve open, seen square; then the rig comes off. */
export function* closeCoupling(crew: Crew): Work {
  yield* takeOff(crew, 'valveCap');
  const threads = yield* lookDown(crew);
  if (threads.threadsSound === false) throw new StopWork('other');
  yield* sightCapOff(crew);
  yield* act(crew, { kind: 'rod.load', piece: pick(crew, 'closingPlug') });
  yield* barrelOnAndOpen(crew);
  if (!(yield* rodDown(crew))) throw new StopWork('other');
  yield* act(crew, { kind: 'rod.turn', turns: -1 / 4 });
  yield* screwIn(crew);
  yield* shownTight(crew);
  yield* shutBleed(crew);
  yield* rodUpAndBarrelOff(crew);
  const saw = yield* lookDown(crew);
  if (saw.closingSquare !== true) throw new StopWork('other');
  yield* act(crew, { kind: 'sign', holdPoint: 'H11' });
  yield* sightCapOff(crew);
  yield* rigOff(crew);
}

/** Hand-tight first, then the right turns past it by feel: firm, not forced. */
export function* screwIn(crew: Crew): Work {
  const { closingPastHandTurns, closingNm } = crew.order.limits;
  const [least, most] = closingPastHandTurns;
  const firmNm = closingNm[0] + OVER_LEAST_NM;
  let past = 0;
  for (let pulls = 0; pulls < 60; pulls += 1) {
    const turns = past > 0 ? 1 / 6 : 1 / 3;
    const facts = yield* attemptTo(crew, { kind: 'rod.turn', turns });
    if (facts === null) break;
    const turned = lastOf(facts, 'closing.turned');
    if (turned === null || turned.crossed) throw new StopWork('other');
    if (turned.torqueNm >= HAND_TIGHT_NM) past += turns;
    if (past >= least && (turned.torqueNm >= firmNm || past + turns > most)) return;
  }
  if (past < least) throw new StopWork('other');
}

function* shownTight(crew: Crew): Work {
  const { quietS, shutS } = crew.order.limits;
  yield* bleedDown(crew);
  yield* wait(crew, quietS + TO_BE_SURE_S);
  yield* shutBleed(crew);
  yield* wait(crew, shutS + TO_BE_SURE_S);
  if (yield* openBleed(crew)) throw new StopWork('other');
}

function* rigOff(crew: Crew): Work {
  yield* takeOff(crew, 'isolationValve');
  yield* takeOff(crew, 'lowerSpool');
  yield* letGo(crew);
  yield* takeOff(crew, 'saddle');
  yield* takeOff(crew, 'splitCollar');
  yield* takeOff(crew, 'cupGasket');
}
