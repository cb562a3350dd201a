import type { Catalogue, Speech } from '../../catalogue.ts';
import { degrees, percent, PUSHES_FROM_PA, turnsOf } from '../../units.ts';
import { clockwise, withHold } from './turning.ts';

/*
 * The words of a renewal: the new tee, its own test, the line that leaves it.
 */

const strokes = (n: number) => (n === 1 ? 'one stroke' : `${n} strokes`);
const opening = (change: number) => (change < 0 ? 'towards shut' : 'towards open');
const where = { bench: 'the renewal tee on the bench', line: 'the house end of the line' } as const;

type Of<T, K extends keyof T> = Pick<T, K>;

export const actions: Of<
  Catalogue['actions'],
  | 'keeper.turn'
  | 'testSet.join'
  | 'testSet.pump'
  | 'testSet.vent'
  | 'temperature.read'
  | 'riser.turn'
  | 'riser.read'
> = {
  'keeper.turn': {
    button: (a) => `Turn the keeper ${clockwise(a.turns)} by wrench${withHold(a.holdBack)}`,
    done: (a) => `Turned the keeper ${clockwise(a.turns)} by wrench${withHold(a.holdBack)}.`,
  },
  'testSet.join': {
    button: (a) => (a.to === null ? 'Take the test set off' : `Join the test set to ${where[a.to]}`),
    done: (a) => (a.to === null ? 'Took the test set off.' : `Joined the test set to ${where[a.to]}.`),
  },
  'testSet.pump': {
    button: (a) => `Pump ${strokes(a.strokes)} with the test set`,
    done: (a) => `Pumped ${strokes(a.strokes)} with the test set.`,
  },
  'testSet.vent': {
    button: (a) => `Turn the test set’s vent ${percent(Math.abs(a.open))} ${opening(a.open)}`,
    done: (a) => `Turned the test set’s vent ${percent(Math.abs(a.open))} ${opening(a.open)}.`,
  },
  'temperature.read': {
    button: () => 'Read the temperature of the line and write it down',
    done: () => 'Read the temperature of the line and wrote it down.',
  },
  'riser.turn': {
    button: (a) => `Turn the purge riser’s cock ${percent(Math.abs(a.open))} ${opening(a.open)}`,
    done: (a) => `Turned the purge riser’s cock ${percent(Math.abs(a.open))} ${opening(a.open)}.`,
  },
  'riser.read': {
    button: () => 'Read the share of gas at the purge riser',
    done: () => 'Read the share of gas at the purge riser.',
  },
};

export const factsBy = (
  grip: (torqueNm: number, speech: Speech) => string,
): Of<
  Catalogue['facts'],
  | 'renewal.turned'
  | 'newPlug.turned'
  | 'stopper.drawn'
  | 'testSet.joined'
  | 'testSet.pumped'
  | 'testSet.vented'
  | 'temperature.read'
  | 'riser.turned'
  | 'riser.read'
> => ({
  'renewal.turned': (f, s) =>
    `The renewal tee is ${turnsOf(f.engagedTurns)} in and feels ${grip(f.torqueNm, s)}; its branch points ${degrees(Math.abs(f.offHeadingRad))} ${f.offHeadingRad < 0 ? 'short of' : 'past'} its heading${f.crossed ? '; it skips and binds' : ''}.`,
  'newPlug.turned': (f, s) =>
    `The new top plug is ${turnsOf(f.engagedTurns)} in and feels ${grip(f.torqueNm, s)}${f.crossed ? '; it skips and binds' : ''}.`,
  'stopper.drawn': (f, s) =>
    f.differenceGaugePa > PUSHES_FROM_PA
      ? `The stopper left its bore with ${s.units.pressure(f.differenceGaugePa)} across it: ${s.units.force(f.thrustN)} pushed it up.`
      : 'The stopper left its bore with nothing pushing it.',
  'testSet.joined': (f) =>
    f.to === null ? 'The test set is off.' : `The test set is joined to ${where[f.to]}.`,
  'testSet.pumped': (f, s) =>
    `After ${strokes(f.strokes)} the test gauge stands near ${s.units.pressure(f.gaugePa)}${f.onStopper ? '; the air stands on the stopper in the tee too' : ''}.`,
  'testSet.vented': (f) =>
    f.open <= 0 ? 'The test set’s vent is shut.' : `The test set’s vent is ${percent(f.open)} open.`,
  'temperature.read': (f, s) => `The line is at ${s.units.temperature(f.readingK)}.`,
  'riser.turned': (f) =>
    f.open <= 0 ? 'The purge riser’s cock is shut.' : `The purge riser’s cock is ${percent(f.open)} open.`,
  'riser.read': (f) => `What leaves the purge riser is ${percent(f.gasShare)} gas.`,
});

