import { stopOf } from '../evidence/h04ServiceStopped.ts';
import { openings } from '../bleeding.ts';
import { latest } from '../recall.ts';
import type { Measure } from '../../rig/index.ts';
import {
  bledAndShutIn,
  fitTip,
  ledAway,
  lowerOrLift,
  QUARTER_RAD,
  openValve,
  shutValve,
  toTop,
  topKind,
  topOff,
  underRod,
} from './onStack.ts';
import { lastS, look, offer, signing, takeOff, waitFor, wanting, type DueView, type Offer } from './view.ts';

/** Aimed at a little above the middle of what is firm, N·m, and the rod's own drag felt besides (assumed). */
const ABOVE_MIDDLE_NM = 0.05;
const DRAG_NM = 0.4;
/** Where the washer is to stand below the port, m: the middle of what port and keeper's stem allow. */
const BELOW_PORT_M = 0.0043;
/** Each length is taken so often and the mean used: a rule is read to a millimetre, and four of them add up. */
const TAKEN_TIMES = 2;
const measures: readonly Measure[] = ['stackHeight', 'seatToBoss', 'bossToPort', 'tipOffset'];
/** Torque at which the rod has done its part on the keeper, N·m. */
const KEEPER_BY_ROD_NM = 50;

/** Stage 4: draw the top plug. */
export function* drawingPlug(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (rig.plug.at === 'tee') {
    yield* underRod(view, 'socket', null);
    if (rig.rod.engaged === null) {
      yield* lowerOrLift(view);
      return;
    }
    yield offer('unscrewPlug', { kind: 'rod.turn', turns: -1 });
    return;
  }
  if (rig.plug.at === 'rod') {
    if (topKind(view) === 'rodBarrel') yield* topOff(view);
    else yield offer('loadRod', { kind: 'rod.load', piece: null });
  }
}

/** Stage 5: look down the bore. */
export function* lookingDown(view: DueView): Generator<Offer> {
  const drawnS = lastS(view, 'plug.free');
  const lacks = wanting(view, 'H3');
  if (lacks.has('looked')) {
    yield* toTop(view, 'sightCap');
    yield* openValve(view);
    yield* look(view, 'downBore', drawnS);
  }
  if (lacks.has('clear')) {
    const sawS = latest(view.facts, 'looked', (f) => f.at === 'downBore')?.atS ?? 0;
    if (sawS >= lastS(view, 'cleaned')) yield offer('clean', { kind: 'clean', at: 'bore' }, 'H3');
    yield* look(view, 'downBore', lastS(view, 'cleaned'));
  }
  yield* signing(view, 'H3');
}

/** Stage 6: stop the bore. */
export function* stoppingBore(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (rig.stopper.at === 'set') {
    yield* lettingGo(view);
    yield* lookingAtStopper(view);
    return;
  }
  if (rig.site.marks.portLine === undefined) yield offer('mark', { kind: 'mark', at: 'portLine' });
  if (topKind(view) !== null && topKind(view) !== 'rodBarrel') yield* topOff(view);
  if (topKind(view) === null && rig.rod.load === null) {
    yield* shutValve(view);
    yield* fitTip(view, 'stopperHolder');
  }
  yield* measured(view);
  if (topKind(view) === null && rig.rod.collarTravelM === null && rig.rod.load === 'stopper')
    yield* clampCollar(view);
  yield* underRod(view, 'stopperHolder', { kind: 'boreStopper', name: 'stopper' });
  if (topKind(view) !== 'rodBarrel') return;
  if (rig.rod.collarTravelM === null && rig.stopper.torqueNm === 0) yield* clampCollar(view);
  const feltNm = latest(view.facts, 'stopper.squeezed')?.torqueNm ?? 0;
  const [lowNm, highNm] = view.limits.stopperFirmNm;
  const firmNm = (lowNm + highNm) / 2 + ABOVE_MIDDLE_NM + DRAG_NM;
  if (rig.stopper.torqueNm === 0) yield offer('lowerRod', { kind: 'rod.move', lengthM: 0.5 });
  if (rig.stopper.torqueNm === 0 || feltNm < firmNm) {
    const turns = feltNm < firmNm / 3 ? 0.5 : 1 / 12;
    yield offer('squeezeStopper', { kind: 'innerRod.turn', turns });
    return;
  }
  yield* provingStop(view);
}

