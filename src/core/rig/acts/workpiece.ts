import { constants, constantsByTeeSize } from '../../catalogue/index.ts';
import { makeUpTorqueNm } from '../../physics/index.ts';
import type { FactBody } from '../facts.ts';
import { handTightTurns, madeUpTurns, renewed, streetTeeSwept } from '../reach.ts';
import { hasValve, teeInside, topPiece } from '../network.ts';
import { biteNm } from '../oil.ts';
import { OPEN_RAD } from '../actions.ts';
import type { Sense } from '../sense.ts';
import type { RigState } from '../state.ts';
import { troubleSize, type TroubleKind } from '../troubles.ts';
import { mainGaugePa } from '../mainFeed.ts';
import { freeThrustN, HURT_SMALL_PART_N, strikes } from '../strikes.ts';
import { turnRenewal } from './renewal.ts';
import { keeperGapM, pressedByStem } from './keeperStem.ts';
import { did, tidy, type Acts, type Outcome } from './outcome.ts';

const c = constants;

/** Most a hand gives a pipe wrench of the kit, N·m (assumed: two people, long wrench). */
const WRENCH_LIMIT_NM = 420;
/** Torque that splits a malleable rim, as a share of what makes the keeper fully up (assumed). */
const KEEPER_LIMIT_SHARE = 1.6;
/** Torque of a snugged thread a turn past where it stood, N·m (assumed as for make-up). */
const SNUG_NM_PER_TURN = 300;

/** The tee, its plug and its branch, worked with hands and wrenches from outside. */
export const workpieceActs: Acts<
  | 'plug.turn'
  | 'tee.turn'
  | 'keeper.pull'
  | 'branch.cut'
  | 'tee.trim'
  | 'gaugeRing.try'
  | 'service.purge'
  | 'bond.clamp'
> = {
  'plug.turn': (rig, { turns, holdBack }, sense) => {
    if (!reachesTop(rig)) return 'covered';
    if (rig.keeper.at === 'tee' || rig.tee.at !== 'coupling') return 'notFitted';
    if (rig.plug.at === 'rod' || renewed(rig)) return 'notFitted';
    if (rig.plug.at === 'out') return putPlugBack(rig, turns);
    return turnPlug(rig, turns, sense, holdBack);
  },
  'tee.turn': (rig, { turns, holdBack }, sense) => {
    if (rig.saddle.on !== 'board') return 'covered';
    if (rig.tee.at !== 'coupling') return 'notFitted';
    if (rig.branch.cut !== 'through') return 'heldByThread';
    if (renewed(rig)) return turnRenewalByWrench(rig, turns, sense);
    return turnTee(rig, turns, holdBack, sense);
  },
  'keeper.pull': (rig, { torqueNm, holdBack }) => {
    if (rig.keeper.at !== 'tee' || rig.tee.at !== 'coupling') return 'notFitted';
    if (rig.saddle.on !== 'board') return 'covered';
    return pullKeeper(rig, torqueNm, holdBack);
  },
  'branch.cut': (rig, { part }, sense) => {
    if (rig.tee.at !== 'coupling') return 'notFitted';
    if (part === 'plugPilot') {
      if (rig.branch.cut !== 'pilot') return 'notCut';
      return did({ ...rig, branch: { ...rig.branch, pilotPlugged: true } });
    }
    if (rig.branch.cut === 'through' || (part === 'pilot' && rig.branch.cut === 'pilot'))
      return 'alreadyDone';
    const found = foundByCut(rig, part);
    const strained = rig.tee.strained + (found.includes('springs') ? SPRUNG_TURNS : 0);
    return did(
      { ...rig, branch: { ...rig.branch, cut: part }, tee: { ...rig.tee, strained } },
      {
        fact: 'branch.cut',
        part,
        pressureGaugePa: sense.gaugePa('barrel'),
        bonded: rig.site.bonded.tee && rig.site.bonded.service,
        ...(found.length > 0 && { found }),
      },
    );
  },
  'tee.trim': (rig, { how }) => {
    if (teeInside(rig) || rig.tee.at === 'rod') return 'covered';
    if (how === 'saw') {
      if (rig.branch.cut !== 'through') return 'notCut';
      if (rig.tee.trim !== 'whole') return 'alreadyDone';
      return did({ ...rig, tee: { ...rig.tee, trim: 'sawn', sweptM: streetTeeSwept(rig.job).sawn } });
    }
    if (how === 'dress') {
      if (rig.tee.trim === 'whole') return 'notCut';
      if (rig.tee.trim === 'dressed') return 'alreadyDone';
      return did({ ...rig, tee: { ...rig.tee, trim: 'dressed', sweptM: streetTeeSwept(rig.job).dressed } });
    }
    return did({ ...rig, tee: { ...rig.tee, filed: true } });
  },
  'gaugeRing.try': (rig) => {
    if (rig.tee.at !== 'coupling' || rig.saddle.on !== 'board') return 'covered';
    const passes = passesGaugeRing(rig);
    return did(rig, { fact: 'gaugeRing.tried', passes, sweptM: rig.tee.sweptM });
  },
  'service.purge': (rig) => {
    if (rig.branch.cut !== 'through') return 'notCut';
    if (rig.branch.purged) return 'alreadyDone';
    return did({ ...rig, branch: { ...rig.branch, purged: true } }, { fact: 'service.purged' });
  },
  'bond.clamp': (rig, { end, clamped }) => {
    if (rig.site.bonded[end] === clamped) return 'alreadyDone';
    const bonded = { ...rig.site.bonded, [end]: clamped };
    const sparks = bonded.tee && bonded.service && troubleSize(rig, 'strayVolts') > SPARKS_V;
    const clampedOn = { ...rig, site: { ...rig.site, bonded } };
    return sparks ? did(clampedOn, { fact: 'bond.sparked' }) : did(clampedOn);
  },
};

