import type { Action, RigState } from '../../core/rig/index.ts';
import { capital } from '../../text/index.ts';
import { kindOfTarget } from '../../session/index.ts';
import { tell, type WordKey } from '../words/index.ts';
import { lastFact } from './felt.ts';
import type { Grip } from './offer.ts';

/** What a hand on a part of the picture is on, and how it is moved. */
export interface Grasp {
  readonly name: string;
  readonly how: string;
}

/** What the hand feels there: in words, and as a share of the most that part is worked with, 0 to 1. */
export interface Felt {
  readonly says: string;
  readonly share: number;
}

const worked: Readonly<Record<string, readonly [name: WordKey, how: WordKey]>> = {
  'isolationValve/handle': ['grasp.valve', 'grasp.open'],
  'rodBarrel/lever': ['row.bleed', 'grasp.open'],
  'sightCap/lever': ['row.bleed', 'grasp.open'],
  'testHead/lever': ['row.vent', 'grasp.open'],
  'testHead/plunger': ['row.pump', 'grasp.stroke'],
  'rod/outer': ['grasp.rod', 'grasp.slideOrTurn'],
  'rod/inner': ['grasp.inner', 'grasp.turn'],
  'topPlug/square': ['grasp.wrenchOnPlug', 'grasp.turn'],
  'serviceTee/body': ['grasp.wrenchOnTee', 'grasp.turn'],
  'keeperPlug/square': ['row.keeper', 'grasp.pull'],
  'chain/left': ['row.tensioner.left', 'grasp.turn'],
  'chain/right': ['row.tensioner.right', 'grasp.turn'],
  'splitCollar/leftBolt': ['row.bolt.left', 'grasp.turn'],
  'splitCollar/rightBolt': ['row.bolt.right', 'grasp.turn'],
};

const partOf = (target: string, rig: RigState): string =>
  `${kindOfTarget(target, rig)}/${target.split('/')[1] ?? ''}`;

const chainOf = (target: string, rig: RigState): number =>
  rig.chains.findIndex((chain) => chain.piece === target.split('/')[0]);

/** What is held by a part of the picture (`id/part`), or null where nothing of it is worked. */
export function graspOf(target: string, rig: RigState): Grasp | null {
  const part = partOf(target, rig);
  if (!(part in worked)) return null;
  const [name, how] = worked[part];
  return { name: tell(name, { letter: ['A', 'B'][chainOf(target, rig)] ?? '' }), how: tell(how) };
}

/** What lies under the pointer, in words; empty for what has no name (soil, timber). */
export function nameOf(target: string, { run, words, voice }: Grip): string {
  const id = target.split('/')[0];
  if (id in run.rig.kit) return voice.piece(id);
  const named = new Map(Object.entries(words.pieces)).get(id)?.name;
  return named === undefined ? '' : capital(named);
}

/** The most that a part is worked with, N·m or N: where the bar by the pointer is full (assumed). */
const MOST = { fingersNm: 4, wrenchNm: 300, rodNm: 80, pushN: 350 } as const;

/** What was felt there last; null where nothing was, or nothing is felt. `ready` is a wrench being pulled now. */
export function feltOf(target: string, { run, units }: Grip, ready: Action | null): Felt | null {
  const fingers = (nm: number): Felt => felt(units.fingerTorque(nm), nm / MOST.fingersNm);
  const wrench = (nm: number, mostNm: number): Felt => felt(units.torque(nm), nm / mostNm);
  switch (partOf(target, run.rig)) {
    case 'chain/left':
    case 'chain/right': {
      const chain = chainOf(target, run.rig);
      const side = target.endsWith('left') ? 'left' : 'right';
      const fact = lastFact(run.facts, 'tensioner.turned', (f) => f.chain === chain && f.side === side);
      return fact && fingers(fact.torqueNm);
    }
    case 'rod/inner': {
      const fact = lastFact(run.facts, 'stopper.squeezed');
      return fact && fingers(fact.torqueNm);
    }
    case 'topPlug/square': {
      const fact = lastFact(run.facts, 'plug.turned');
      return fact && wrench(fact.torqueNm, MOST.wrenchNm);
    }
    case 'serviceTee/body': {
      const fact = lastFact(run.facts, 'tee.turned');
      return fact && wrench(fact.torqueNm, MOST.wrenchNm);
    }
    case 'keeperPlug/square':
      if (ready?.kind !== 'keeper.pull') return null;
      return {
        says: tell('grasp.reads', { torque: units.torque(ready.torqueNm) }),
        share: inUnit(ready.torqueNm / MOST.wrenchNm),
      };
    case 'rod/outer':
      return rodFelt({ run, units });
    default:
      return null;
  }
}

const rodFacts = ['rod.turned', 'plug.turned', 'keeper.turned', 'closing.turned', 'tee.turned'] as const;

/** Whatever came last of what a hand on the rod feels: its push, or the thread its tip is on. */
function rodFelt({ run, units }: Pick<Grip, 'run' | 'units'>): Felt | null {
  for (let i = run.facts.length - 1; i >= 0; i -= 1) {
    const fact = run.facts[i];
    if (fact.fact === 'rod.moved')
      return felt(units.force(Math.abs(fact.feltN)), Math.abs(fact.feltN) / MOST.pushN);
    if ('torqueNm' in fact && rodFacts.some((one) => one === fact.fact))
      return felt(units.torque(fact.torqueNm), fact.torqueNm / MOST.rodNm);
  }
  return null;
}

const levels = ['grasp.light', 'grasp.drags', 'grasp.firm', 'grasp.hard'] as const;
const inUnit = (share: number): number => Math.max(0, Math.min(1, share));

function felt(amount: string, share: number): Felt {
  const level = levels[Math.min(3, Math.floor(inUnit(share) * 3.4))];
  return { says: `${tell(level)} (${amount})`, share: inUnit(share) };
}
