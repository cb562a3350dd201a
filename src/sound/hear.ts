import type { RunState } from '../core/run/index.ts';
import type { Lasting, LastingSound, Moment, Passing, PassingSound, Side, Sound } from './sounds.ts';

type Fact = RunState['facts'][number];

/** Street noise, dB: what is no louder is not played. Full loudness is reached at the upper level. Both assumed. */
const streetDb = 45;
const loudestDb = 115;

/** Share of the loudest for a level at the ear: nothing in the street's noise, then rising with the level. */
export function shareOf(levelDb: number, heard: boolean): number {
  if (!heard || levelDb <= streetDb) return 0;
  const above = Math.min(1, (levelDb - streetDb) / (loudestDb - streetDb));
  return 0.04 + 0.96 * above * above;
}

/** A narrow opening whistles, a wide one roars: the middle of the band by how far it is open, 0 to 1. Assumed. */
const hissHz = (openShare: number): number => 2400 + 5600 * (1 - Math.max(0, Math.min(1, openShare)));

/**
 * What is to be heard now, and what was heard since the moment before. `facts` are those that came about in between.
 * Pure; where nothing flows and nothing happened there is no sound at all.
 */
export function hear(before: Moment, after: Moment, facts: readonly Fact[]): readonly Sound[] {
  return [...lasting(after), ...facts.flatMap(passingOf), ...handled(before, after, facts)];
}

function lasting({ readings, rig }: Moment): Lasting[] {
  const sounds: Lasting[] = [];
  const add = (kind: LastingSound, from: Side, share: number, pitchHz: number): void => {
    if (share > 0) sounds.push({ kind, from, share, pitchHz, lasts: true });
  };
  const bleedShare = shareOf(readings.bleedDb, readings.bleedHeard);
  if (rig.stack.at(-1)?.kind === 'testHead')
    add('hiss.vent', 'middle', bleedShare, hissHz(rig.testHead.ventOpen));
  else add('hiss.bleed', 'right', bleedShare, hissHz(rig.bleed.openRad / (Math.PI / 2)));
  add('hiss.hole', 'below', shareOf(readings.holeDb, readings.holeHeard), 1800);
  if (readings.alarm === 1) add('alarm.low', 'left', 0.5, 1600);
  if (readings.alarm === 2) add('alarm.high', 'left', 0.8, 2400);
  return sounds;
}

/** A handle that was moved without a fact of its own between two moments is not heard; one that was is, once. */
function handled(before: Moment, after: Moment, facts: readonly Fact[]): Passing[] {
  const slid = Math.abs(after.readings.rodTravelM - before.readings.rodTravelM);
  const moved = facts.some((fact) => fact.fact === 'rod.moved' || fact.fact === 'rod.sank');
  return moved && slid > 1e-4 ? [passing('slide', 'middle', 0.08 + Math.min(0.3, slid))] : [];
}

function passing(kind: PassingSound, from: Side, share: number, strokes = 1): Passing {
  return { kind, from, share: Math.max(0.02, Math.min(1, share)), strokes, lasts: false };
}

/** Clicks of a ratchet for so many turns: a tooth every fifteen degrees, at most a burst of twelve. */
const clicks = (turns: number): number => Math.max(1, Math.min(12, Math.round(Math.abs(turns) * 24)));

/** Torque at which a thread or a tensioner is heard at its loudest, N·m. Assumed. */
const loudThreadNm = 180;
const loudRatchetNm = 4;

function passingOf(fact: Fact): Passing[] {
  switch (fact.fact) {
    case 'done':
      return ofHand(fact.action);
    case 'tensioner.turned': {
      const hard = fact.torqueNm > 2.5;
      const share = 0.15 + 0.6 * Math.min(1, fact.torqueNm / loudRatchetNm);
      return [passing(hard ? 'ratchet.hard' : 'ratchet', fact.side, share, clicks(0.25))];
    }
    case 'chain.tapped':
      return [passing('knock', fact.chain === 0 ? 'left' : 'right', 0.75, 3)];
    case 'plug.turned':
    case 'tee.turned':
    case 'keeper.turned':
    case 'rod.turned':
      return [passing('thread', 'middle', 0.08 + 0.5 * Math.min(1, fact.torqueNm / loudThreadNm), 2)];
    case 'closing.turned':
      return fact.crossed
        ? [passing('skip', 'middle', 0.6, 3)]
        : [passing('thread', 'middle', 0.08 + 0.5 * Math.min(1, fact.torqueNm / loudThreadNm), 2)];
    case 'plug.free':
    case 'tee.free':
      return [passing('free', 'middle', fact.chamberClosed ? 0.3 : 1)];
    case 'stopper.left':
      return [passing('detent', 'middle', 0.25)];
    case 'rod.engaged':
      return [passing('touch', 'middle', 0.35)];
    case 'stopper.dropped':
      return [passing('touch', 'below', 0.5, 2)];
    case 'stopper.torn':
      return [passing('tear', 'middle', 0.2)];
    case 'rod.thrown':
    case 'saddle.lifted':
      return [passing('bang', 'middle', 1)];
    case 'branch.cut':
      return fact.part === 'plugPilot' ? [] : [passing('saw', 'right', 0.5, fact.part === 'pilot' ? 2 : 8)];
    default:
      return [];
  }
}

/** Sounds of the hand itself, where what it did is no fact of its own. */
function ofHand(action: Extract<Fact, { fact: 'done' }>['action']): Passing[] {
  switch (action.kind) {
    case 'valve.turn':
      return [passing('handle', 'middle', 0.2)];
    case 'bleed.turn':
      return [passing('handle', 'right', 0.12)];
    case 'vent.turn':
      return [passing('handle', 'middle', 0.1)];
    case 'pump.stroke':
      return [passing('pump', 'middle', 0.25, Math.min(10, action.strokes))];
    case 'rod.load':
    case 'rod.fit':
      return [passing('detent', 'middle', 0.2)];
    case 'chain.hook':
      return [passing('touch', action.chain === 0 ? 'left' : 'right', 0.3)];
    case 'tee.trim':
      return [passing('saw', 'middle', 0.4, action.how === 'file' ? 4 : 8)];
    default:
      return [];
  }
}
