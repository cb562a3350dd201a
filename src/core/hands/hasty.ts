import type { Action, HoldPointId, KitKind, SiteTask } from '../rig/index.ts';
import { attemptTo, crewOf, lastOf, pick, wait, waitUntil, type Crew } from './crew.ts';
import type { Hand, Work } from './hand.ts';

const QUARTER_RAD = Math.PI / 2;

/**
 * A crew in a hurry: it knows the moves and leaves out what shows whether they worked. It signs without evidence, holds
 * no proof, bleeds into the hole or not at all, neither bonds nor looks, and puts the plug in dry. It goes on whatever
 * happens.
 */
export const hasty: Hand = function* (order, first) {
  const crew = crewOf(order, first, false);
  yield* arrive(crew);
  yield* sealAndSign(crew);
  yield* drawPlug(crew);
  yield* stopAndLock(crew);
  yield* cut(crew);
  yield* drawTee(crew);
  yield* close(crew);
};

const sign = (holdPoint: HoldPointId): Action => ({ kind: 'sign', holdPoint });
const valve = (share: number): Action => ({ kind: 'valve.turn', angleRad: share * QUARTER_RAD });
const bleed = (share: number): Action => ({ kind: 'bleed.turn', angleRad: share * QUARTER_RAD });

function* all(crew: Crew, ...actions: readonly Action[]): Work {
  for (const action of actions) yield* attemptTo(crew, action);
}

function* on(crew: Crew, ...kinds: readonly KitKind[]): Work {
  for (const kind of kinds)
    yield* attemptTo(crew, { kind: 'piece.place', piece: pick(crew, kind), holdBack: false });
}

function* off(crew: Crew, ...kinds: readonly KitKind[]): Work {
  for (const kind of kinds)
    yield* attemptTo(crew, { kind: 'piece.remove', piece: pick(crew, kind), holdBack: true });
}

/** Reads the order, shuts the customer off, and takes the pressure from the tag. */
function* arrive(crew: Crew): Work {
  const tasks: readonly SiteTask[] = ['readOrder', 'shutCustomer'];
  for (const task of tasks) yield* attemptTo(crew, { kind: 'site.do', task });
  yield* all(crew, sign('H1'), { kind: 'clean', at: 'boss' });
}

/** Plug backed off too far, chains drawn up without a tap, a proof of ten seconds at half the pressure. */
function* sealAndSign(crew: Crew): Work {
  yield* attemptTo(crew, { kind: 'plug.turn', turns: -1 / 4, holdBack: false });
  yield* on(crew, 'seatRing');
  yield* chains(crew);
  yield* on(crew, 'isolationValve', 'testHead');
  yield* all(crew, { kind: 'vent.turn', open: -1 }, valve(1), { kind: 'pump.stroke', strokes: 10 });
  yield* wait(crew, 10);
  yield* all(crew, sign('H2'), { kind: 'vent.turn', open: 1 });
  yield* waitUntil(crew, ({ headGaugePa }) => (headGaugePa ?? 0) < 2e4, 30);
  yield* all(crew, valve(-1));
  yield* off(crew, 'testHead');
}

/** All of it in one pull, past snug. */
const DRAWN_TURNS = 0.45;

function* chains(crew: Crew): Work {
  for (const nth of [0, 1]) {
    yield* attemptTo(crew, { kind: 'piece.place', piece: pick(crew, 'chain', nth), holdBack: false });
  }
  yield* on(crew, 'saddle');
  for (const chain of [0, 1]) {
    yield* all(crew, { kind: 'chain.hook', chain, hooked: true });
    for (const side of ['left', 'right'] as const)
      yield* attemptTo(crew, { kind: 'tensioner.turn', chain, side, turns: DRAWN_TURNS });
  }
}

/** Bleeds until the hiss is gone, into the hole, and takes the barrel off without a second look. */
function* barrelOff(crew: Crew): Work {
  yield* all(crew, { kind: 'rod.move', lengthM: -0.5 }, valve(-1), bleed(1));
  yield* waitUntil(crew, (readings) => !readings.bleedHeard, 60);
  yield* off(crew, 'rodBarrel');
}

function* barrelOn(crew: Crew): Work {
  yield* on(crew, 'rodBarrel');
  if (crew.view.hindrance === 'noHeadroom') yield* on(crew, 'upperSpool', 'rodBarrel');
  yield* all(crew, { kind: 'hose.lead', outlet: 'inHole' }, { kind: 'rod.hold', held: true }, valve(1));
}

function* drawPlug(crew: Crew): Work {
  yield* all(crew, { kind: 'rod.fit', tip: pick(crew, 'socket') });
  yield* barrelOn(crew);
  yield* all(crew, { kind: 'rod.move', lengthM: 0.5 });
  yield* turnUntil(crew, 'plug.free');
  yield* barrelOff(crew);
  yield* all(crew, { kind: 'rod.load', piece: null }, sign('H3'));
}

