import { hashNoise } from '../../units/index.ts';
import { OPEN_RAD } from '../actions.ts';
import { joined } from '../line.ts';
import type { Hindrance } from '../hindrance.ts';
import { isStacked, type StackedKind } from '../job.ts';
import { aboveM3, chamberM3, hasValve, LOOSE_JOINT_NM, pieceVolumeM3, topPiece } from '../network.ts';
import { ballObstructed, handTightTurns } from '../reach.ts';
import type { Sense } from '../sense.ts';
import type { KitPiece, RigState, StackPiece } from '../state.ts';
import { HURT_THRUST_N, stackThrustN, strikes } from '../strikes.ts';
import { did, onBoard, withPiece, type Acts, type Moved, type Outcome } from './outcome.ts';
import { placeOnLine, removeFromLine } from './line.ts';
import { raise } from './rod.ts';
import { passesGaugeRing } from './workpiece.ts';

/** Make-up torque of a stack joint, N·m, and how far a hand's pull scatters (assumed). */
const JOINT_NM = { isolationValve: 60, lowerSpool: 60, upperSpool: 50 } as Readonly<Record<string, number>>;
const TOP_JOINT_NM = 40;
const HAND_SCATTER = 0.3;

/** Putting pieces on the rig and taking them off. */
export const pieceActs: Acts<'piece.place' | 'piece.remove'> = {
  'piece.place': (rig, { piece: id, holdBack }, sense) => {
    const piece = onBoard(rig, id);
    if (typeof piece === 'string') return piece;
    if (isStacked(piece.kind)) return stackOn(rig, piece, piece.kind, holdBack, sense);
    return placeOther(rig, piece);
  },
  'piece.remove': (rig, { piece: id, holdBack }, sense) => {
    const piece = rig.kit[id];
    if (piece === undefined || piece.where !== 'rig') return 'notPlaced';
    if (isStacked(piece.kind)) return stackOff(rig, piece, holdBack, sense);
    return removeOther(rig, piece, sense);
  },
};

function fitted(rig: RigState, piece: KitPiece, fits: boolean): Outcome {
  return did(withPiece(rig, piece.id, { where: 'rig' }), { fact: 'piece.placed', piece: piece.id, fits });
}

function placeOther(rig: RigState, piece: KitPiece): Outcome {
  const { teeSize, mainNps } = rig.job.workpiece;
  const fitsTee = piece.trueSize === teeSize;
  switch (piece.kind) {
    case 'seatRing':
      if (rig.saddle.on !== 'board') return 'covered';
      if (rig.seatRing.piece !== null) return 'alreadyFitted';
      if (rig.tee.at !== 'coupling' || rig.collar.collar !== null) return 'nothingBelow';
      return fitted({ ...rig, seatRing: { piece: piece.id } }, piece, fitsTee);
    case 'saddle':
      return placeSaddle(rig, piece);
    case 'cradleBlock':
      if (rig.saddle.cradles.length >= 2) return 'alreadyFitted';
      if (rig.chains.some((chain) => chain.hooked)) return 'chained';
      return fitted(
        { ...rig, saddle: { ...rig.saddle, cradles: [...rig.saddle.cradles, piece.id] } },
        piece,
        piece.trueSize === mainNps,
      );
    case 'chain': {
      const free = rig.chains.findIndex((chain) => chain.piece === null);
      if (free < 0) return 'alreadyFitted';
      const hung = { ...rig.chains[free], piece: piece.id };
      const chains: RigState['chains'] = free === 0 ? [hung, rig.chains[1]] : [rig.chains[0], hung];
      return fitted({ ...rig, chains }, piece, true);
    }
    case 'cupGasket':
      if (rig.saddle.on !== 'board') return 'covered';
      if (joined(rig)) return 'occupied';
      if (rig.collar.gasket !== null) return 'alreadyFitted';
      if (rig.tee.at === 'coupling' && !passesGaugeRing(rig)) return 'doesNotFit';
      return fitted({ ...rig, collar: { ...rig.collar, gasket: piece.id } }, piece, fitsTee);
    case 'splitCollar':
      if (rig.saddle.on !== 'board') return 'covered';
      if (rig.collar.collar !== null) return 'alreadyFitted';
      return fitted({ ...rig, collar: { ...rig.collar, collar: piece.id, bolts: [0, 0] } }, piece, fitsTee);
    case 'serviceCap':
    case 'tieIn':
    case 'purgeRiser':
      return placeOnLine(rig, piece);
    case 'closingPlug':
      if (rig.saddle.on !== 'board') return 'covered';
      if (rig.tee.at === 'coupling' || rig.closing.at !== 'board') return 'occupied';
      if (!fitsTee) return 'doesNotFit';
      return fitted(
        {
          ...rig,
          closing: {
            piece: piece.id,
            at: 'coupling',
            engagedTurns: handTightTurns(rig.job),
            torqueNm: 3,
            crossed: false,
            threadFound: true,
          },
        },
        piece,
        fitsTee,
      );
    case 'depthCollar':
      return fitted(rig, piece, true);
    default:
      return 'nothingBelow';
  }
}

