import { constants } from '../../catalogue/index.ts';
import type { FactBody } from '../facts.ts';
import { joined } from '../line.ts';
import { handTightTurns, renewalTurnsShort, renewed } from '../reach.ts';
import {
  biteIn,
  comeOut,
  offHeadingRad,
  offHeadingReadRad,
  renewalNm,
  renewalTurnsAt,
} from '../renewalTee.ts';
import type { Sense } from '../sense.ts';
import type { RigState, ThreadState } from '../state.ts';
import { crossedTightestTurns, crossedTorqueNm } from '../threads.ts';
import { keeperGapM } from './keeperStem.ts';
import { did, tidy, withPiece, type Acts, type Outcome } from './outcome.ts';
import { makingUpNm, perTurnNm } from './workpiece.ts';

const LIMIT_NM = constants.rodTorqueLimitNm.value;
/** A thread holds its piece from half a turn on. */
const BITES_FROM_TURNS = 0.5;
/** A made-up thread once broken comes up to this share of its first torque (assumed). */
const BROKEN_SHARE = 0.25;

export type Turned = { readonly rig: RigState; readonly facts: readonly FactBody[] };

/** The keeper by wrench from outside. */
export const renewalActs: Acts<'keeper.turn'> = {
  'keeper.turn': (rig, { turns, holdBack }, sense) => {
    if (rig.keeper.at !== 'tee' || rig.tee.at !== 'coupling') return 'notFitted';
    if (rig.saddle.on !== 'board') return 'covered';
    return turnKeeper(rig, turns, holdBack, sense);
  },
};

/** With nothing holding back, what is easier turns: the tee itself, or, joined to its line, the joint is pulled about. */
function turnKeeper(rig: RigState, turns: number, holdBack: boolean, sense: Sense): Outcome {
  const feltNm = rig.keeper.torqueNm;
  if (!holdBack && turns < 0 && renewed(rig) && !joined(rig) && rig.renewal.torqueNm < feltNm) {
    const turned = turnRenewal(rig, turns, sense, WRENCH_NM);
    return typeof turned === 'string' ? turned : did(turned.rig, ...turned.facts);
  }
  const moved = keeperBy(rig, turns);
  if (typeof moved === 'string') return moved;
  const strain = holdBack ? 0 : Math.abs(turns);
  const strained: RigState = {
    ...moved,
    tee: { ...moved.tee, strained: tidy(moved.tee.strained + strain) },
    line: { ...moved.line, tieInStrained: moved.line.tieInStrained || (strain > 0.05 && joined(rig)) },
  };
  const facts: FactBody[] = [
    {
      fact: 'keeper.turned',
      engagedTurns: moved.keeper.engagedTurns,
      torqueNm: turns < 0 ? feltNm : moved.keeper.torqueNm,
      heldBack: holdBack,
      gapM: keeperGapM(moved),
    },
  ];
  if (strain > 0) facts.push({ fact: 'tee.strained', turns: strain });
  return did(strained, ...facts);
}

/** Torque of the keeper of a renewal tee once its bite is broken, N·m. */
export function brokenKeeperNm(rig: RigState, engagedTurns: number): number {
  return BROKEN_SHARE * makingUpNm(rig, engagedTurns);
}

function keeperBy(rig: RigState, turns: number): RigState | 'tooTight' {
  const engagedTurns = tidy(Math.max(0, rig.keeper.engagedTurns + turns));
  if (makingUpNm(rig, engagedTurns) > WRENCH_NM) return 'tooTight';
  const marked = rig.site.marks.keeper;
  const movedTurns = marked === undefined ? rig.keeper.movedTurns : tidy(marked - engagedTurns);
  const torqueNm = brokenKeeperNm(rig, engagedTurns);
  if (engagedTurns > BITES_FROM_TURNS)
    return { ...rig, keeper: { ...rig.keeper, engagedTurns, torqueNm, movedTurns } };
  const { piece } = rig.keeper;
  const off = piece === null ? rig : withPiece(rig, piece, { where: 'board' });
  return { ...off, keeper: { piece: null, at: 'board', engagedTurns: 0, torqueNm: 0, movedTurns } };
}

/** Most two hands give a wrench on the tee's body, N·m (assumed). */
const WRENCH_NM = 250;