/** Voltage from which a clamp sparks as it closes, V (common practice, no source). */
const SPARKS_V = 15;

/** How far a service that springs at the cut turns the tee in its thread, turns (assumed). */
const SPRUNG_TURNS = 0.1;

/** What the saw brings to light: a pipe within the pipe, or a service that was under strain. */
function foundByCut(rig: RigState, part: string): readonly TroubleKind[] {
  const found: TroubleKind[] = [];
  if (troubleSize(rig, 'insert') > 0) found.push('insert');
  if (part === 'through' && troubleSize(rig, 'springs') > 0) found.push('springs');
  return found;
}

function turnRenewalByWrench(rig: RigState, turns: number, sense: Sense): Outcome {
  const turned = turnRenewal(rig, turns, sense, WRENCH_LIMIT_NM);
  return typeof turned === 'string' ? turned : did(turned.rig, ...turned.facts);
}

/** A wrench or socket bar gets to the tee's top: nothing over it, or a stack that stands open all the way. */
function reachesTop(rig: RigState): boolean {
  if (rig.saddle.on === 'board') return true;
  if (rig.saddle.on !== 'tee' || topPiece(rig) !== null) return false;
  return !hasValve(rig) || rig.valve.openRad >= OPEN_RAD;
}

/** The gauge ring is 3 mm under the smallest bore above. */
export function passesGaugeRing(rig: RigState): boolean {
  return rig.tee.sweptM <= c.rigBoreM.value - 0.003;
}