function placeSaddle(rig: RigState, piece: KitPiece): Outcome {
  if (rig.saddle.on !== 'board') return 'alreadyFitted';
  const overCoupling = rig.collar.collar !== null || rig.tee.at !== 'coupling';
  if (overCoupling && rig.seatRing.piece !== null) return 'occupied';
  if (overCoupling && rig.tee.at === 'coupling' && !passesGaugeRing(rig)) return 'doesNotFit';
  return fitted(
    { ...rig, saddle: { ...rig.saddle, on: overCoupling ? 'coupling' : 'tee', piece: piece.id } },
    piece,
    true,
  );
}

function stackOn(
  rig: RigState,
  piece: KitPiece,
  kind: StackedKind,
  holdBack: boolean,
  sense: Sense,
): Outcome {
  const reason = stackHindrance(rig, piece);
  if (reason !== null) return reason;
  const base = JOINT_NM[piece.kind] ?? TOP_JOINT_NM;
  const scatter = 1 + HAND_SCATTER * hashNoise(sense.seed, `joint:${piece.id}`, Math.floor(sense.atS));
  const joint: StackPiece = { id: piece.id, kind, jointNm: base * scatter };
  const stack = [...(holdBack ? rig.stack : tightened(rig.stack, joint.jointNm)), joint];
  const placed: RigState = {
    ...withPiece(rig, piece.id, { where: 'rig', defects: withoutLooseness(piece.defects) }),
    stack,
    valve: piece.kind === 'isolationValve' ? { openRad: 0 } : rig.valve,
    testHead: piece.kind === 'testHead' ? { ventOpen: 1, pumpUntilS: 0, strokes: 0 } : rig.testHead,
    bleed: { openRad: 0 },
    rod: piece.kind === 'rodBarrel' ? { ...rig.rod, travelM: 0, engaged: null, held: false } : rig.rod,
  };
  if (piece.kind === 'rodBarrel' && ballObstructed(placed) && rig.valve.openRad < OPEN_RAD)
    return 'noHeadroom';
  return did(placed, { fact: 'piece.placed', piece: piece.id, fits: true });
}

/** A joint made up anew is as tight as the hand makes it, however loose it had worked. */
function withoutLooseness(defects: KitPiece['defects']): KitPiece['defects'] {
  if (defects.looseNm === undefined) return defects;
  return Object.fromEntries(Object.entries(defects).filter(([flaw]) => flaw !== 'looseNm'));
}

