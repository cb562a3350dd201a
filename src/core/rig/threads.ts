import { constants, taperThreads } from '../catalogue/index.ts';
import { backedOffSlot, circleM2, madeUpLeakCdAM2, type Link } from '../physics/index.ts';
import { handTightTurns, madeUpTurns, renewed } from './reach.ts';
import type { SeatOpening } from './seats.ts';
import type { RigState } from './state.ts';
import { troubleSize } from './troubles.ts';

const c = constants;

/** Diameter of the thread at its hand-tight plane, m. */
function threadDiameterM(rig: RigState): number {
  return taperThreads[rig.job.workpiece.teeSize].e1M;
}

/** Opening of a thread so many turns back from where it sealed; open bore once it is out. */
function backedOff(rig: RigState, turnsBack: number): SeatOpening[] {
  const total = madeUpTurns(rig.job);
  const sealed: SeatOpening = { law: 'orifice', cdAM2: c.goodJointCdAM2.value };
  if (turnsBack <= 0) return [sealed];
  if (turnsBack >= total) return [openBore(rig)];
  const slot = backedOffSlot(taperThreads[rig.job.workpiece.teeSize], turnsBack, total);
  return [sealed, { law: 'slot', ...slot, cd: c.slotDischarge.value }];
}

/** Thread bore standing open. */
export function openBore(rig: RigState): SeatOpening {
  return { law: 'orifice', cdAM2: c.boreDischarge.value * circleM2(threadDiameterM(rig) * 0.9) };
}

/** Opening past the top plug's thread. */
export function plugOpening(rig: RigState): SeatOpening[] {
  if (renewed(rig)) return newPlugOpening(rig);
  if (rig.plug.at !== 'tee') return [openBore(rig)];
  const planted = rig.job.workpiece.plugLeakCdAM2;
  const openings = backedOff(rig, rig.plug.turnsBack);
  return planted > 0 ? [...openings, { law: 'orifice', cdAM2: planted }] : openings;
}

/** Opening past the tee's male thread in the coupling; strained threads weep. */
export function teeThreadOpening(rig: RigState): SeatOpening[] {
  if (rig.tee.at !== 'coupling') return [];
  if (renewed(rig)) return renewalThreadOpening(rig);
  const strained = rig.tee.strained > 0.05 ? c.weepingJointCdAM2.value : 0;
  const openings = backedOff(rig, rig.tee.turnsBack);
  return strained > 0 ? [...openings, { law: 'orifice', cdAM2: strained }] : openings;
}

/** Opening past the coupling's weld, where it leaks; nothing where it is sound. */
export function weldOpening(rig: RigState): SeatOpening[] {
  const weepM2 = rig.tee.broken ? troubleSize(rig, 'weldWeep') : 0;
  const cdAM2 = troubleSize(rig, 'weldLeak') + weepM2;
  return cdAM2 > 0 ? [{ law: 'orifice', cdAM2 }] : [];
}

interface MadeUp {
  readonly engagedTurns: number;
  readonly sealant: boolean;
  readonly crossed: boolean;
  readonly wrongThread: boolean;
}

/** A crossed thread binds this early, N·m a turn, after the torque of running it on (assumed). */
const CROSSED_NM_PER_TURN = 28;
const RUN_ON_NM = 3;

/** Torque of a crossed thread after so many engaged turns, N·m. */
export function crossedTorqueNm(engagedTurns: number): number {
  return RUN_ON_NM + CROSSED_NM_PER_TURN * engagedTurns;
}

/** Turns at which a crossed thread will go no further on the rod. */
export function crossedTightestTurns(): number {
  return (c.rodTorqueLimitNm.value - RUN_ON_NM) / CROSSED_NM_PER_TURN;
}

/** Turns at which a thread is down: hand-tight, or as far as the rod drives a crossed one. */
function downTurns(rig: RigState, crossed: boolean): number {
  const hand = handTightTurns(rig.job);
  return crossed ? Math.min(hand, crossedTightestTurns()) : hand;
}

