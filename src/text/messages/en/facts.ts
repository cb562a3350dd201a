import type { TroubleKind } from '../../../core/rig/index.ts';
import { troubles } from './troubles.ts';
import type { Catalogue, FactOf, FeltWords, Speech } from '../../catalogue.ts';
import { capital, listed } from '../../sentence.ts';
import {
  BLOWS_FROM_PA,
  decibels,
  degrees,
  duration,
  finePercent,
  percent,
  PUSHES_FROM_PA,
  SEEPS_FROM_PA,
  turnsOf,
} from '../../units.ts';
import { actions } from './actions.ts';
import { defects } from './pieces.ts';
import * as places from './places.ts';
import * as renewal from './renewal.ts';
import { sights } from './sights.ts';

const chainNo = (chain: number) => `chain no. ${chain + 1}`;

/** Everything that can happen, one sentence each, with what was read or felt. */
export const facts: Catalogue['facts'] = {
  ...renewal.factsBy(grip),
  done: ({ action }, s) => {
    const word = actions[action.kind].done as (a: typeof action, s: Speech) => string;
    return word(action, s);
  },
  'site.done': (f) => places.siteTasks[f.task].done + alsoFound(f.found),
  'detector.bumped': (f) =>
    f.passed
      ? f.shownShare === undefined
        ? 'The detector answered the test gas as it should.'
        : `The detector answered, but showed ${percent(f.shownShare)} of the test gas.`
      : 'The detector failed the bump test: get another.',
  'detector.read': (f) =>
    `The detector ${places.detectorPlaces[f.where]} reads ${percent(f.lelShare)} LEL and ${finePercent(f.oxygenShare)} oxygen.`,
  'gauge.zeroed': (f, s) =>
    `The ${places.gauges[f.gauge]} rests at zero with nothing on it${f.rangePa === undefined ? '' : `; its dial goes to ${s.units.pressure(f.rangePa)}`}.`,
  'gauge.read': (f, s) =>
    `The ${places.gauges[f.gauge]} reads ${s.units.pressure(f.readingGaugePa)}${f.zeroed ? '' : ', its zero not checked'}.`,
  looked: (f, s) => sights(f.at, f.saw, s.units),
  listened: (f) =>
    f.heard ? `Gas can be heard, about ${decibels(f.levelDb)}.` : 'Nothing can be heard above the street.',
  measured: (f, s) => `${capital(places.measures[f.what])}: ${s.units.length(f.readingM)}.`,
  cleaned: (f) => `The ${nameOf(places.cleanPlaces, f.at)} is bare, sound metal to look at.`,
  oiled: (f) =>
    `Oil is soaking into the thread of the ${f.at === 'plug' ? 'top plug' : 'tee'}; it needs time.`,
  'piece.cleaned': (f, s) =>
    f.cameOff.length === 0
      ? `${capital(s.thePiece(f.piece))} was wiped; it was clean.`
      : `${capital(s.thePiece(f.piece))} is clean; gone: ${found(f.cameOff)}.`,
  'bleed.cleared': (f) =>
    f.cameOut ? 'Debris came out of the bleed; it is free now.' : 'The wire went through the bleed freely.',
  marked: (f) => `The ${nameOf(places.markPlaces, f.at)} is made.`,
  'leak.looked': (f) =>
    `Leak fluid on the ${places.leakPlaces[f.at]} for ${duration(f.watchS)}: ${places.bubbles[f.bubbles]}.`,
  'piece.inspected': (f, s) => `${capital(s.thePiece(f.piece))} was looked over: ${found(f.found)}.`,
  'piece.rejected': (f, s) =>
    `${capital(s.thePiece(f.piece))} is set aside${f.doubtful ? '; it was doubtful' : ''}.`,
  'piece.placed': (f, s) =>
    `${capital(s.thePiece(f.piece))} is ${f.fits ? 'in its place' : 'on, but does not sit well'}.`,
  'piece.removed': (f, s) =>
    f.pressureGaugePa > PUSHES_FROM_PA
      ? `${capital(s.thePiece(f.piece))} came off with ${s.units.pressure(f.pressureGaugePa)} behind it, pushing with ${s.units.force(f.thrustN)}.`
      : `${capital(s.thePiece(f.piece))} is off.`,
  'joint.turned': (f, s) =>
    `The joint under ${s.thePiece(f.joint)} turned, and not the one under ${s.thePiece(f.meant)}: nothing held it back.`,
  'chain.tapped': (f, s) =>
    f.settledM > 2e-5
      ? `The links of ${chainNo(f.chain)} settled by about ${s.units.length(f.settledM)}; it has gone slacker.`
      : `The links of ${chainNo(f.chain)} lie flat and do not settle.`,
  'tensioner.turned': (f, s) =>
    `The ${f.side} tensioner of ${chainNo(f.chain)} stands past snug by ${turnsOf(f.turns)} and feels ${grip(f.torqueNm, s)}.`,
  'chain.released': (f, s) =>
    `The chains were let go with ${s.units.force(f.forceN)} in them and ${s.units.pressure(f.chamberGaugePa)} in the rig.`,
  'valve.turned': (f, s) =>
    `The isolation valve stands ${valveAt(f.openRad)}${f.stiffNm === undefined ? '' : `; its handle feels ${grip(f.stiffNm, s)}`}.`,
  'vent.turned': (f) =>
    f.open <= 0 ? 'The test head’s vent is shut.' : `The test head’s vent is ${percent(f.open)} open.`,
  pumped: (f, s) =>
    `After ${f.strokes === 1 ? 'one stroke' : `${f.strokes} strokes`} the test-head gauge stands near ${s.units.pressure(f.headGaugePa)}.`,
  'bleed.turned': (f) =>
    f.openRad <= 0
      ? 'The bleed is shut.'
      : `The bleed is open ${degrees(f.openRad)}: ${f.puff ? 'it blows' : 'no puff'}.${alsoFound(f.found)}`,
  'bleed.quiet': (f) => `The bleed went quiet after hissing for ${duration(f.hissedS)}.`,
  'rod.moved': (f, s) => `The rod stands ${s.units.length(f.travelM)} down; ${push(f.feltN, s)}.`,
  'rod.engaged': (f) => `The tip is down on the ${nameOf(loads, f.with)} and has hold of it.`,
  'rod.turned': (f, s) =>
    `The ${nameOf(loads, f.turning)} turned ${turnsOf(f.turns)} ${f.turns < 0 ? 'counter-clockwise' : 'clockwise'} and feels ${grip(f.torqueNm, s)}.`,
  'rod.thrown': (f, s) =>
    `The rod was thrown up by ${s.units.force(f.thrustN)} at ${s.units.pressure(f.pressureGaugePa)}: a blow of ${s.units.energy(f.energyJ)}.`,
  'rod.sank': (f, s) => `The rod sank by its own weight to ${s.units.length(f.travelM)}.`,
  'load.dropped': () => 'What hung in the socket fell out of it: the rod comes up light.',
  'socket.stuck': () => 'The socket will not come off the head of the plug.',
  'rod.still': (f, s) =>
    `The rod stayed where it was, free of the hand; ${s.units.force(Math.abs(f.netN))} is not enough to move it.`,
  'plug.turned': (f, s) =>
    `${f.slipped === true ? 'The wrench slips on the square. ' : ''}The top plug is ${turnsOf(f.sinceMark)} from its mark and feels ${grip(f.torqueNm, s)}.`,
  'plug.free': (f, s) =>
    f.chamberClosed
      ? 'The thread of the top plug let go, inside the closed rig.'
      : `The top plug came free in the open with ${s.units.pressure(f.differenceGaugePa)} under it: ${s.units.force(f.thrustN)} threw it.`,
  'tee.turned': (f, s) =>
    `The tee is ${f.turnsBack < 0 ? `${turnsOf(f.turnsBack)} tighter than it was` : `${turnsOf(f.turnsBack)} back`} and feels ${grip(f.torqueNm, s)}.`,
  'tee.free': (f, s) =>
    f.chamberClosed
      ? 'The threads of the tee let go, inside the closed rig.'
      : `The tee came free in the open: ${s.units.force(f.thrustN)} threw it.`,
  'tee.strained': (f) => `The tee went round with it by ${turnsOf(f.turns)}: nothing held it back.`,
  'keeper.turned': (f, s) => `The keeper is ${turnsOf(f.engagedTurns)} in and feels ${grip(f.torqueNm, s)}.`,
  'stopper.squeezed': (f, s) =>
    `The inner rod is ${turnsOf(f.turns)} in and feels ${s.units.fingerTorque(f.torqueNm)}${f.inBore ? '' : '; nothing pushes back evenly'}.`,
  'stopper.torn': () => 'Something gave way under the fingers: the rubber has torn.',
  'stopper.left': () => 'The holder let go of the stopper.',
  'stopper.slipped': (f, s) =>
    `The stopper slid ${s.units.length(f.byM)}: ${s.units.force(f.thrustN)} on it, and its grip was ${s.units.force(f.holdsN)}.`,
  'stopper.pushed': (f, s) =>
    `The keeper’s stem stands on the stopper and has pushed it ${s.units.length(f.byM)} down.`,
  'stopper.dropped': (f) => `The stopper fell into the ${f.into}.`,
  'closing.turned': (f, s) =>
    `The closing plug is ${turnsOf(f.engagedTurns)} in and feels ${grip(f.torqueNm, s)}${f.crossed ? '; it skips and binds' : ''}.`,
  'collarBolt.turned': (f) =>
    `The bolts of the split collar stand at ${turnsOf(f.bolts[0])} and ${turnsOf(f.bolts[1])} past snug.`,
  'branch.cut': (f, s) => {
    const what = nameOf(cut, f.part) + alsoFound(f.found);
    if (f.pressureGaugePa > BLOWS_FROM_PA)
      return `${what} Gas blows from it, ${s.units.pressure(f.pressureGaugePa)} behind it.`;
    return f.pressureGaugePa > SEEPS_FROM_PA
      ? `${what} A little gas comes from it.`
      : `${what} Nothing comes from it.`;
  },
  'bond.sparked': () => 'A spark jumped as the second clamp of the bond cable closed.',
  'gaugeRing.tried': (f, s) =>
    f.passes
      ? 'The gauge ring passes the tee’s swept circle.'
      : `The gauge ring does not pass: the tee sweeps ${s.units.length(f.sweptM)}.`,
  'service.purged': () => 'The dead service is purged of gas.',
  'record.written': (f) => `Record, ${places.recordFields[f.field]}: ${f.value}`,
  signed: (f) => `Hold point ${f.holdPoint} is signed.`,
  withdrawn: (f) => `The signature at ${f.holdPoint} is withdrawn.`,
  'gas.alarm': (f) => alarm(f),
  'gas.flammable': (f, s) =>
    `The air in the hole is above the lower limit near the leak: ${percent(f.lelShare)} LEL on average, flammable out to ${s.units.length(f.nearReachM)}.`,
  'gas.ignited': (f) => `The gas took fire at ${percent(f.lelShare)} LEL.`,
  'relief.lifted': (f, s) => `The test head’s relief lifted at ${s.units.pressure(f.headGaugePa)}.`,
  'relief.shut': (f, s) => `The test head’s relief shut again at ${s.units.pressure(f.headGaugePa)}.`,
  'blow.began': (f, s) =>
    `Gas blows into the hole from the ${nameOf(sources, f.from)}, ${s.units.massFlow(f.kgPerS)}.`,
  'blow.ended': (f, s) =>
    `The blow from the ${nameOf(sources, f.from)} ended; ${s.units.mass(f.lostKg)} went into the hole.`,
  'saddle.lifted': (f, s) =>
    `The saddle lifted off its seat: ${s.units.pressure(f.chamberGaugePa)} pushed with ${s.units.force(f.forceN)}.`,
  referred: (f) => `Work is stopped and referred back: ${places.referReasons[f.reason]}.`,
  ended: (f) => ended[f.ending.kind],
};