function stackHindrance(rig: RigState, piece: KitPiece): Hindrance | null {
  if (rig.saddle.on === 'board') return 'nothingBelow';
  if (topPiece(rig) !== null) return 'occupied';
  const valve = hasValve(rig);
  if (piece.kind === 'isolationValve') return valve ? 'alreadyFitted' : null;
  if (piece.kind === 'lowerSpool') return rig.stack.length > 0 ? 'occupied' : null;
  if (piece.kind === 'upperSpool') {
    return !valve ? 'nothingBelow' : rig.stack.some((p) => p.kind === 'upperSpool') ? 'alreadyFitted' : null;
  }
  return valve ? null : 'nothingBelow';
}

function stackOff(rig: RigState, piece: KitPiece, holdBack: boolean, sense: Sense): Outcome {
  const last = rig.stack[rig.stack.length - 1];
  const removingTop = last.id === piece.id;
  const barrelAndSpool =
    piece.kind === 'rodBarrel' ||
    piece.kind === 'upperSpool' ||
    piece.kind === 'lowerSpool' ||
    piece.kind === 'isolationValve';
  if (!removingTop) return barrelAndSpool ? 'covered' : 'occupied';
  const lifted = rodLifted(rig, piece, sense);
  if (typeof lifted === 'string' || lifted.rig.rod.travelM > 0) return lifted;
  const turned = holdBack ? last : loosest(rig.stack);
  if (turned.id !== last.id) return wrongJoint(rig, lifted, turned, last, sense);
  const aboveValve = hasValve(rig) && piece.kind !== 'isolationValve' && piece.kind !== 'lowerSpool';
  const gaugePa = sense.gaugePa(aboveValve ? 'above' : 'chamber');
  const share = shareOf(rig, piece);
  const cell = aboveValve ? 'above' : 'chamber';
  const gasMol = sense.mol(cell) * sense.gasFraction(cell) * share;
  const thrustN = stackThrustN(gaugePa);
  const off: RigState = {
    ...withPiece(lifted.rig, piece.id, { where: 'board' }),
    stack: rig.stack.slice(0, -1),
    bleed: { openRad: 0 },
    testHead: piece.kind === 'testHead' ? { ventOpen: 1, pumpUntilS: 0, strokes: 0 } : rig.testHead,
    rod: piece.kind === 'rodBarrel' ? { ...lifted.rig.rod, held: false, engaged: null } : rig.rod,
  };
  const fact = { fact: 'piece.removed', piece: piece.id, pressureGaugePa: gaugePa, thrustN, gasMol } as const;
  return strikes(off, [...lifted.facts, fact], thrustN > HURT_THRUST_N, 'stackThrown');
}

/**
 * A rod left down comes up with its barrel, and what hangs on it too, through a ball that stands open behind it. What
 * keeps a rod from being drawn up keeps its barrel: a stopper that grips the bore, a jammed socket.
 */
function rodLifted(rig: RigState, piece: KitPiece, sense: Sense): Outcome {
  const down = piece.kind === 'rodBarrel' && rig.rod.travelM > 0;
  return down ? raise(rig, rig.rod.travelM, sense) : did(rig);
}

/** Without hold-back it is the loosest joint of the stack that turns. */
function loosest(stack: readonly StackPiece[]): StackPiece {
  let least = stack[stack.length - 1];
  for (const piece of stack) if (piece.jointNm < least.jointNm) least = piece;
  return least;
}

/** The wrong joint turns: loose the first time, off with all that stands on it the second. */
function wrongJoint(
  rig: RigState,
  lifted: Moved,
  turned: StackPiece,
  meant: StackPiece,
  sense: Sense,
): Outcome {
  if (turned.jointNm < LOOSE_JOINT_NM) return comesOff(lifted, turned, meant, sense);
  const stack = rig.stack.map((p) => (p.id === turned.id ? { ...p, jointNm: LOOSE_JOINT_NM / 3 } : p));
  return did({ ...rig, stack }, { fact: 'joint.turned', joint: turned.id, meant: meant.id });
}