/** A plug's thread turned by wrench or rod: positive turns screw it in. */
export function turnPlug(rig: RigState, turns: number, sense: Sense, holdBack: boolean) {
  const { plug } = rig;
  const turnsBack = tidy(plug.turnsBack - turns);
  const breaking = !plug.broken && turns < 0;
  const slipsNm = troubleSize(rig, 'plugSlips');
  const biteTurnsNm = biteNm(rig, 'plug', sense.atS);
  if (breaking && slipsNm > 0 && biteTurnsNm > slipsNm) {
    // the wrench rounds off what is left of the square
    const { turnsBack: still } = plug;
    return did(rig, {
      fact: 'plug.turned',
      turnsBack: still,
      torqueNm: slipsNm,
      sinceMark: 0,
      slipped: true,
    });
  }
  if (breaking && biteTurnsNm > WRENCH_LIMIT_NM) {
    // felt and told: a plug that no wrench moves is a reason to refer back
    return did(rig, {
      fact: 'plug.turned',
      turnsBack: plug.turnsBack,
      torqueNm: WRENCH_LIMIT_NM,
      sinceMark: 0,
    });
  }
  const torqueNm = breaking ? biteTurnsNm : snugNm(turnsBack);
  if (turnsBack < -0.5) return 'tooTight' as const;
  const strained =
    !holdBack && torqueNm > rig.job.workpiece.teeBreakNm && rig.branch.cut === 'through'
      ? Math.abs(turns)
      : 0;
  const moved: RigState = {
    ...rig,
    plug: {
      ...plug,
      at: turnsBack < madeUpTurns(rig.job) ? 'tee' : plug.at,
      turnsBack,
      broken: plug.broken || turns < 0,
      torqueNm,
    },
    rod: plug.at === 'rod' && turnsBack < madeUpTurns(rig.job) ? { ...rig.rod, load: null } : rig.rod,
    tee: strained > 0 ? { ...rig.tee, strained: rig.tee.strained + strained } : rig.tee,
  };
  const facts: FactBody[] = [
    { fact: 'plug.turned', turnsBack, torqueNm, sinceMark: tidy(turnsBack - (rig.site.marks.plug ?? 0)) },
  ];
  if (strained > 0) facts.push({ fact: 'tee.strained', turns: strained });
  return turnsBack >= madeUpTurns(rig.job) ? freePlug(moved, facts, sense) : did(moved, ...facts);
}

/** The last thread lets go: in a shut chamber the pressures are equal; in the open it is thrown. */
function freePlug(rig: RigState, facts: FactBody[], sense: Sense) {
  const closed = rig.saddle.on === 'tee' && topPiece(rig) !== null;
  const above = rig.saddle.on === 'board' ? 0 : sense.gaugePa('chamber');
  const difference = sense.gaugePa('barrel') - above;
  const thrustN = freeThrustN(rig, difference);
  const onRod = rig.rod.engaged === 'plug';
  const freed: RigState = {
    ...rig,
    plug: { ...rig.plug, at: onRod ? 'rod' : 'out' },
    rod: onRod ? { ...rig.rod, load: 'plug', engaged: null } : rig.rod,
  };
  facts.push({ fact: 'plug.free', chamberClosed: closed, differenceGaugePa: difference, thrustN });
  return strikes(freed, facts, !onRod && thrustN > HURT_SMALL_PART_N, 'plugThrown');
}

/** Screwing the old plug back in by hand and wrench. */
function putPlugBack(rig: RigState, turns: number) {
  if (turns <= 0) return 'notFitted' as const;
  const turnsBack = tidy(Math.max(0, madeUpTurns(rig.job) - turns));
  return did(
    { ...rig, plug: { at: 'tee', turnsBack, broken: true, torqueNm: c.oldThreadRunNm.value } },
    { fact: 'plug.turned', turnsBack, torqueNm: c.oldThreadRunNm.value, sinceMark: turnsBack },
  );
}

/** The tee turned in its coupling by a wrench on its body. */
export function turnTee(rig: RigState, turns: number, holdBack: boolean, sense: Sense) {
  const { tee } = rig;
  const turnsBack = tidy(tee.turnsBack - turns);
  if (turnsBack < -0.3) return 'tooTight' as const;
  const breaking = !tee.broken && turns < 0;
  if (breaking && biteNm(rig, 'tee', sense.atS) > WRENCH_LIMIT_NM) {
    return did(rig, {
      fact: 'tee.turned',
      turnsBack: tee.turnsBack,
      torqueNm: WRENCH_LIMIT_NM,
      heldBack: holdBack,
    });
  }
  const torqueNm = teeTorqueNm(rig, turnsBack, breaking, sense.atS);
  const moved: RigState = { ...rig, tee: { ...tee, turnsBack, broken: tee.broken || turns < 0 } };
  const facts: FactBody[] = [{ fact: 'tee.turned', turnsBack, torqueNm, heldBack: holdBack }];
  return turnsBack >= madeUpTurns(rig.job) ? freeTee(moved, facts, sense) : did(moved, ...facts);
}

