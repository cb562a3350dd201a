import { OPEN_RAD } from '../../rig/index.ts';
import { act, attemptTo, pick, StopWork, wait, waitUntil, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { topKind } from '../seen.ts';
import { threadTaken } from '../steady/stage11Close.ts';
import { rodDown, rodUp, shutValve } from '../steady/valveAndBleed.ts';

const QUARTER_RAD = Math.PI / 2;
/** Longest a bleed is listened to, s, and how long it is left open once it is quiet. */
const BLEED_MOST_S = 180;
const BLEED_ON_S = 8;
/** From this torque a keeper is in by the rod, N·m. */
const IN_BY_ROD_NM = 50;

/** What can close the top of the tee, or the coupling, through the valve. */
export type Closer = 'plug' | 'keeper' | 'closing';

/** Brings a closer down through the valve and screws it in, whatever hangs on the rod or stands on the valve before. */
export function* closeByRod(crew: Crew, closer: Closer): Work {
  const { rod } = crew.view.rig;
  if (rod.load !== closer && rod.engaged !== closer) yield* changeOver(crew, closer);
  yield* attemptTo(crew, { kind: 'rod.hold', held: true });
  yield* attemptTo(crew, { kind: 'bleed.turn', angleRad: -QUARTER_RAD });
  yield* attemptTo(crew, { kind: 'collar.set', travelM: null });
  if (crew.view.rig.rod.engaged !== closer) {
    yield* openBall(crew);
    yield* attemptTo(crew, { kind: 'leakFluid.apply', at: 'topJoint', watchS: 10 });
    if (!(yield* rodDown(crew))) yield* withoutSpool(crew);
  }
  yield* screwIn(crew, closer);
}

/** Eases the valve open, wherever its handle stands; with the rod through the ball it is open already. */
function* openBall(crew: Crew): Work {
  for (const angleRad of [0.1, 0.4, QUARTER_RAD]) {
    if (crew.view.rig.valveOpenRad >= OPEN_RAD) return;
    yield* attemptTo(crew, { kind: 'valve.turn', angleRad });
    yield* wait(crew, 2);
  }
}

/** A spool too many keeps the rod from reaching down: off with it, and once more. */
function* withoutSpool(crew: Crew): Work {
  const spool = crew.view.rig.stack.find(({ kind }) => kind === 'upperSpool');
  if (spool === undefined) throw new StopWork('other');
  yield* barrelOff(crew);
  yield* act(crew, { kind: 'piece.remove', piece: spool.id, holdBack: true });
  yield* act(crew, { kind: 'piece.place', piece: pick(crew, 'rodBarrel'), holdBack: true });
  yield* attemptTo(crew, { kind: 'rod.hold', held: true });
  yield* openBall(crew);
  if (!(yield* rodDown(crew))) throw new StopWork('other');
}

/** The right socket on the rod, the closer in it, the barrel on the valve. */
function* changeOver(crew: Crew, closer: Closer): Work {
  yield* topOff(crew);
  if (crew.view.rig.rod.load !== null) yield* act(crew, { kind: 'rod.load', piece: null });
  const socket = pick(crew, 'socket');
  if (crew.view.rig.rod.tip !== socket) yield* act(crew, { kind: 'rod.fit', tip: socket });
  const piece =
    closer === 'plug' ? 'topPlug' : pick(crew, closer === 'keeper' ? 'keeperPlug' : 'closingPlug');
  if (closer === 'closing') yield* attemptTo(crew, { kind: 'sealant.apply', piece });
  yield* act(crew, { kind: 'rod.load', piece });
  const barrel = { kind: 'piece.place', piece: pick(crew, 'rodBarrel'), holdBack: true } as const;
  if ((yield* attemptTo(crew, barrel)) !== null) return;
  if (crew.view.hindrance !== 'noHeadroom') throw new StopWork('other');
  yield* act(crew, { kind: 'piece.place', piece: pick(crew, 'upperSpool'), holdBack: true });
  yield* act(crew, barrel);
}

/** Whatever closes the stack comes off, over the shut and emptied valve; with nothing on it there is nothing to do. */
export function* topOff(crew: Crew): Work {
  switch (topKind(crew.view.rig)) {
    case null:
      return;
    case 'rodBarrel':
      return yield* barrelOff(crew);
    case 'testHead':
      yield* shutIfOpen(crew);
      yield* attemptTo(crew, { kind: 'vent.turn', open: 1 });
      yield* waitUntil(crew, ({ headGaugePa }) => (headGaugePa ?? 0) <= 0, BLEED_MOST_S);
      yield* wait(crew, BLEED_ON_S);
      return yield* takeTopOff(crew);
    case 'sightCap':
      yield* shutIfOpen(crew);
      yield* bledQuiet(crew);
      return yield* takeTopOff(crew);
    default:
      // a cap has no bleed: with gas under it, it stays, and is the containment
      if (crew.capFilled) throw new StopWork('valvePassing');
      yield* shutIfOpen(crew);
      return yield* takeTopOff(crew);
  }
}

function* barrelOff(crew: Crew): Work {
  yield* attemptTo(crew, { kind: 'rod.hold', held: true });
  const { rod, stopper, branch } = crew.view.rig;
  // over a cut branch it is the only wall, and is not slackened
  if (rod.load === 'stopper' && stopper === 'holder' && branch.cut === 'whole')
    yield* attemptTo(crew, { kind: 'innerRod.turn', turns: -10 });
  if (rod.travelM > 0) yield* rodUp(crew);
  yield* shutIfOpen(crew);
  yield* bledQuiet(crew);
  yield* takeTopOff(crew);
}

function* shutIfOpen(crew: Crew): Work {
  if (crew.view.rig.valveOpenRad > 0) yield* shutValve(crew);
}

/** Bled until nothing is heard; a bleed that will not die says that the valve is passing. */
function* bledQuiet(crew: Crew): Work {
  yield* attemptTo(crew, { kind: 'bleed.turn', angleRad: QUARTER_RAD });
  yield* waitUntil(crew, ({ bleedHeard }) => !bleedHeard, BLEED_MOST_S);
  if (crew.view.readings.bleedHeard) throw new StopWork('valvePassing');
  yield* wait(crew, BLEED_ON_S);
  yield* attemptTo(crew, { kind: 'bleed.turn', angleRad: -QUARTER_RAD });
}

function* takeTopOff(crew: Crew): Work {
  const { stack } = crew.view.rig;
  yield* act(crew, { kind: 'piece.remove', piece: stack[stack.length - 1].id, holdBack: true });
}

function* screwIn(crew: Crew, closer: Closer): Work {
  if (closer === 'plug') return yield* snugPlugByRod(crew);
  if (closer === 'closing') {
    if (!(yield* threadTaken(crew))) throw new StopWork('proofFails');
    return;
  }
  for (let pulls = 0; pulls < 24; pulls += 1) {
    const facts = yield* attemptTo(crew, { kind: 'rod.turn', turns: pulls < 4 ? 1 : 1 / 4 });
    const turned = facts?.find((fact) => fact.fact === 'keeper.turned');
    if (facts === null || (turned?.fact === 'keeper.turned' && turned.torqueNm >= IN_BY_ROD_NM)) return;
  }
}

/** The socket stands on the plug: in by as much as its mark is back, and a little past. */
export function* snugPlugByRod(crew: Crew): Work {
  const { turnsBack } = crew.view.rig.plug;
  yield* act(crew, { kind: 'rod.turn', turns: Math.min(8, Math.max(0, turnsBack) + 1 / 24) });
}