function* measured(view: DueView): Generator<Offer> {
  for (let round = 1; round <= TAKEN_TIMES; round += 1) {
    for (const what of measures) {
      if (takenM(view, what).length < round && view.rig.rod.collarTravelM === null) {
        yield offer('measure', { kind: 'measure', what });
      }
    }
  }
}

function takenM(view: DueView, what: Measure): readonly number[] {
  return view.facts.flatMap((f) => (f.fact === 'measured' && f.what === what ? [f.readingM] : []));
}

function* clampCollar(view: DueView): Generator<Offer> {
  const mean = (what: Measure): number => {
    const all = takenM(view, what).slice(-TAKEN_TIMES);
    return all.length === 0 ? 0 : all.reduce((sum, lengthM) => sum + lengthM, 0) / all.length;
  };
  const travelM =
    mean('stackHeight') + mean('seatToBoss') + mean('bossToPort') - mean('tipOffset') + BELOW_PORT_M;
  yield offer('clampCollar', { kind: 'collar.set', travelM: Math.max(0, Math.min(0.5, travelM)) });
}

/** The bleed must hiss, die, stay quiet; squeeze again; shut in; open again. */
function* provingStop(view: DueView): Generator<Offer> {
  const lacks = wanting(view, 'H4');
  const { blowDown, quiet } = stopOf(view.told);
  yield* ledAway(view);
  if (blowDown === null && view.rig.bleed.openRad === 0) {
    yield offer('openBleed', { kind: 'bleed.turn', angleRad: QUARTER_RAD }, 'H4');
    return;
  }
  const open = openings(view.told).filter((o) => o.valve === 'open');
  const last = open[open.length - 1];
  if (quiet === null && view.rig.bleed.openRad > 0) {
    const quietS = last && last.quietFromS !== null ? view.clockS - last.quietFromS : 0;
    const hissing = last && last.quietFromS === null ? view.clockS - last.openedS : 0;
    if (hissing > 4 * view.limits.expectedHissS)
      yield offer('referBack', { kind: 'refer', reason: 'stopFails' }, 'H4');
    if (quietS < view.limits.quietS) {
      yield waitFor('waitQuiet', last?.quietFromS === null ? 5 : view.limits.quietS - quietS + 1, 'H4');
      return;
    }
  }
  if (lacks.has('snuggedAgain'))
    yield offer('squeezeStopper', { kind: 'innerRod.turn', turns: 1 / 12 }, 'H4');
  if (lacks.has('manometer')) {
    yield* watchingColumn(view);
    return;
  }
  if (lacks.has('shutIn') || lacks.has('noPuff')) {
    yield* bledAndShutIn(view, blowDown?.openedS ?? 0, view.limits.quietS, view.limits.shutS);
    return;
  }
  yield* signing(view, 'H4');
  if (view.rig.rod.collarTravelM !== null) yield offer('clampCollar', { kind: 'collar.set', travelM: null });
  yield offer('unlatch', { kind: 'rod.turn', turns: 0.25 });
}

/** On a low main the column is watched over the shut bleed: read, left so long, read again. */
function* watchingColumn(view: DueView): Generator<Offer> {
  if (view.rig.bleed.openRad > 0)
    yield offer('shutBleed', { kind: 'bleed.turn', angleRad: -QUARTER_RAD }, 'H4');
  const shutS = lastS(view, 'bleed.turned');
  const reads = view.facts.filter(
    (f) => f.fact === 'gauge.read' && f.gauge === 'manometer' && f.atS >= shutS,
  );
  const watchedS = reads.length > 0 ? view.clockS - reads[0].atS : 0;
  if (reads.length > 1 && watchedS > 2 * view.limits.shutS)
    yield offer('referBack', { kind: 'refer', reason: 'stopFails' }, 'H4');
  if (reads.length > 0 && watchedS < view.limits.shutS)
    yield waitFor('waitShutIn', view.limits.shutS - watchedS + 1, 'H4');
  else yield offer('readInstrument', { kind: 'gauge.read', gauge: 'manometer' }, 'H4');
}

function* lettingGo(view: DueView): Generator<Offer> {
  if (topKind(view) === 'rodBarrel' && view.rig.keeper.at === 'board') yield* topOff(view);
}

