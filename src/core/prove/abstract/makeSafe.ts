import { ballObstructed, hasValve, topPiece, type RigState } from '../../rig/index.ts';
import { holds, isPulled, isTight } from './levels.ts';
import type { Stood } from './gas.ts';

/** What making safe would do here: nothing more, or the first of these moves that a hand can do. */
export type Way = 'safe' | readonly string[];

/** The valves of the main: there whatever else there is, and the last thing to reach for. */
const LAST = 'main.isolate';

/**
 * The policy of making safe: from any state towards the nearest in which the main, the crew and the street can be left.
 * Back to the old plug where there is a way back; forward to keeper or closing plug where there is only forward; the
 * valves of the main as the last.
 */
export function nextToSafety(stood: Stood): Way {
  const { rig, gas } = stood;
  if (barred(rig) && !gas.blowing) {
    const bare = !gas.chamber && !gas.above && rig.rod.load === null;
    return bare ? 'safe' : [...letDown(stood), LAST];
  }
  return [...barAgain(stood), LAST];
}

const stopped = ({ stopper, ...rig }: RigState): boolean =>
  stopper.at === 'set' && stopper.belowPortM >= 0 && holds({ stopper, ...rig });

/** Something tight stands in the main's only opening, by itself. */
function barred(rig: RigState): boolean {
  if (rig.tee.at !== 'coupling') return closed(rig);
  if (teeComing(rig)) return false;
  const plugIn = rig.plug.at === 'tee' && rig.plug.turnsBack < SNUG_TURNS;
  const keeperIn = rig.keeper.at === 'tee' && isPulled(rig.keeper.engagedTurns, rig.job);
  return (plugIn || keeperIn) && (branchShut(rig) || stopped(rig));
}

function closed({ closing, job }: RigState): boolean {
  return closing.at === 'coupling' && isTight(closing.engagedTurns, job);
}

/**
 * The tee is on its way out of the coupling. Under a rig that stands on the tee a mere bite is left until the rig is
 * off and a wrench reaches it; inside the second chamber there is no wrench, and a bite is the beginning of drawing it.
 */
function teeComing(rig: RigState): boolean {
  return rig.tee.turnsBack >= (rig.saddle.on === 'tee' ? BITE_TURNS : SNUG_TURNS);
}

function branchShut({ branch }: RigState): boolean {
  return branch.cut === 'whole' || (branch.cut === 'pilot' && branch.pilotPlugged);
}

/** Turned back by less than this a thread is snug. */
const SNUG_TURNS = 0.01;
const BITE_TURNS = 0.13;

/** The rig bled over something that bars the main: it may then be taken off at leisure. */
function* letDown({ rig, gas }: Stood): Generator<string> {
  const top = topPiece(rig);
  if (rig.rod.travelM > 0 || rig.rod.engaged !== null) yield 'rod.up';
  if (!ballObstructed(rig) && rig.rod.load !== null) yield 'valve.shut';
  if (top !== null && rig.kit[top].kind === 'testHead') yield 'vent.open';
  if (top !== null && rig.bleed.openRad === 0) yield 'bleed.open';
  if (rig.rod.load !== null && top !== null) yield 'barrel.off';
  if (gas.chamber) yield 'valve.open';
  yield* openTop(rig, gas);
}

/** What stands on top comes off once nothing presses on it. */
function* openTop(rig: RigState, gas: Stood['gas']): Generator<string> {
  const top = topPiece(rig);
  const kind = top === null ? null : rig.kit[top].kind;
  if (kind === 'testHead' && rig.testHead.ventOpen === 0) yield 'vent.open';
  if ((kind === 'rodBarrel' || kind === 'sightCap') && gas.above && rig.bleed.openRad === 0)
    yield 'bleed.open';
  if (kind === 'testHead') yield 'testHead.off';
  if (kind === 'sightCap') yield 'sightCap.off';
  if (kind === 'valveCap') yield 'valveCap.off';
  if (kind === 'rodBarrel') yield 'barrel.off';
  if (kind === null && hasValve(rig)) yield* ['barrel.socket', 'testHead.on'];
}

function* barAgain(stood: Stood): Generator<string> {
  const { rig } = stood;
  // a sawn branch with nothing in the bore: no plug on top bars it, and every barrier over it is a single one
  if (rig.tee.at === 'coupling' && !branchShut(rig) && !stopped(rig)) return;
  // a closing plug that is in as far as it goes and still lets gas by (dry, or crossed) bars nothing
  if (rig.tee.at !== 'coupling' && closed(rig)) return;
  if (rig.saddle.on === 'board') {
    yield* byHand(rig);
  } else if (rig.saddle.on === 'tee' && teeComing(rig)) {
    // a rig that stands on the tee cannot hold a tee that is coming out of the coupling: off with it, and the tee in
    yield* rigOff(stood);
  } else if (!hasValve(rig)) {
    if (rig.tee.at === 'coupling') yield* byHand(rig);
    yield* ['chains.drawn', 'valve.on'];
  } else {
    yield* throughValve(stood);
  }
}

