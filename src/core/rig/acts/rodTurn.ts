import { constants } from '../../catalogue/index.ts';
import type { FactBody } from '../facts.ts';
import type { Hindrance } from '../hindrance.ts';
import { joined } from '../line.ts';
import { biteNm } from '../oil.ts';
import { handTightTurns, madeUpTurns, renewed, threadSeat, travelForTip } from '../reach.ts';
import type { RigState } from '../state.ts';
import { crossedTightestTurns, crossedTorqueNm } from '../threads.ts';
import type { Sense } from '../sense.ts';
import { keeperGapM, pressedByStem } from './keeperStem.ts';
import { did, tidy, withPiece, type Outcome } from './outcome.ts';
import { brokenKeeperNm, turnNewPlug, turnRenewal, type Turned } from './renewal.ts';
import { unlatch } from './stopper.ts';
import { freeTee, makingUpNm, perTurnNm, teeTorqueNm, turnPlug } from './workpiece.ts';

const LIMIT_NM = constants.rodTorqueLimitNm.value;
/** A thread holds its piece from half a turn on. */
const BITES_FROM_TURNS = 0.5;

/** The rod turned by its handle; positive clockwise. What turns is what the tip is on. */
export function turnRod(rig: RigState, turns: number, sense: Sense): Outcome {
  switch (rig.rod.engaged) {
    case 'plug':
      return turnPlugByRod(rig, turns, sense);
    case 'keeper':
      if (renewed(rig) && !joined(rig) && turns >= 0) return byRod(turnRenewal(rig, turns, sense));
      return turns >= 0 ? makeUpKeeper(rig, turns) : backOff(rig, turns, sense);
    case 'closing':
      return turnClosing(rig, turns);
    case 'renewal':
      return byRod(turnRenewal(rig, turns, sense));
    case 'newPlug':
      return byRod(turnNewPlug(rig, turns));
    case 'tee':
      return turnTeeBack(rig, turns);
    default:
      return rig.rod.load === 'stopper' || rig.rod.engaged === 'stopper'
        ? unlatch(rig, turns, sense)
        : did(
            { ...rig, rod: { ...rig.rod, turns: tidy(rig.rod.turns + turns) } },
            { fact: 'rod.turned', turns, torqueNm: 0.4, turning: 'nothing' },
          );
  }
}

function byRod(turned: Turned | Hindrance): Outcome {
  return typeof turned === 'string' ? turned : followThread(turned);
}

function turnPlugByRod(rig: RigState, turns: number, sense: Sense): Outcome {
  const holdsNm = rig.plug.broken ? snuggedNm(rig) : biteNm(rig, 'plug', sense.atS);
  if (turns < 0 && holdsNm > LIMIT_NM) return 'tooTight';
  const outcome = turnPlug(rig, turns, sense, true);
  return typeof outcome === 'string' ? outcome : followThread(outcome);
}

/** What it takes to loosen a plug that was snugged again: as much as it was snugged with, nothing once it has moved. */
function snuggedNm(rig: RigState): number {
  return rig.plug.turnsBack < 0.01 ? rig.plug.torqueNm : 0;
}

/** The rod rises and sinks with the thread it turns. */
function followThread(outcome: { rig: RigState; facts: readonly FactBody[] }): Outcome {
  const { rig } = outcome;
  const travel = threadTravel(rig);
  if (travel === null) return outcome;
  return { rig: { ...rig, rod: { ...rig.rod, travelM: tidy(Math.max(0, travel)) } }, facts: outcome.facts };
}