const ended = {
  complete: 'The job is handed back as complete.',
  referred: 'The job is stopped, made safe and referred back.',
  isolated: 'The main is shut at its valves; the hole is clear and safe.',
  hurt: 'The exercise ends here: somebody would have been hurt.',
} as const;

/** What a hand can have hold of, by the rod. */
const loads: Readonly<Record<string, string>> = {
  plug: 'top plug',
  stopper: 'bore stopper',
  tee: 'tee',
  keeper: 'keeper plug',
  closing: 'closing plug',
  renewal: 'renewal tee',
  newPlug: 'new top plug',
  latch: 'latch of the stopper holder',
  nothing: 'tip, on nothing,',
};

/** Where gas can blow into the hole, by the opening it comes from. */
export const sources: Readonly<Record<string, string>> = {
  open: 'open top of the rig',
  serviceEnd: 'cut end of the service',
  lineOpen: 'main end of the new line',
  tieIn: 'tie-in',
  pilot: 'pilot hole',
  stub: 'cut end at the tee',
  bore: 'open tee',
  plug: 'top of the tee',
  keeper: 'keeper plug',
  teeThread: 'tee’s thread in the coupling',
  closing: 'open coupling',
  seat: 'saddle’s seat',
  gland: 'rod’s gland',
  relief: 'relief of the test head',
  bleed: 'bleed hose',
  pumpCheck: 'hand pump',
  'joint:isolationValve': 'joint below the isolation valve',
  'joint:lowerSpool': 'joint of the lower spool',
  'joint:upperSpool': 'joint of the upper spool',
  'joint:top': 'joint of the piece on top',
};