function* turnUntil(crew: Crew, fact: 'plug.free' | 'tee.free'): Work {
  for (let turns = 0; turns < 20; turns += 1) {
    const facts = yield* attemptTo(crew, { kind: 'rod.turn', turns: -1 });
    if (facts === null || lastOf(facts, fact) !== null) return;
  }
}

/** Stopper by eye instead of by rule, never tried at the bleed; keeper without hold-back, short of its torque. */
function* stopAndLock(crew: Crew): Work {
  yield* all(crew, { kind: 'rod.fit', tip: pick(crew, 'stopperHolder') });
  yield* all(
    crew,
    { kind: 'rod.load', piece: pick(crew, 'boreStopper') },
    { kind: 'collar.set', travelM: 0.352 },
  );
  yield* barrelOn(crew);
  yield* all(crew, { kind: 'rod.move', lengthM: 0.5 }, { kind: 'innerRod.turn', turns: 3.4 });
  yield* all(crew, sign('H4'), { kind: 'collar.set', travelM: null }, { kind: 'rod.turn', turns: 0.5 });
  yield* barrelOff(crew);
  yield* all(crew, sign('H5'), { kind: 'rod.fit', tip: pick(crew, 'socket') });
  yield* all(crew, { kind: 'rod.load', piece: pick(crew, 'keeperPlug') });
  yield* barrelOn(crew);
  yield* all(
    crew,
    { kind: 'rod.move', lengthM: 0.5 },
    { kind: 'rod.turn', turns: 5 },
    { kind: 'rod.turn', turns: 1 },
  );
  yield* all(crew, { kind: 'rod.move', lengthM: -0.5 }, bleed(1));
  yield* waitUntil(crew, (readings) => !readings.bleedHeard, 60);
  yield* off(crew, 'rodBarrel', 'upperSpool', 'isolationValve');
  yield* rigOff(crew);
  yield* off(crew, 'seatRing');
  yield* all(crew, { kind: 'keeper.pull', torqueNm: 90, holdBack: false }, sign('H6'));
}

function* rigOff(crew: Crew): Work {
  for (const chain of [0, 1]) {
    for (const side of ['left', 'right'] as const)
      yield* attemptTo(crew, { kind: 'tensioner.turn', chain, side, turns: -DRAWN_TURNS });
    yield* attemptTo(crew, { kind: 'chain.hook', chain, hooked: false });
  }
  yield* off(crew, 'saddle');
}

/** Straight through with the saw: no bond, no pilot hole, no gauge ring, nothing purged or capped. */
function* cut(crew: Crew): Work {
  yield* all(
    crew,
    sign('H7'),
    { kind: 'branch.cut', part: 'through' },
    { kind: 'tee.trim', how: 'saw' },
    sign('H8'),
  );
}

/** Tee broken loose too far, gasket on rust, second chamber never proved, the barrel lifted off full of gas. */
function* drawTee(crew: Crew): Work {
  yield* all(crew, { kind: 'tee.turn', turns: -1 / 4, holdBack: false });
  yield* on(crew, 'cupGasket', 'splitCollar');
  yield* all(
    crew,
    { kind: 'collarBolt.turn', bolt: 0, turns: 1 },
    { kind: 'collarBolt.turn', bolt: 1, turns: 1 },
  );
  yield* chains(crew);
  yield* on(crew, 'lowerSpool', 'isolationValve', 'upperSpool');
  yield* all(crew, sign('H9'), sign('H10'));
  yield* barrelOn(crew);
  yield* all(crew, { kind: 'rod.move', lengthM: 0.5 });
  yield* turnUntil(crew, 'tee.free');
  yield* all(crew, { kind: 'rod.move', lengthM: -0.5 }, valve(-1));
  yield* off(crew, 'rodBarrel');
  yield* all(crew, { kind: 'rod.load', piece: null });
  yield* off(crew, 'upperSpool');
}

/** Closing plug dry, its thread not felt for, signed before anything is heard or seen. */
function* close(crew: Crew): Work {
  yield* all(crew, { kind: 'rod.load', piece: pick(crew, 'closingPlug') });
  yield* barrelOn(crew);
  yield* all(crew, { kind: 'rod.move', lengthM: 0.5 });
  for (let pulls = 0; pulls < 8; pulls += 1) yield* attemptTo(crew, { kind: 'rod.turn', turns: 1 });
  yield* all(crew, sign('H11'));
  yield* barrelOff(crew);
  yield* off(crew, 'isolationValve', 'lowerSpool');
  yield* rigOff(crew);
  yield* all(crew, sign('H12'), { kind: 'finish' });
}