function threadTravel(rig: RigState): number | null {
  const made = madeUpTurns(rig.job);
  const load = rig.rod.engaged ?? rig.rod.load;
  if (load === 'plug') {
    const seat = threadSeat(rig, 'plug');
    return travelForTip(rig, seat.biteTipZM - Math.max(0, made - rig.plug.turnsBack) * seat.pitchM);
  }
  if (load === 'keeper' || load === 'tee') {
    const seat = threadSeat(rig, 'keeper');
    const lift = renewed(rig) ? 0 : rig.tee.turnsBack * seat.pitchM;
    return travelForTip(rig, seat.biteTipZM - rig.keeper.engagedTurns * seat.pitchM + lift);
  }
  if (load === 'renewal') {
    const seat = threadSeat(rig, 'renewal');
    return travelForTip(rig, seat.biteTipZM - rig.renewal.engagedTurns * seat.pitchM);
  }
  if (load === 'newPlug') {
    const seat = threadSeat(rig, 'newPlug');
    return travelForTip(rig, seat.biteTipZM - rig.renewal.plug.engagedTurns * seat.pitchM);
  }
  if (load === 'closing') {
    const seat = threadSeat(rig, 'closing');
    return travelForTip(rig, seat.biteTipZM - rig.closing.engagedTurns * seat.pitchM);
  }
  return null;
}

/** Clockwise makes the keeper up. */
function makeUpKeeper(rig: RigState, turns: number): Outcome {
  // it turns until it is as tight as a rod can make it
  const tightest = Math.min(handTightTurns(rig.job) + LIMIT_NM / perTurnNm(rig), stemMeetsAt(rig));
  const engagedTurns = tidy(Math.min(tightest, rig.keeper.engagedTurns + turns));
  if (engagedTurns <= rig.keeper.engagedTurns) return 'tooTight';
  const torqueNm = makingUpNm(rig, engagedTurns);
  const keeper = { ...rig.keeper, engagedTurns, torqueNm: Math.max(torqueNm, rig.keeper.torqueNm) };
  const bitten = engagedTurns > BITES_FROM_TURNS && rig.keeper.piece !== null;
  const made: RigState = bitten
    ? {
        ...withPiece(rig, rig.keeper.piece ?? '', { where: 'rig' }),
        keeper: { ...keeper, at: 'tee' },
        rod: { ...rig.rod, load: null },
      }
    : { ...rig, keeper };
  const pressed = pressedByStem(made);
  return followThread({
    rig: pressed.rig,
    facts: [
      { fact: 'keeper.turned', engagedTurns, torqueNm, heldBack: true, gapM: keeperGapM(made) },
      ...pressed.facts,
    ],
  });
}

/** Turns at which a stem that is too long meets the stopper and the keeper goes no further. */
function stemMeetsAt(rig: RigState): number {
  const long = rig.keeper.piece === null ? undefined : rig.kit[rig.keeper.piece].defects.stemLongM;
  return long === undefined ? Infinity : madeUpTurns(rig.job) - long / threadSeat(rig, 'keeper').pitchM;
}

/** A tee whose branch is joined to a line does not turn at all. */
const HELD_NM = 1e4;

/** What the tee sets against being unscrewed by its keeper, N·m. */
function teeResistsNm(rig: RigState, sense: Sense): number {
  if (renewed(rig)) return joined(rig) ? HELD_NM : rig.renewal.torqueNm;
  return rig.branch.cut === 'through'
    ? teeTorqueNm(rig, rig.tee.turnsBack, !rig.tee.broken, sense.atS)
    : HELD_NM;
}

/** Anticlockwise turns whichever thread is the easier, keeper or tee. */
function backOff(rig: RigState, turns: number, sense: Sense): Outcome {
  const keeperNm = rig.keeper.engagedTurns > handTightTurns(rig.job) ? rig.keeper.torqueNm : 3;
  const turnsBack = tidy(rig.tee.turnsBack - turns);
  const teeNm = teeResistsNm(rig, sense);
  if (Math.min(keeperNm, teeNm) > LIMIT_NM) return 'tooTight';
  if (teeNm <= keeperNm) {
    if (renewed(rig)) return byRod(turnRenewal(rig, turns, sense));
    const moved: RigState = { ...rig, tee: { ...rig.tee, turnsBack, broken: true } };
    const facts: FactBody[] = [{ fact: 'tee.turned', turnsBack, torqueNm: teeNm, heldBack: true }];
    if (turnsBack < madeUpTurns(rig.job)) return followThread({ rig: moved, facts });
    const freed = freeTee(moved, facts, sense);
    return followThread({ rig: freed.rig, facts: freed.facts });
  }
  const engagedTurns = tidy(Math.max(0, rig.keeper.engagedTurns + turns));
  const marked = rig.site.marks.keeper;
  const keeper = {
    ...rig.keeper,
    engagedTurns,
    torqueNm: renewed(rig) ? brokenKeeperNm(rig, engagedTurns) : makingUpNm(rig, engagedTurns),
    movedTurns: marked === undefined ? 0 : tidy(marked - engagedTurns),
  };
  const free: RigState =
    engagedTurns > BITES_FROM_TURNS
      ? { ...rig, keeper }
      : {
          ...withPiece(rig, rig.keeper.piece ?? '', { where: 'rod' }),
          keeper: { ...keeper, engagedTurns: 0, at: 'rod' },
          rod: { ...rig.rod, load: 'keeper' },
        };
  return followThread({
    rig: free,
    facts: [
      { fact: 'keeper.turned', engagedTurns, torqueNm: keeperNm, heldBack: true, gapM: keeperGapM(free) },
    ],
  });
}