/** The renewal tee turned in its coupling: by the rod on its keeper's square, or by wrench on its body. */
export function turnRenewal(
  rig: RigState,
  turns: number,
  sense: Sense,
  limitNm = LIMIT_NM,
): Turned | 'tooTight' | 'heldByThread' {
  if (joined(rig)) return 'heldByThread';
  const { renewal } = rig;
  const made = turns < 0 ? backedOff(renewal, turns) : screwedOn(rig, turns, limitNm);
  if (made === null) return 'tooTight';
  const backward = turns < 0 && renewal.engagedTurns > handTightTurns(rig.job);
  const thread: ThreadState = {
    ...made,
    torqueNm: made.crossed ? crossedTorqueNm(made.engagedTurns) : renewalNm(rig.job, made.engagedTurns),
  };
  const mostTurns = Math.max(renewal.mostTurns, thread.engagedTurns);
  const turned = settled({ ...rig, renewal: { ...renewal, ...thread, mostTurns } });
  const fact: FactBody = {
    fact: 'renewal.turned',
    engagedTurns: thread.engagedTurns,
    torqueNm: thread.torqueNm,
    crossed: thread.crossed,
    offHeadingRad: offHeadingReadRad(thread.engagedTurns, sense),
    trueOffHeadingRad: offHeadingRad(thread.engagedTurns, sense),
    backward,
  };
  return { rig: turned, facts: [fact] };
}

/** In its thread it is the rig's tee; out of it, it hangs on the rod or comes off in the hand. */
function settled(rig: RigState): RigState {
  const bitten = rig.renewal.engagedTurns > BITES_FROM_TURNS;
  if (bitten && !renewed(rig)) return biteIn(rig);
  if (!bitten && renewed(rig)) return comeOut(rig);
  return renewed(rig) ? { ...rig, tee: { ...rig.tee, turnsBack: renewalTurnsShort(rig) } } : rig;
}

/** Backwards finds the start of the thread (a click), or unscrews what is in. */
function backedOff(was: ThreadState, turns: number): ThreadState {
  const engagedTurns = tidy(Math.max(0, was.engagedTurns + turns));
  const out = engagedTurns <= BITES_FROM_TURNS;
  return {
    engagedTurns: out ? 0 : engagedTurns,
    torqueNm: 0,
    crossed: out ? false : was.crossed,
    threadFound: out ? true : was.threadFound,
  };
}

/** Forwards makes it up, or crosses it where its start was not found; null where it goes no further. */
function screwedOn(rig: RigState, turns: number, limitNm: number): ThreadState | null {
  return on(rig.renewal, turns, renewalTurnsAt(rig.job, limitNm));
}

function on(was: ThreadState, turns: number, trueTightest: number): ThreadState | null {
  const crossed = was.crossed || (!was.threadFound && was.engagedTurns === 0);
  const tightest = crossed ? crossedTightestTurns() : trueTightest;
  const engagedTurns = tidy(Math.min(tightest, was.engagedTurns + turns));
  return engagedTurns <= was.engagedTurns ? null : { ...was, engagedTurns, crossed };
}

/** The new top plug turned by the rod. */
export function turnNewPlug(rig: RigState, turns: number): Turned | 'tooTight' {
  const { plug } = rig.renewal;
  const tightest = handTightTurns(rig.job) + LIMIT_NM / perTurnNm(rig);
  const made = turns < 0 ? backedOff(plug, turns) : on(plug, turns, tightest);
  if (made === null) return 'tooTight';
  const torqueNm = made.crossed ? crossedTorqueNm(made.engagedTurns) : makingUpNm(rig, made.engagedTurns);
  const bitten = made.engagedTurns > BITES_FROM_TURNS;
  const moved = plug.piece === null ? rig : withPiece(rig, plug.piece, { where: bitten ? 'rig' : 'rod' });
  const turned: RigState = {
    ...moved,
    renewal: { ...rig.renewal, plug: { ...plug, ...made, torqueNm, at: bitten ? 'tee' : 'rod' } },
    rod: { ...rig.rod, load: bitten ? null : 'newPlug' },
  };
  const { engagedTurns, crossed } = made;
  return { rig: turned, facts: [{ fact: 'newPlug.turned', engagedTurns, torqueNm, crossed }] };
}