export const cut: Readonly<Record<string, string>> = {
  pilot: 'The pilot hole is open.',
  plugPilot: 'The pilot hole is plugged.',
  through: 'The branch is cut through.',
};

export function nameOf(names: Readonly<Record<string, string>>, id: string): string {
  return Object.hasOwn(names, id) ? names[id] : id;
}

function found(faults: readonly string[]): string {
  if (faults.length === 0) return 'nothing wrong with it';
  return listed(
    faults.map((fault) => nameOf(defects, fault)),
    'and',
  );
}

/** A torque as a hand tells it. */
function grip(torqueNm: number, { units }: Speech): string {
  const size = Math.abs(torqueNm);
  if (size < 0.5) return 'loose';
  const word =
    size < 10 ? 'light' : size < 45 ? 'easy' : size < 90 ? 'firm' : size < 180 ? 'hard' : 'very hard';
  return `${word}, about ${size < 5 ? units.fingerTorque(size) : units.torque(size)}`;
}

/** The push on the rod as the hand feels it, N upward. */
function push(feltN: number, { units }: Speech): string {
  if (Math.abs(feltN) < 8) return 'it stands by itself';
  return feltN > 0 ? `it pushes up with ${units.force(feltN)}` : `it weighs down with ${units.force(-feltN)}`;
}

/** Where the handle of the isolation valve stands. */
function valveAt(openRad: number): string {
  if (openRad <= 0.009) return 'shut';
  if (openRad >= 1.48) return 'fully open';
  return `${degrees(openRad)} open`;
}

export const felt: FeltWords = { grip, push, valveAt, loads };

function alarm(f: FactOf<'gas.alarm'>): string {
  if (f.step === 0) return 'The gas alarm falls silent.';
  const at = `${percent(f.lelShare)} LEL`;
  return f.step === 1
    ? `The gas alarm sounds at its low step, ${at}.`
    : `The gas alarm sounds at its high step, ${at}: out, upwind, people first.`;
}

/** What came to light beside it, as sentences of their own. */
export function alsoFound(found: readonly TroubleKind[] | undefined): string {
  return (found ?? []).map((what) => ` ${capital(troubles[what])}.`).join('');
}