function comesOff(
  { rig, facts: before }: Moved,
  turned: StackPiece,
  meant: StackPiece,
  sense: Sense,
): Outcome {
  const at = rig.stack.findIndex((p) => p.id === turned.id);
  const underBall = turned.kind === 'isolationValve' || turned.kind === 'lowerSpool';
  const gaugePa = sense.gaugePa(underBall ? 'chamber' : 'above');
  const thrustN = stackThrustN(gaugePa);
  let off: RigState = { ...rig, stack: rig.stack.slice(0, at), bleed: { openRad: 0 } };
  for (const piece of rig.stack.slice(at)) off = withPiece(off, piece.id, { where: 'board' });
  const facts = [
    ...before,
    { fact: 'joint.turned', joint: turned.id, meant: meant.id },
    { fact: 'piece.removed', piece: turned.id, pressureGaugePa: gaugePa, thrustN, gasMol: 0 },
  ] as const;
  const unheld = { ...off, rod: { ...off.rod, held: false, engaged: null } };
  return strikes(unheld, facts, thrustN > HURT_THRUST_N, 'stackThrown');
}

/** Share of its cell's gas that goes with a piece. */
function shareOf(rig: RigState, piece: KitPiece): number {
  if (piece.kind === 'isolationValve') return 1;
  const whole = piece.kind === 'lowerSpool' ? chamberM3(rig) : aboveM3(rig);
  return whole > 0 ? pieceVolumeM3(piece.kind) / whole : 0;
}

function removeOther(rig: RigState, piece: KitPiece, sense: Sense): Outcome {
  const back = withPiece(rig, piece.id, { where: 'board' });
  const gone = { fact: 'piece.removed', piece: piece.id, pressureGaugePa: 0, thrustN: 0, gasMol: 0 } as const;
  switch (piece.kind) {
    case 'seatRing':
      if (rig.saddle.on !== 'board') return 'covered';
      return did({ ...back, seatRing: { piece: null } }, gone);
    case 'saddle': {
      if (rig.stack.length > 0) return 'covered';
      if (rig.chains.some((chain) => chain.hooked)) return 'chained';
      const gasMol = sense.mol('chamber') * sense.gasFraction('chamber');
      return did(
        { ...back, saddle: { ...rig.saddle, on: 'board', piece: null } },
        { ...gone, pressureGaugePa: sense.gaugePa('chamber'), gasMol },
      );
    }
    case 'cradleBlock':
      if (rig.chains.some((chain) => chain.hooked)) return 'chained';
      return did(
        { ...back, saddle: { ...rig.saddle, cradles: rig.saddle.cradles.filter((id) => id !== piece.id) } },
        gone,
      );
    case 'chain': {
      const at = rig.chains.findIndex((chain) => chain.piece === piece.id);
      if (rig.chains[at].hooked) return 'chained';
      const bare = { ...rig.chains[at], piece: null };
      return did({ ...back, chains: at === 0 ? [bare, rig.chains[1]] : [rig.chains[0], bare] }, gone);
    }
    case 'cupGasket':
      if (rig.saddle.on !== 'board' || rig.collar.collar !== null) return 'covered';
      return did({ ...back, collar: { ...rig.collar, gasket: null } }, gone);
    case 'splitCollar':
      if (rig.saddle.on !== 'board') return 'covered';
      return did({ ...back, collar: { ...rig.collar, collar: null, bolts: [0, 0] } }, gone);
    case 'serviceCap':
    case 'tieIn':
    case 'purgeRiser':
      return removeFromLine(rig, back, piece, sense);
    default:
      return 'heldByThread';
  }
}

/** Making up a joint without hold-back drags the joints below it as tight as itself, no looser. */
function tightened(stack: readonly StackPiece[], jointNm: number): StackPiece[] {
  return stack.map((p) => (p.jointNm < jointNm ? { ...p, jointNm } : p));
}
