import type { Catalogue } from '../../catalogue.ts';
import { degrees, duration, percent } from '../../units.ts';
import { capital } from '../../sentence.ts';
import * as places from './places.ts';
import * as renewal from './renewal.ts';
import { clockwise, withHold } from './turning.ts';

const strokes = (n: number) => (n === 1 ? 'one stroke' : `${n} strokes`);
const chainNo = (chain: number) => `chain no. ${chain + 1}`;

/** Every act of a hand, as a button says it and as the log tells it afterwards. */
export const actions: Catalogue['actions'] = {
  ...renewal.actions,
  'site.do': {
    button: (a) => places.siteTasks[a.task].button,
    done: (a) => places.siteTasks[a.task].done,
  },
  'detector.bump': {
    button: () => 'Bump-test the gas detector',
    done: () => 'Bump-tested the gas detector.',
  },
  'detector.read': {
    button: (a) => `Read the gas detector ${places.detectorPlaces[a.where]}`,
    done: (a) => `Read the gas detector ${places.detectorPlaces[a.where]}.`,
  },
  'gauge.zero': {
    button: (a) => `Check the ${places.gauges[a.gauge]} at zero`,
    done: (a) => `Checked the ${places.gauges[a.gauge]} at zero.`,
  },
  'gauge.read': {
    button: (a) => `Read the ${places.gauges[a.gauge]} and write it down`,
    done: (a) => `Read the ${places.gauges[a.gauge]} and wrote it down.`,
  },
  look: {
    button: (a) => `Look at the ${places.lookPlaces[a.at]}`,
    done: (a) => `Looked at the ${places.lookPlaces[a.at]}.`,
  },
  listen: { button: () => 'Stand still and listen', done: () => 'Stood still and listened.' },
  measure: {
    button: (a) => `Measure: ${places.measures[a.what]}`,
    done: (a) => `Measured: ${places.measures[a.what]}.`,
  },
  clean: {
    button: (a) => `Clean the ${places.cleanPlaces[a.at]}`,
    done: (a) => `Cleaned the ${places.cleanPlaces[a.at]} to sound metal.`,
  },
  'leakFluid.apply': {
    button: (a) => `Leak fluid on the ${places.leakPlaces[a.at]}, watch ${duration(a.watchS)}`,
    done: (a) => `Put leak fluid on the ${places.leakPlaces[a.at]} and watched ${duration(a.watchS)}.`,
  },
  'oil.apply': {
    button: (a) => `Penetrating oil on the thread of the ${oiled[a.at]}`,
    done: (a) => `Put penetrating oil on the thread of the ${oiled[a.at]}.`,
  },
  mark: {
    button: (a) => `Make the ${places.markPlaces[a.at]}`,
    done: (a) => `Made the ${places.markPlaces[a.at]}.`,
  },
  'piece.inspect': {
    button: (a, s) => `Inspect ${s.thePiece(a.piece)}`,
    done: (a, s) => `Inspected ${s.thePiece(a.piece)}.`,
  },
  'piece.reject': {
    button: (a, s) => `Set ${s.thePiece(a.piece)} aside as doubtful`,
    done: (a, s) => `Set ${s.thePiece(a.piece)} aside as doubtful.`,
  },
  'piece.clean': {
    button: (a, s) => `Wipe ${s.thePiece(a.piece)} clean`,
    done: (a, s) => `Wiped ${s.thePiece(a.piece)} clean.`,
  },
  'piece.place': {
    button: (a, s) => `Put on ${s.thePiece(a.piece)}${withHold(a.holdBack)}`,
    done: (a, s) => `Put on ${s.thePiece(a.piece)}${withHold(a.holdBack)}.`,
  },
  'piece.remove': {
    button: (a, s) => `Take off ${s.thePiece(a.piece)}${withHold(a.holdBack)}`,
    done: (a, s) => `Took off ${s.thePiece(a.piece)}${withHold(a.holdBack)}.`,
  },
  'chain.hook': {
    button: (a) => (a.hooked ? `Hook ${chainNo(a.chain)}` : `Unhook ${chainNo(a.chain)}`),
    done: (a) => (a.hooked ? `Hooked ${chainNo(a.chain)}.` : `Unhooked ${chainNo(a.chain)}.`),
  },
  'chain.tap': {
    button: (a) => `Tap the links of ${chainNo(a.chain)} flat`,
    done: (a) => `Tapped the links of ${chainNo(a.chain)} flat.`,
  },
  'tensioner.turn': {
    button: (a) => `${capital(a.side)} tensioner of ${chainNo(a.chain)}: ${tighter(a.turns)}`,
    done: (a) => `Turned the ${a.side} tensioner of ${chainNo(a.chain)} ${tighter(a.turns)}.`,
  },
  'valve.turn': {
    button: (a) => `Turn the isolation valve ${degrees(Math.abs(a.angleRad))} ${opening(a.angleRad)}`,
    done: (a) => `Turned the isolation valve ${degrees(Math.abs(a.angleRad))} ${opening(a.angleRad)}.`,
  },
  'vent.turn': {
    button: (a) => `Turn the test head’s vent ${percent(Math.abs(a.open))} ${opening(a.open)}`,
    done: (a) => `Turned the test head’s vent ${percent(Math.abs(a.open))} ${opening(a.open)}.`,
  },
  'pump.stroke': {
    button: (a) => `Pump ${strokes(a.strokes)}`,
    done: (a) => `Pumped ${strokes(a.strokes)}.`,
  },
  'bleed.turn': {
    button: (a) => `Turn the bleed cock ${degrees(Math.abs(a.angleRad))} ${opening(a.angleRad)}`,
    done: (a) => `Turned the bleed cock ${degrees(Math.abs(a.angleRad))} ${opening(a.angleRad)}.`,
  },
  'bleed.clear': {
    button: () => 'Put a wire through the bleed cock',
    done: () => 'Put a wire through the bleed cock.',
  },
  'hose.lead': {
    button: (a) => `Lead the bleed hose to end ${outlet(a.outlet)}`,
    done: (a) => `Led the bleed hose to end ${outlet(a.outlet)}.`,
  },
  'rod.fit': {
    button: (a, s) => (a.tip === null ? 'Take the tip off the rod' : `Fit ${s.thePiece(a.tip)} to the rod`),
    done: (a, s) =>
      a.tip === null ? 'Took the tip off the rod.' : `Fitted ${s.thePiece(a.tip)} to the rod.`,
  },
  'rod.load': {
    button: (a, s) =>
      a.piece === null ? 'Take the piece off the tip' : `Put ${s.thePiece(a.piece)} on the tip`,
    done: (a, s) =>
      a.piece === null ? 'Took the piece off the tip.' : `Put ${s.thePiece(a.piece)} on the tip.`,
  },
  'rod.hold': {
    button: (a) => (a.held ? 'Hold the rod' : 'Let go of the rod'),
    done: (a) => (a.held ? 'Took hold of the rod.' : 'Let go of the rod.'),
  },
  'rod.move': {
    button: (a, s) => `Move the rod ${s.units.length(Math.abs(a.lengthM))} ${a.lengthM < 0 ? 'up' : 'down'}`,
    done: (a, s) =>
      `Moved the rod ${a.lengthM < 0 ? 'up' : 'down'}, up to ${s.units.length(Math.abs(a.lengthM))}.`,
  },
  'rod.turn': {
    button: (a) => `Turn the rod ${clockwise(a.turns)}`,
    done: (a) => `Turned the rod ${clockwise(a.turns)}.`,
  },
  'innerRod.turn': {
    button: (a) => `Turn the inner rod ${clockwise(a.turns)} by the fingers`,
    done: (a) => `Turned the inner rod ${clockwise(a.turns)} by the fingers.`,
  },
  'collar.set': {
    button: (a, s) =>
      a.travelM === null
        ? 'Free the depth collar'
        : `Clamp the depth collar at ${s.units.length(a.travelM)} of travel`,
    done: (a, s) =>
      a.travelM === null
        ? 'Freed the depth collar.'
        : `Clamped the depth collar at ${s.units.length(a.travelM)} of travel.`,
  },
  'plug.turn': {
    button: (a) => `Turn the top plug ${clockwise(a.turns)}${withHold(a.holdBack)}`,
    done: (a) => `Turned the top plug ${clockwise(a.turns)}${withHold(a.holdBack)}.`,
  },
  'tee.turn': {
    button: (a) => `Turn the tee ${clockwise(a.turns)}${withHold(a.holdBack)}`,
    done: (a) => `Turned the tee ${clockwise(a.turns)}${withHold(a.holdBack)}.`,
  },
  'keeper.pull': {
    button: (a, s) => `Pull the keeper to ${s.units.torque(a.torqueNm)}${withHold(a.holdBack)}`,
    done: (a, s) => `Pulled the keeper to ${s.units.torque(a.torqueNm)}${withHold(a.holdBack)}.`,
  },
  'sealant.apply': {
    button: (a, s) => `Put thread sealant on ${s.thePiece(a.piece)}`,
    done: (a, s) => `Put thread sealant on ${s.thePiece(a.piece)}.`,
  },
  'bond.clamp': {
    button: (a) =>
      a.clamped ? `Clamp the bond cable to the ${a.end} end` : `Take the bond cable off the ${a.end} end`,
    done: (a) =>
      a.clamped ? `Clamped the bond cable to the ${a.end} end.` : `Took the bond cable off the ${a.end} end.`,
  },
  'branch.cut': {
    button: (a) => cuts[a.part].button,
    done: (a) => cuts[a.part].done,
  },
  'tee.trim': {
    button: (a) => trims[a.how].button,
    done: (a) => trims[a.how].done,
  },
  'gaugeRing.try': {
    button: () => 'Try the gauge ring over the tee',
    done: () => 'Tried the gauge ring over the tee.',
  },
  'service.purge': {
    button: () => 'Purge the dead service',
    done: () => 'Purged the dead service, away from the hole.',
  },
  'collarBolt.turn': {
    button: (a) => `Bolt no. ${a.bolt + 1} of the split collar: ${tighter(a.turns)}`,
    done: (a) => `Turned bolt no. ${a.bolt + 1} of the split collar ${tighter(a.turns)}.`,
  },
  'record.write': {
    button: (a) => `Write in the record: ${places.recordFields[a.field]}`,
    done: (a) => `Wrote in the record, ${places.recordFields[a.field]}: ${a.value}`,
  },
  sign: { button: (a) => `Sign hold point ${a.holdPoint}`, done: (a) => `Signed hold point ${a.holdPoint}.` },
  withdraw: {
    button: (a) => `Withdraw the signature at ${a.holdPoint}`,
    done: (a) => `Withdrew the signature at ${a.holdPoint}.`,
  },
  refer: {
    button: (a) => `Stop work and refer back: ${places.referReasons[a.reason]}`,
    done: (a) => `Stopped work, made safe and referred back: ${places.referReasons[a.reason]}.`,
  },
  'main.isolate': {
    button: () => 'Have the main shut at its valves',
    done: () => 'Had the main shut at its valves.',
  },
  leaveHole: { button: () => 'Leave the hole, upwind', done: () => 'Left the hole, upwind, people first.' },
  finish: { button: () => 'Finish: hand the job back', done: () => 'Handed the job back.' },
};

function tighter(turns: number): string {
  return `${clockwise(turns).replace(/ (counter-)?clockwise$/, '')} ${turns < 0 ? 'slacker' : 'tighter'}`;
}

function opening(change: number): string {
  return change < 0 ? 'towards shut' : 'towards open';
}

function outlet(where: 'inHole' | 'away'): string {
  return where === 'away' ? 'away, downwind and above grade' : 'in the hole';
}

const oiled = { plug: 'top plug', tee: 'tee' } as const;

const cuts = {
  pilot: { button: 'Open a pilot hole at the cut', done: 'Opened a pilot hole at the cut.' },
  plugPilot: { button: 'Plug the pilot hole', done: 'Plugged the pilot hole.' },
  through: {
    button: 'Cut the branch through with the hand saw',
    done: 'Cut the branch through with the hand saw.',
  },
} as const;

const trims = {
  saw: { button: 'Saw the tee’s hub flush with its body', done: 'Sawed the tee’s hub flush with its body.' },
  dress: {
    button: 'Dress the tee’s corners back to the band',
    done: 'Dressed the tee’s corners back to the band.',
  },
  file: { button: 'File the tee’s edges', done: 'Filed the tee’s edges.' },
} as const;