/** Opening past a plug being made up from nothing: open, then a slot, then sealed, or down and crossed. */
function makingUp(rig: RigState, made: MadeUp): SeatOpening[] {
  const hand = downTurns(rig, made.crossed);
  if (made.engagedTurns <= 0.5) return [openBore(rig)];
  const wrong = made.crossed || made.wrongThread;
  if (made.engagedTurns < hand) {
    const missing = hand - made.engagedTurns;
    const slot = backedOffSlot(taperThreads[rig.job.workpiece.teeSize], missing, hand);
    return [
      { law: 'slot', ...slot, cd: c.slotDischarge.value },
      { law: 'orifice', cdAM2: wrong ? c.plugCrossedCdAM2.value : c.handTightCdAM2.value },
    ];
  }
  const cdAM2 = madeUpLeakCdAM2(
    {
      turnsPastHandTight: made.engagedTurns - hand,
      sealTurns: SEAL_TURNS,
      sealant: made.sealant,
      crossed: wrong,
    },
    {
      sealedM2: c.goodJointCdAM2.value,
      noSealantM2: c.plugNoSealantCdAM2.value,
      crossedM2: c.plugCrossedCdAM2.value,
      handTightM2: c.handTightCdAM2.value,
    },
  );
  return [{ law: 'orifice', cdAM2 }];
}

/** It seals from so many turns past hand-tight (assumed). */
const SEAL_TURNS = 1.2;

/** Opening past the keeper in the tee's top thread. Its sealant goes on with the kit, so the thread is dressed. */
export function keeperOpening(rig: RigState): SeatOpening[] {
  const id = rig.keeper.piece;
  return makingUp(rig, {
    engagedTurns: rig.keeper.engagedTurns,
    sealant: true,
    crossed: false,
    wrongThread: id !== null && rig.kit[id].defects.wrongThread === true,
  });
}

/** Turned back by more than this from where it was, a taper thread no longer seals, turns (assumed). */
const BACKED_TURNS = 0.02;

/** Opening past the renewal tee's thread in the coupling; turned back it weeps until it has gone on beyond where it was. */
function renewalThreadOpening(rig: RigState): SeatOpening[] {
  const { piece, engagedTurns, mostTurns, crossed } = rig.renewal;
  const kept = piece === null ? null : rig.kit[piece];
  const openings = makingUp(rig, {
    engagedTurns,
    sealant: kept?.sealant === true,
    crossed,
    wrongThread: kept?.defects.wrongThread === true,
  });
  const backed = mostTurns - engagedTurns > BACKED_TURNS || rig.tee.strained > 0.05;
  return backed ? [...openings, { law: 'orifice', cdAM2: c.handTightCdAM2.value }] : openings;
}

/** Opening past the new plug in the renewal tee's top. */
function newPlugOpening(rig: RigState): SeatOpening[] {
  const { piece, at, engagedTurns, crossed } = rig.renewal.plug;
  if (at !== 'tee' || piece === null) return [openBore(rig)];
  const { sealant, defects, trueSize } = rig.kit[piece];
  const wrongThread = defects.wrongThread === true || trueSize !== rig.job.workpiece.teeSize;
  return makingUp(rig, { engagedTurns, sealant, crossed, wrongThread });
}

/** Opening of the tie-in joint to the hole: tight with sealant, weeping without, or where it was pulled about. */
export function tieInOpening(rig: RigState): SeatOpening[] {
  const id = rig.line.tieIn;
  const sealed = id !== null && rig.kit[id].sealant && rig.kit[id].defects.wrongThread !== true;
  const weep =
    (sealed ? 0 : c.plugNoSealantCdAM2.value) + (rig.line.tieInStrained ? c.handTightCdAM2.value : 0);
  return [{ law: 'orifice', cdAM2: c.goodJointCdAM2.value + weep }];
}

/** Opening past the closing plug in the coupling. */
export function closingOpening(rig: RigState): SeatOpening[] {
  const id = rig.closing.piece;
  if (rig.closing.at !== 'coupling' || id === null) return [openBore(rig)];
  const piece = rig.kit[id];
  const wornM2 = troubleSize(rig, 'threadWorn');
  const worn: SeatOpening[] = wornM2 > 0 ? [{ law: 'orifice', cdAM2: wornM2 }] : [];
  const openings = makingUp(rig, {
    engagedTurns: rig.closing.engagedTurns,
    sealant: piece.sealant,
    crossed: rig.closing.crossed,
    wrongThread: piece.defects.wrongThread === true || piece.trueSize !== rig.job.workpiece.teeSize,
  });
  return [...openings, ...worn];
}

/** Openings as links from one place to another; ids are prefix, then a number from the second on. */
export function asLinks(prefix: string, from: string, to: string, openings: readonly SeatOpening[]): Link[] {
  return openings.map((opening, i) => ({ id: i === 0 ? prefix : `${prefix}.${i}`, from, to, ...opening }));
}
