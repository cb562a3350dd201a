import { constants, constantsByTeeSize } from '../../catalogue/index.ts';
import { renewed, standingGeometry, tipZM } from '../reach.ts';
import {
  exposedShare,
  liveTorqueNm,
  squeezeTurnsFor,
  squeezeTorqueNm,
  stopperHoldsN,
  stopperInBore,
  stopperRubber,
  stopperSize,
} from '../stopping.ts';
import type { RigState } from '../state.ts';
import type { Sense } from '../sense.ts';
import { barrelOn } from '../rodFree.ts';
import { fallThrough } from '../strikes.ts';
import { did, tidy, withPiece, type Outcome } from './outcome.ts';

const c = constants;

/** Tilt of a stopper squeezed beside the port, where it has wall on one side only, rad (assumed). */
const TILT_AT_PORT_RAD = 0.2;

/** The inner rod turned: squeezes (clockwise) or slackens the stopper on the holder. */
export function innerTurn(rig: RigState, turns: number, sense: Sense): Outcome {
  if (!barrelOn(rig)) return 'needsBarrel';
  const onHolder = rig.rod.tip !== null && rig.kit[rig.rod.tip].kind === 'stopperHolder';
  const latched = onHolder && (rig.rod.load === 'stopper' || rig.rod.engaged === 'stopper');
  const size = stopperSize(rig);
  if (!latched || size === null) return 'needsLoad';
  const rubber = stopperRubber(size, rig.job.workpiece.teeSize);
  // rubber that has long relaxed is slackened from what stress is left in it
  const from = renewed(rig)
    ? squeezeTurnsFor(rubber, liveTorqueNm(rig, sense.atS))
    : rig.stopper.squeezeTurns;
  const squeezeTurns = tidy(Math.max(0, from + turns));
  const inBore = stopperInBore(rig);
  const torqueNm = squeezeTorqueNm(rubber, squeezeTurns);
  const tornNm = constantsByTeeSize.stopperTearNm[size].value;
  if (torqueNm > 3 * tornNm) return 'tooTight';
  const torn = torqueNm > tornNm;
  const squeezed: RigState = {
    ...rig,
    stopper: {
      ...rig.stopper,
      squeezeTurns,
      torqueNm: torn ? torqueNm / 3 : torqueNm,
      squeezedAtS: sense.atS,
      tiltRad: inBore ? TILT_AT_PORT_RAD * exposedShare(rig) : 0,
    },
  };
  const fact = {
    fact: 'stopper.squeezed',
    torqueNm: torqueNm + c.stopperTorqueFeltNm.value,
    turns: squeezeTurns,
    inBore,
  } as const;
  return torn ? did(squeezed, fact, { fact: 'stopper.torn' }) : did(squeezed, fact);
}

/** Grip on the bore from which a stopper stays when the holder turns, N (assumed). */
const GRIPS_FROM_N = 20;

/** The latch is clear after this much of a turn (assumed: a fifth). */
const LATCH_TURNS = 0.2;

/** The outer rod turned on a stopper: clockwise unlatches it if the bore grips it; anticlockwise latches again. */
export function unlatch(rig: RigState, turns: number, sense: Sense): Outcome {
  const latchNm = c.latchReleaseNm.value;
  if (rig.rod.engaged === 'stopper' && rig.rod.load === null) {
    if (turns >= 0) return 'atStop';
    return did(
      {
        ...rig,
        stopper: { ...rig.stopper, at: 'holder' },
        rod: { ...rig.rod, load: 'stopper', engaged: null },
      },
      { fact: 'rod.turned', turns, torqueNm: latchNm, turning: 'latch' },
    );
  }
  const grips = stopperInBore(rig) && stopperHoldsN(rig, rig.stopper.squeezedAtS) >= GRIPS_FROM_N;
  const turned = tidy(Math.max(0, rig.rod.turns + turns));
  if (turned < LATCH_TURNS || !grips) {
    const at = { ...rig, rod: { ...rig.rod, turns: grips ? turned : 0 } };
    return did(at, {
      fact: 'rod.turned',
      turns,
      torqueNm: grips ? latchNm : 0.4,
      turning: grips ? 'latch' : 'stopper',
    });
  }
  const left = withDepth(rig);
  const { belowPortM, piece } = left.stopper;
  if (piece !== null && rig.kit[piece].defects.screwSlips === true) {
    const slack = { ...left, rod: { ...rig.rod, load: null, engaged: null, turns: 0 } };
    const fallen = fallThrough(slack, sense);
    return did(
      fallen.rig,
      { fact: 'rod.turned', turns, torqueNm: latchNm, turning: 'latch' },
      ...fallen.facts,
    );
  }
  const inPlace = piece === null ? left : withPiece(left, piece, { where: 'rig' });
  return did(
    {
      ...inPlace,
      stopper: { ...left.stopper, at: 'set' },
      rod: { ...rig.rod, load: null, engaged: null, turns: 0 },
    },
    { fact: 'rod.turned', turns, torqueNm: latchNm, turning: 'latch' },
    { fact: 'stopper.left', belowPortM, torqueNm: rig.stopper.torqueNm },
  );
}

/** A stopper on the holder: how deep it now stands, from where the tip is. */
export function withDepth(rig: RigState): RigState {
  if (rig.rod.load !== 'stopper') return rig;
  const tip = tipZM(rig);
  if (tip === null) return rig;
  const belowPortM = tidy(standingGeometry(rig).portUndersideZM - tip);
  return { ...rig, stopper: { ...rig.stopper, belowPortM } };
}
