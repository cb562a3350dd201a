import { OPEN_RAD } from '../../rig/index.ts';
import {
  act,
  attemptTo,
  fluidQuiet,
  lookRound,
  pick,
  StopWork,
  takeOff,
  put,
  wait,
  waitUntil,
  type Crew,
} from '../crew.ts';
import type { Work } from '../hand.ts';
import { soundPiece } from './recover/kit.ts';

const QUARTER_RAD = Math.PI / 2;
/** Longest a bleed of this rig is listened to before something must be wrong, s. */
const BLEED_MOST_S = 180;
/** How long a bleed stays shut to see whether the pressure comes back, s. */
const LOOK_AGAIN_S = 30;

/** Opens the isolation valve a little, then more, then fully. */
export function* easeOpen(crew: Crew): Work {
  if (crew.view.rig.valveOpenRad >= OPEN_RAD) return;
  yield* act(crew, { kind: 'valve.turn', angleRad: 0.1 });
  yield* wait(crew, 3);
  yield* act(crew, { kind: 'valve.turn', angleRad: 0.4 });
  yield* wait(crew, 2);
  yield* act(crew, { kind: 'valve.turn', angleRad: QUARTER_RAD });
}

export function* shutValve(crew: Crew): Work {
  yield* act(crew, { kind: 'valve.turn', angleRad: -QUARTER_RAD });
}

export function* openBleed(crew: Crew): Work<boolean> {
  const facts = yield* act(crew, { kind: 'bleed.turn', angleRad: QUARTER_RAD });
  return facts.some((fact) => fact.fact === 'bleed.turned' && fact.puff);
}

export function* shutBleed(crew: Crew): Work {
  yield* act(crew, { kind: 'bleed.turn', angleRad: -QUARTER_RAD });
}

/**
 * Opens the bleed and listens until it is quiet; how long it hissed, s. One that is silent where gas must stand above,
 * or will not die, gets a wire through it: silence is no proof of an empty barrel.
 */
export function* bleedDown(crew: Crew): Work<number> {
  yield* openBleed(crew);
  const first = yield* hissed(crew);
  if (!crew.view.readings.bleedHeard && (first > 0 || !crew.gasAbove)) return first;
  yield* act(crew, { kind: 'bleed.clear' });
  const then = yield* hissed(crew);
  if (crew.view.readings.bleedHeard) {
    // before the valve is blamed: a hose that lies badly makes any bleed last
    yield* lookRound(crew);
    yield* waitUntil(crew, (readings) => !readings.bleedHeard, BLEED_MOST_S);
  }
  if (crew.view.readings.bleedHeard) throw new StopWork('valvePassing');
  return first + then;
}

/** The same where gas that keeps coming says something about what lies below; null then. */
export function* diesAway(crew: Crew): Work<number | null> {
  try {
    return yield* bleedDown(crew);
  } catch (stop) {
    if (stop instanceof StopWork && stop.reason === 'valvePassing') return null;
    throw stop;
  }
}

const hissed = (crew: Crew): Work<number> =>
  waitUntil(crew, (readings) => !readings.bleedHeard, BLEED_MOST_S);

/** Bleeds what stands above the shut valve, and makes sure that nothing comes back. */
export function* bleedAboveValve(crew: Crew): Work {
  yield* bleedDown(crew);
  yield* wait(crew, 8);
  yield* shutBleed(crew);
  yield* wait(crew, LOOK_AGAIN_S);
  if (!(yield* openBleed(crew))) return;
  yield* waitUntil(crew, (readings) => !readings.bleedHeard, BLEED_MOST_S);
  yield* shutBleed(crew);
  yield* wait(crew, LOOK_AGAIN_S);
  if (!(yield* openBleed(crew))) return;
  yield* lookRound(crew);
  yield* waitUntil(crew, (readings) => !readings.bleedHeard, BLEED_MOST_S);
  yield* shutBleed(crew);
  yield* wait(crew, LOOK_AGAIN_S);
  if (yield* openBleed(crew)) throw new StopWork('valvePassing');
}

/** Puts the rod barrel on with its bleed shut, takes the rod in hand and eases the valve open under it. */
export function* barrelOnAndOpen(crew: Crew): Work {
  for (let tries = 0; tries < JOINT_TRIES_MOST; tries += 1) {
    yield* barrelOn(crew);
    yield* act(crew, { kind: 'rod.hold', held: true });
    yield* easeOpen(crew);
    if (yield* fluidQuiet(crew, 'topJoint', 15)) return;
    yield* rodUpAndBarrelOff(crew);
    yield* soundPiece(crew, 'rodBarrel', 0, 'proofFails');
  }
  throw new StopWork('proofFails');
}

/** A new joint over the valve that weeps is taken off, looked over and made up anew so often. */
const JOINT_TRIES_MOST = 3;

/** Where what hangs on the rod needs more height, the upper spool goes on first. */
function* barrelOn(crew: Crew): Work {
  const barrel = { kind: 'piece.place', piece: pick(crew, 'rodBarrel'), holdBack: true } as const;
  if ((yield* attemptTo(crew, barrel)) !== null) return;
  if (crew.view.hindrance !== 'noHeadroom') throw new StopWork('other');
  yield* put(crew, 'upperSpool');
  yield* act(crew, barrel);
}

/** Upper spool off again where it stands. */
export function* spoolOff(crew: Crew): Work {
  yield* attemptTo(crew, { kind: 'piece.remove', piece: pick(crew, 'upperSpool'), holdBack: true });
}

/** Rod fully up, valve shut, bled quiet with no puff; only then the barrel comes off. */
export function* rodUpAndBarrelOff(crew: Crew): Work {
  yield* rodUp(crew);
  yield* shutValve(crew);
  yield* bleedAboveValve(crew);
  yield* takeOff(crew, 'rodBarrel');
}

export function* rodUp(crew: Crew): Work {
  if (crew.view.rig.rod.travelM > 0) yield* act(crew, { kind: 'rod.move', lengthM: -0.5 });
}

/** Lowers the rod in short moves until its tip has hold of something or it stops; true where it took hold. */
export function* rodDown(crew: Crew): Work<boolean> {
  for (let moves = 0; moves < 12; moves += 1) {
    const facts = yield* attemptTo(crew, { kind: 'rod.move', lengthM: 0.05 });
    if (facts === null) return false;
    if (facts.some((fact) => fact.fact === 'rod.engaged')) return true;
  }
  return false;
}

/** Sight cap on, valve eased open, a look down with the lamp. The valve is left open. */
export function* lookDown(crew: Crew) {
  for (let tries = 0; ; tries += 1) {
    yield* put(crew, 'sightCap');
    yield* easeOpen(crew);
    if (yield* fluidQuiet(crew, 'topJoint', 15)) return yield* look(crew);
    if (tries + 1 === JOINT_TRIES_MOST) throw new StopWork('proofFails');
    yield* sightCapOff(crew);
    yield* soundPiece(crew, 'sightCap', 0, 'proofFails');
  }
}

export function* look(crew: Crew) {
  const facts = yield* act(crew, { kind: 'look', at: 'downBore' });
  const looked = facts.find((fact) => fact.fact === 'looked');
  if (looked?.fact !== 'looked' || !looked.saw.visible) throw new StopWork('other');
  return looked.saw;
}

/** Valve shut, cap bled by its own bleed, cap off. */
export function* sightCapOff(crew: Crew): Work {
  yield* shutValve(crew);
  yield* bleedAboveValve(crew);
  yield* takeOff(crew, 'sightCap');
}
