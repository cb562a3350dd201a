import {
  act,
  attemptTo,
  fluidQuiet,
  lastOf,
  pick,
  StopWork,
  takeOff,
  wait,
  waitUntil,
  type Crew,
} from '../crew.ts';
import type { Work } from '../hand.ts';
import { letGo } from './seating.ts';
import { barrelOnAndOpen, openBleed, rodDown, rodUp, shutBleed, spoolOff } from './valveAndBleed.ts';

/** Pulled beyond the operator's least torque, N·m, so that the wrench's own error does not fall short. */
const OVER_LEAST_NM = 7;
/** A keeper that weeps is pulled on by so much, N·m, so often. */
const PULL_ON_NM = 10;
const PULLS_MOST = 3;
/** From this torque the keeper is in by the rod; the wrench does the rest, N·m. */
const IN_BY_ROD_NM = 50;

/** Keeper over the stopper, the stop heard once more, rig off, keeper pulled and marked. */
export function* lockStop(crew: Crew): Work {
  yield* act(crew, { kind: 'rod.fit', tip: pick(crew, 'socket') });
  yield* act(crew, { kind: 'rod.load', piece: pick(crew, 'keeperPlug') });
  yield* barrelOnAndOpen(crew);
  if (!(yield* rodDown(crew))) throw new StopWork('other');
  yield* screwIn(crew);
  yield* rodUp(crew);
  yield* heardQuiet(crew);
  yield* takeOff(crew, 'rodBarrel');
  yield* spoolOff(crew);
  yield* takeOff(crew, 'isolationValve');
  yield* letGo(crew);
  yield* takeOff(crew, 'saddle');
  yield* takeOff(crew, 'seatRing');
  yield* pullKeeper(crew);
  yield* act(crew, { kind: 'sign', holdPoint: 'H6' });
}

function* screwIn(crew: Crew): Work {
  for (let pulls = 0; pulls < 24; pulls += 1) {
    const facts = yield* attemptTo(crew, { kind: 'rod.turn', turns: pulls < 4 ? 1 : 1 / 4 });
    if (facts === null) return;
    if ((lastOf(facts, 'keeper.turned')?.torqueNm ?? 0) >= IN_BY_ROD_NM) return;
  }
  throw new StopWork('other');
}

/** Valve open: the bleed opened and quiet, shut in, opened again: no puff. */
function* heardQuiet(crew: Crew): Work {
  yield* openBleed(crew);
  yield* waitUntil(crew, (readings) => !readings.bleedHeard, 120);
  yield* wait(crew, crew.order.limits.quietS);
  yield* shutBleed(crew);
  yield* wait(crew, crew.order.limits.shutS);
  if (yield* openBleed(crew)) throw new StopWork('stopFails');
}

function* pullKeeper(crew: Crew): Work {
  for (let pulls = 0; pulls < PULLS_MOST; pulls += 1) {
    const torqueNm = crew.order.limits.keeperNm + OVER_LEAST_NM + pulls * PULL_ON_NM;
    yield* act(crew, { kind: 'keeper.pull', torqueNm, holdBack: true });
    yield* act(crew, { kind: 'mark', at: 'keeper' });
    if (yield* fluidQuiet(crew, 'keeper', 60)) return;
  }
  throw new StopWork('proofFails');
}