export const stages: Of<Catalogue['stages'], 'r1' | 'r2' | 'r3' | 'r4' | 'r5' | 'r6'> = {
  r1: {
    title: 'Prove the renewal tee on the bench',
    aim: 'Show that its stopper and keeper hold the main’s pressure from below before it goes down.',
  },
  r2: {
    title: 'Run in the renewal tee',
    aim: 'Lower it through the rig, find the thread, and bring its branch to its heading by going on only.',
  },
  r3: {
    title: 'Test the service alone',
    aim: 'Main end capped and not joined to the tee: pressure by the main’s, time, temperature, leak fluid.',
  },
  r4: {
    title: 'Join, and prove the chamber on the new tee',
    aim: 'One tie-in; keeper broken and snugged with two wrenches; the first-chamber rig on again and proved.',
  },
  r5: {
    title: 'Draw keeper and stopper, set the new top plug',
    aim: 'Slacken the stopper a little, let the pressures come equal, draw it, and run the new plug in.',
  },
  r6: {
    title: 'Test with gas, purge and relight',
    aim: 'Leak fluid at the main’s pressure, the air driven out at the purge riser, then the operator’s list.',
  },
};

export const holdPoints: Of<Catalogue['holdPoints'], 'R1' | 'R2' | 'R3' | 'R4' | 'R5' | 'R6'> = {
  R1: {
    title: 'Renewal tee proved on the bench',
    guards: 'lowering the renewal tee',
    evidence: [
      'Stopper and keeper in; the main’s pressure or more from below, five minutes, no drop to speak of',
      'Leak fluid at its open branch: no bubbles',
    ],
  },
  R2: {
    title: 'New tee in',
    guards: 'opening the rig',
    evidence: [
      'Threads of the coupling seen; turns and torque in range, not crossed',
      'Branch within 10° of its heading, brought there by going on, never back',
      'Valve open, bleed quiet a minute, shut two minutes, opened: no puff',
    ],
  },
  R3: {
    title: 'Service tested alone',
    guards: 'the tie-in',
    evidence: [
      'Not joined to the tee, its main end capped; an old line purged of gas first',
      'At least 50 psig where the main works at 40 or less, 90 psig above that',
      'The operator’s time, no drop once the temperature is taken out, leak fluid on its joints',
    ],
  },
  R4: {
    title: 'Chamber proved on the new tee',
    guards: 'turning the keeper past 1/8 turn of its mark',
    evidence: [
      'Keeper broken with two wrenches and snugged; the tee’s mark unmoved',
      'Proved as the first chamber: low stage, main pressure, hold, leak fluid, seat test, no rise',
    ],
  },
  R5: {
    title: 'New top plug in',
    guards: 'opening the rig',
    evidence: [
      'Turned the right turns past hand-tight, firm, not crossed',
      'Valve open, bleed quiet a minute, shut two minutes, opened: no puff; seen square',
    ],
  },
  R6: {
    title: 'Purged',
    guards: 'relighting',
    evidence: [
      'Leak fluid on tie-in, new plug and the tee’s thread with gas at the main’s pressure: no bubbles',
      'One continuous flow to the outdoor riser until it is 90 % gas, for a minute',
      'The operator’s relight list gone through',
    ],
  },
};

const tight = {
  quiet: 'a quiet minute with the bleed open',
  shutIn: 'shut in for two minutes',
  noPuff: 'no puff on opening again',
};

export const evidenceBy = (
  proof: Readonly<Record<string, string>>,
): Of<Catalogue['evidenceItems'], 'R1' | 'R2' | 'R3' | 'R4' | 'R5' | 'R6'> => ({
  R1: {
    atPressure: 'the main’s pressure from below on the bench',
    held: 'the full hold',
    noDrop: 'no drop over the hold',
    fluid: 'leak fluid at the open branch: no bubbles',
  },
  R2: {
    ...tight,
    threads: 'the coupling’s threads seen before',
    turns: 'turns within range past hand-tight',
    torque: 'firm, and not forced',
    notCrossed: 'a thread that ran true',
    heading: 'the branch on its heading',
    onward: 'a tee that was never turned back',
  },
  R3: {
    alone: 'a line that was not joined to the tee',
    gasFree: 'an old line purged of gas before air went in',
    atPressure: 'the test pressure that goes with the main’s',
    held: 'the operator’s full time',
    temperature: 'temperature read with both readings',
    noDrop: 'no drop once the temperature is taken out',
    fluid: 'leak fluid on the line’s joints: no bubbles',
  },
  R4: {
    ...proof,
    'fluid.spoolJoint': 'leak fluid on the spool’s joint',
    rise: 'vented, shut and watched: no rise',
    cracked: 'the keeper broken and snugged with two wrenches',
    teeMark: 'the tee’s mark made and unmoved',
  },
  R5: {
    ...tight,
    turns: 'turns enough past hand-tight',
    torque: 'firm, and not forced',
    notCrossed: 'a thread that ran true',
    square: 'the plug seen square and full in',
  },
  R6: {
    'fluid.tieIn': 'leak fluid on the tie-in with gas at main pressure',
    'fluid.newPlug': 'leak fluid on the new top plug with gas at main pressure',
    'fluid.teeThread': 'leak fluid on the new tee’s thread with gas at main pressure',
    continuous: 'one continuous flow, full of gas for a minute',
    share: 'at least 90 % gas at the riser',
    list: 'the operator’s relight list',
  },
});
