import { act, attemptTo, lastOf, pick, StopWork, takeOff, wait, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { letGo } from './seating.ts';
import { shownTight, threadTaken } from './stage11Close.ts';
import {
  barrelOnAndOpen,
  lookDown,
  rodDown,
  rodUpAndBarrelOff,
  shutBleed,
  sightCapOff,
  spoolOff,
} from './valveAndBleed.ts';

const FINE_TURN = 1 / 12;
/** The rod's push has come to rest when it moves by less than this between two looks, N. */
const STEADY_N = 0.5;
/** The gas is felt in the rod from this much more push, N. */
const FELT_N = 4;

/** Keeper drawn, stopper slackened, equalised and drawn, the new plug run in and shown tight; rig off. */
export function* setNewPlug(crew: Crew): Work {
  yield* attemptTo(crew, { kind: 'rod.fit', tip: pick(crew, 'socket') });
  yield* barrelOnAndOpen(crew);
  if (!(yield* rodDown(crew))) throw new StopWork('other');
  yield* unscrewKeeper(crew);
  yield* rodUpAndBarrelOff(crew);
  yield* act(crew, { kind: 'rod.load', piece: null });
  yield* spoolOff(crew);
  yield* drawStopper(crew);
  yield* newPlugIn(crew);
  yield* takeOff(crew, 'isolationValve');
  yield* letGo(crew);
  yield* takeOff(crew, 'saddle');
  yield* takeOff(crew, 'seatRing');
}

function* unscrewKeeper(crew: Crew): Work {
  for (let turns = 0; turns < 20; turns += 1) {
    const facts = yield* act(crew, { kind: 'rod.turn', turns: -1 });
    const turned = lastOf(facts, 'keeper.turned');
    if (turned === null) throw new StopWork('other');
    if (turned.engagedTurns <= 0) return;
  }
  throw new StopWork('other');
}

/** Holder down and latched; slackened a little at a time until the gas is felt, left until it has come to rest, drawn. */
function* drawStopper(crew: Crew): Work {
  yield* act(crew, { kind: 'rod.fit', tip: pick(crew, 'stopperHolder') });
  yield* barrelOnAndOpen(crew);
  if (!(yield* rodDown(crew))) throw new StopWork('other');
  yield* act(crew, { kind: 'rod.turn', turns: -1 / 4 });
  const before = crew.view.readings.rodFeltN ?? 0;
  for (let pulls = 0; pulls < 60; pulls += 1) {
    if ((crew.view.readings.rodFeltN ?? 0) - before > FELT_N) break;
    yield* act(crew, { kind: 'innerRod.turn', turns: -FINE_TURN });
    yield* wait(crew, 10);
  }
  yield* atRest(crew);
  yield* act(crew, { kind: 'innerRod.turn', turns: -6 });
  yield* atRest(crew);
  yield* rodUpAndBarrelOff(crew);
  yield* act(crew, { kind: 'rod.load', piece: null });
}

/** Waits until the push on the rod no longer changes: the pressures have come equal. */
function* atRest(crew: Crew): Work {
  for (let looks = 0; looks < 120; looks += 1) {
    const was = crew.view.readings.rodFeltN ?? 0;
    yield* wait(crew, 30);
    if (Math.abs((crew.view.readings.rodFeltN ?? 0) - was) < STEADY_N) return;
  }
  throw new StopWork('stopFails');
}

function* newPlugIn(crew: Crew): Work {
  const plug = pick(crew, 'newTopPlug');
  yield* act(crew, { kind: 'rod.fit', tip: pick(crew, 'socket') });
  yield* act(crew, { kind: 'sealant.apply', piece: plug });
  yield* act(crew, { kind: 'rod.load', piece: plug });
  yield* barrelOnAndOpen(crew);
  if (!(yield* rodDown(crew))) throw new StopWork('other');
  const sealed = (yield* threadTaken(crew, 'newPlug.turned')) && (yield* shownTight(crew));
  if (!sealed) throw new StopWork('proofFails');
  yield* shutBleed(crew);
  yield* rodUpAndBarrelOff(crew);
  yield* spoolOff(crew);
  const saw = yield* lookDown(crew);
  if (saw.closingSquare !== true) throw new StopWork('other');
  yield* act(crew, { kind: 'sign', holdPoint: 'R5' });
  yield* sightCapOff(crew);
}