function* rigOff(stood: Stood): Generator<string> {
  const { rig, gas } = stood;
  const top = topPiece(rig);
  if (top !== null && rig.kit[top].kind === 'rodBarrel') yield* awayWithIt(rig, gas);
  else if (top !== null) yield* openTop(rig, gas);
  else yield* ['valve.off', 'chains.slack', 'chains.off', 'saddle.off'];
}

/** No rig over it: wrench and hand. */
function* byHand(rig: RigState): Generator<string> {
  if (rig.tee.at !== 'coupling') {
    yield* ['closing.byHand', 'collar.off'];
    return;
  }
  if (rig.tee.turnsBack >= SNUG_TURNS) yield 'tee.in';
  if (rig.keeper.at === 'tee') yield 'keeper.pull';
  if (rig.plug.at !== 'rod') yield 'plug.in';
  if (rig.branch.cut === 'pilot' && !rig.branch.pilotPlugged) yield 'branch.plugPilot';
}

function* throughValve(stood: Stood): Generator<string> {
  const { rig, gas } = stood;
  const top = topPiece(rig);
  if (top === null || rig.kit[top].kind !== 'rodBarrel') {
    if (!ballObstructed(rig) && rig.valve.openRad > 0) yield 'valve.shut';
    if (top === null) yield* nextBarrel(rig);
    else yield* openTop(rig, gas);
    return;
  }
  if (!rig.rod.held) yield 'rod.hold';
  if (bars(rig)) yield* downAndIn(rig);
  // what hangs through the ball when the rod is fully up can only go down, if there is a place for it
  else if (ballObstructed(rig) && rig.rod.travelM === 0) yield* gas.above ? hangsInBall(rig) : ['barrel.off'];
  else yield* awayWithIt(rig, gas);
}

/** What the rod should bring: made ready on the bench. */
function* nextBarrel(rig: RigState): Generator<string> {
  if (rig.tee.at !== 'coupling') yield rig.closing.at === 'coupling' ? 'barrel.socket' : 'barrel.closing';
  else if (rig.keeper.at === 'tee' || rig.plug.at === 'tee') yield 'barrel.socket';
  else if (teeComing(rig)) yield 'barrel.keeper';
  else yield* stopped(rig) ? ['barrel.keeper', 'barrel.topPlug'] : ['barrel.topPlug', 'barrel.keeper'];
}

/** The rod carries, or its bare socket is for, the thing that will bar the main next. */
function bars(rig: RigState): boolean {
  const { rod, tee } = rig;
  const socket = rod.tip !== null && rig.kit[rod.tip].kind === 'socket';
  if (tee.at !== 'coupling')
    return rod.load === 'closing' || (socket && rod.load === null && rig.closing.at === 'coupling');
  if (rod.load === 'plug') return rig.keeper.at !== 'tee';
  if (rod.load === 'keeper') return rig.plug.at !== 'tee';
  return socket && rod.load === null && (rig.plug.at === 'tee' || rig.keeper.at === 'tee');
}

function* downAndIn(rig: RigState): Generator<string> {
  if (rig.bleed.openRad > 0) yield 'bleed.shut';
  yield 'valve.open';
  if (rig.rod.engaged === null) yield 'rod.down';
  // a tee half out of its coupling is not screwed back by a socket on its keeper: forward, out with it
  yield rig.tee.at === 'coupling' && teeComing(rig) && rig.rod.engaged === 'keeper' ? 'rod.back' : 'rod.in';
}

/** A stopper has the bore to go to once the plug is out; everything else waits for the main to be shut. */
function* hangsInBall(rig: RigState): Generator<string> {
  if (rig.rod.load === 'stopper' && rig.tee.at === 'coupling' && rig.plug.at !== 'tee')
    yield* ['stopper.down', 'stopper.firm', 'latch.off'];
}

/** Slack, up, shut, bled, off. */
function* awayWithIt(rig: RigState, gas: Stood['gas']): Generator<string> {
  if (rig.rod.load === 'stopper' && rig.stopper.torqueNm > 0) yield 'stopper.slacken';
  if (rig.rod.travelM > 0 || rig.rod.engaged !== null) yield 'rod.up';
  if (rig.valve.openRad > 0) yield 'valve.shut';
  if (gas.above && rig.bleed.openRad === 0) yield 'bleed.open';
  yield 'barrel.off';
}