/** Backwards finds the start of the thread (a click); forwards makes it up, or crosses it. */
function turnClosing(rig: RigState, turns: number): Outcome {
  const { closing } = rig;
  if (turns < 0) {
    const engagedTurns = tidy(Math.max(0, closing.engagedTurns + turns));
    const out = engagedTurns <= BITES_FROM_TURNS;
    const back: RigState = {
      ...rig,
      closing: {
        ...closing,
        engagedTurns: out ? 0 : engagedTurns,
        torqueNm: out ? 0 : makingUpNm(rig, engagedTurns),
        crossed: out ? false : closing.crossed,
        threadFound: out ? true : closing.threadFound,
        at: out ? 'rod' : closing.at,
      },
    };
    const held: RigState = out ? { ...back, rod: { ...back.rod, load: 'closing' } } : back;
    return closingTurned(
      out && closing.piece !== null ? withPiece(held, closing.piece, { where: 'rod' }) : held,
    );
  }
  const crossed = closing.crossed || (!closing.threadFound && closing.engagedTurns === 0);
  const bottoms = closing.piece === null ? undefined : rig.kit[closing.piece].defects.bottomsTurns;
  const bottom = bottoms === undefined ? Infinity : handTightTurns(rig.job) + bottoms;
  const tightest = crossed
    ? crossedTightestTurns()
    : Math.min(bottom, handTightTurns(rig.job) + LIMIT_NM / perTurnNm(rig));
  const engagedTurns = tidy(Math.min(tightest, closing.engagedTurns + turns));
  if (engagedTurns <= closing.engagedTurns) return 'tooTight';
  // at the bottom it goes hard at once, though the thread is not yet tight
  const madeNm = engagedTurns >= bottom ? LIMIT_NM : makingUpNm(rig, engagedTurns);
  const torqueNm = crossed ? crossedTorqueNm(engagedTurns) : madeNm;
  const bitten = engagedTurns > BITES_FROM_TURNS;
  const made: RigState = {
    ...rig,
    closing: {
      ...closing,
      engagedTurns,
      torqueNm: Math.max(torqueNm, closing.torqueNm),
      crossed,
      at: bitten ? 'coupling' : closing.at,
    },
    rod: bitten ? { ...rig.rod, load: null } : rig.rod,
  };
  return closingTurned(
    bitten && closing.piece !== null ? withPiece(made, closing.piece, { where: 'rig' }) : made,
  );
}

function closingTurned(rig: RigState): Outcome {
  const { engagedTurns, torqueNm, crossed } = rig.closing;
  return followThread({ rig, facts: [{ fact: 'closing.turned', engagedTurns, torqueNm, crossed }] });
}

/** The tee screwed back into its coupling. */
function turnTeeBack(rig: RigState, turns: number): Outcome {
  if (turns <= 0) return 'atStop';
  const turnsBack = tidy(Math.max(0, madeUpTurns(rig.job) - turns));
  const back: RigState = {
    ...rig,
    tee: { ...rig.tee, at: 'coupling', turnsBack, broken: true },
    rod: { ...rig.rod, load: null, engaged: 'keeper' },
  };
  return followThread({
    rig: back,
    facts: [
      { fact: 'tee.turned', turnsBack, torqueNm: teeTorqueNm(back, turnsBack, false, 0), heldBack: true },
    ],
  });
}