/** What it takes to turn the tee now, N·m. */
export function teeTorqueNm(rig: RigState, turnsBack: number, breaking: boolean, atS: number): number {
  return breaking ? biteNm(rig, 'tee', atS) : snugNm(turnsBack);
}

/** An old thread once broken: it runs easily until it is back where it stood, and snugs from there, N·m. */
function snugNm(turnsBack: number): number {
  const runNm = c.oldThreadRunNm.value;
  return turnsBack >= 0.01 ? runNm : runNm + SNUG_NM_PER_TURN * (0.12 - turnsBack);
}

/** The tee's last thread lets go. */
export function freeTee(rig: RigState, facts: FactBody[], sense: Sense) {
  const closed = rig.saddle.on === 'coupling' && topPiece(rig) !== null;
  const onRod = rig.rod.engaged === 'keeper';
  const thrustN = closed ? 0 : freeThrustN(rig, mainGaugePa(rig, sense));
  const freed: RigState = {
    ...rig,
    tee: { ...rig.tee, at: onRod ? 'rod' : 'out' },
    rod: onRod ? { ...rig.rod, load: 'tee', engaged: null } : rig.rod,
  };
  facts.push({ fact: 'tee.free', chamberClosed: closed, thrustN });
  return strikes(freed, facts, !onRod && thrustN > HURT_SMALL_PART_N, 'teeThrown');
}

/** The keeper pulled tight: turns follow torque past hand-tight. */
function pullKeeper(rig: RigState, torqueNm: number, holdBack: boolean) {
  const hand = handTightTurns(rig.job);
  const perTurn = perTurnNm(rig);
  // past this the tee's rim would split before the plug went on
  if (torqueNm <= rig.keeper.torqueNm || torqueNm > KEEPER_LIMIT_SHARE * keeperFullNm(rig))
    return 'tooTight' as const;
  const engagedTurns = tidy(Math.max(rig.keeper.engagedTurns, hand + torqueNm / perTurn));
  const moved = rig.site.marks.keeper === undefined ? 0 : engagedTurns - rig.site.marks.keeper;
  const teeTurns =
    !holdBack && rig.branch.cut === 'through' && torqueNm > rig.job.workpiece.teeBreakNm ? 0.1 : 0;
  const strain = !holdBack ? 0.06 : 0;
  const pulled: RigState = {
    ...rig,
    keeper: { ...rig.keeper, engagedTurns, torqueNm, movedTurns: tidy(moved) },
    tee: { ...rig.tee, turnsBack: tidy(rig.tee.turnsBack - teeTurns), strained: rig.tee.strained + strain },
  };
  const facts: FactBody[] = [
    { fact: 'keeper.turned', engagedTurns, torqueNm, heldBack: holdBack, gapM: keeperGapM(pulled) },
  ];
  if (strain > 0) facts.push({ fact: 'tee.strained', turns: strain });
  const pressed = pressedByStem(pulled);
  return did(pressed.rig, ...facts, ...pressed.facts);
}

/** Torque of a thread being made up after so many engaged turns, N·m. */
export function makingUpNm(rig: RigState, engagedTurns: number): number {
  const past = engagedTurns - handTightTurns(rig.job);
  return past <= 0 ? 3 : makeUpTorqueNm(past, perTurnNm(rig));
}

function keeperFullNm(rig: RigState): number {
  return makingUpNm(rig, madeUpTurns(rig.job));
}

/** Torque a turn past hand-tight, N·m. */
export function perTurnNm(rig: RigState): number {
  return constantsByTeeSize.nptMakeUpTorquePerTurnNm[rig.job.workpiece.teeSize].value;
}