function* lookingAtStopper(view: DueView): Generator<Offer> {
  if (view.rig.keeper.at !== 'board') return;
  const lacks = wanting(view, 'H5');
  const leftS = lastS(view, 'stopper.left');
  if (lacks.has('looked')) {
    yield* toTop(view, 'sightCap');
    yield* openValve(view);
    yield* look(view, 'downBore', leftS);
  }
  if (lacks.has('quiet') && topKind(view) === 'sightCap') {
    yield* openValve(view);
    if (view.rig.bleed.openRad === 0) {
      yield offer('openBleed', { kind: 'bleed.turn', angleRad: QUARTER_RAD }, 'H5');
      return;
    }
    const open = openings(view.told).filter((o) => o.valve === 'open');
    const last = open[open.length - 1];
    const quietS = last && last.quietFromS !== null ? view.clockS - last.quietFromS : 0;
    if (quietS < view.limits.lookQuietS) {
      yield waitFor('waitQuiet', last?.quietFromS === null ? 5 : view.limits.lookQuietS - quietS + 1, 'H5');
      return;
    }
    yield offer('standBy', { kind: 'listen' }, 'H5');
  }
  yield* signing(view, 'H5');
}

/** Stage 7: lock the stop. */
export function* lockingStop(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (rig.keeper.at !== 'tee' || rig.rod.engaged === 'keeper') {
    if (rig.rod.engaged !== 'keeper') yield* underRod(view, 'socket', { kind: 'keeperPlug', name: 'keeper' });
    if (topKind(view) !== 'rodBarrel') return;
    if (rig.rod.engaged === null) {
      yield* lowerOrLift(view);
      return;
    }
    if (rig.keeper.torqueNm < KEEPER_BY_ROD_NM) {
      yield offer('screwKeeper', { kind: 'rod.turn', turns: rig.keeper.engagedTurns < 4 ? 1 : 0.25 });
    }
    yield offer('raiseRod', { kind: 'rod.move', lengthM: -0.5 });
    return;
  }
  const lacks = wanting(view, 'H6');
  if (rig.saddle.on === 'tee') {
    if (topKind(view) === 'rodBarrel' && lacks.has('bled')) {
      if (rig.rod.travelM > 0) yield offer('raiseRod', { kind: 'rod.move', lengthM: -0.5 });
      yield* openValve(view);
      yield* bledAndShutIn(view, keeperInS(view), view.limits.quietS, view.limits.shutS);
      return;
    }
    yield* rigOff(view);
    return;
  }
  yield* takeOff(view, 'takeOff', 'seatRing');
  if (lacks.has('torque') || lacks.has('holdBack')) {
    const torqueNm = Math.max(view.limits.keeperNm, rig.keeper.torqueNm) + 7;
    yield offer('pullKeeper', { kind: 'keeper.pull', torqueNm, holdBack: true }, 'H6');
  }
  if (lacks.has('marked')) yield offer('mark', { kind: 'mark', at: 'keeper' }, 'H6');
  if (lacks.has('fluid'))
    yield offer(
      'leakFluid',
      { kind: 'leakFluid.apply', at: 'keeper', watchS: Math.max(60, view.limits.fluidWatchS) },
      'H6',
    );
  yield* signing(view, 'H6');
}

/** When the keeper was last turned, s: what the bleed says counts from then. */
function keeperInS(view: DueView): number {
  return lastS(view, 'keeper.turned');
}

/** The whole rig off its seat, from above, chains last. */
export function* rigOff(view: DueView): Generator<Offer> {
  const { rig } = view;
  const top = topKind(view);
  if (top !== null && rig.bleed.openRad > 0 && rig.valve.openRad > 1.48) {
    yield* takeOff(view, 'takeOff', top);
  } else if (top !== null) {
    yield* topOff(view);
    return;
  }
  const last = rig.stack[rig.stack.length - 1];
  if (last) yield offer('takeOff', { kind: 'piece.remove', piece: last.id, holdBack: true });
  for (const [chain, state] of rig.chains.entries()) {
    for (const side of ['left', 'right'] as const) {
      if (state.hooked && state[side] > 0) {
        yield offer('slackenChain', {
          kind: 'tensioner.turn',
          chain,
          side,
          turns: -Math.min(3, state[side]),
        });
      }
    }
  }
  for (const [chain, state] of rig.chains.entries()) {
    if (state.hooked) yield offer('slackenChain', { kind: 'chain.hook', chain, hooked: false });
  }
  yield* takeOff(view, 'takeOff', 'saddle');
}
