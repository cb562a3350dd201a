import { newTeeChamber } from '../proof.ts';
import { latest } from '../recall.ts';
import { renewalLimits } from '../settings.ts';
import type { KitKind } from '../../rig/index.ts';
import {
  bledAndShutIn,
  fitTip,
  lowerOrLift,
  openValve,
  toTop,
  topKind,
  topOff,
  underRod,
} from './onStack.ts';
import { proving } from './proving.ts';
import { chains, workValve } from './seating.ts';
import { rigOff } from './stopping.ts';
import {
  fluid,
  lastS,
  look,
  offer,
  pick,
  place,
  signing,
  takeOff,
  waitFor,
  wanting,
  type DueView,
  type Offer,
} from './view.ts';

const TURN_RAD = 2 * Math.PI;
/** The branch is left alone once it is off its heading by less than this, rad. */
const ON_HEADING_RAD = 0.09;
/** Turned on so far beyond the least that seals, turns. */
const OVER_LEAST_TURNS = 0.1;
const BITE_TURNS = 1 / 12;
/** Push on the rod that shows the gas has come up under it, N, and how long it is then left, s. */
const EQUAL_S = 300;
/** Turns by which the stopper is slackened at first, and how long it is then waited, s. */
const SLACK_TURNS = 1 / 12;
const SLACK_WAIT_S = 20;

const limitsOf = (view: DueView) => view.limits.renewal ?? renewalLimits;

/** Stage r2: the renewal tee in place of the closing plug. */
export function* runningIn(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (rig.renewal.at !== 'coupling') {
    if (topKind(view) === null && rig.rod.load === null) yield* cappedOnce(view);
    if (wanting(view, 'R2').has('threads') && rig.rod.engaged !== 'renewal') {
      yield* toTop(view, 'sightCap');
      yield* openValve(view);
      yield* look(view, 'downBore', lastS(view, 'tee.free'));
    }
    if (rig.rod.engaged !== 'renewal')
      yield* underRod(view, 'socket', { kind: 'renewalTee', name: 'renewal' });
    if (topKind(view) !== 'rodBarrel') return;
    if (rig.rod.engaged === null) yield* lowerOrLift(view);
    else if (!rig.renewal.threadFound) yield offer('findThread', { kind: 'rod.turn', turns: -0.25 });
    else yield offer('runInTee', { kind: 'rod.turn', turns: 1 });
    return;
  }
  if (rig.rod.engaged === 'renewal') {
    yield* toHeading(view);
    yield* shown(view, 'R2', lastS(view, 'renewal.turned'));
    yield* signing(view, 'R2');
    yield offer('raiseRod', { kind: 'rod.move', lengthM: -0.5 });
    return;
  }
  yield* signing(view, 'R2');
  if (topKind(view) === 'rodBarrel') yield* topOff(view);
  if (rig.saddle.on !== 'board') yield* rigOff(view);
  yield* takeOff(view, 'takeOff', 'splitCollar');
  yield* takeOff(view, 'takeOff', 'cupGasket');
}

/** The upper spool has done its part once; the cap closes the valve until the next piece stands on it. */
function* cappedOnce(view: DueView): Generator<Offer> {
  const capped = latest(view.facts, 'piece.placed', (f) => view.rig.kit[f.piece]?.kind === 'valveCap');
  if (capped && capped.atS > lastS(view, 'tee.free')) return;
  yield* takeOff(view, 'takeOff', 'upperSpool');
  yield* toTop(view, 'valveCap');
}

function* toHeading(view: DueView): Generator<Offer> {
  const set = limitsOf(view);
  const turned = latest(view.facts, 'renewal.turned', (f) => f.engagedTurns > 0);
  if (turned === null) return;
  const least = view.limits.closingHandTurns + 1 + set.pastHandTurns[0] + OVER_LEAST_TURNS - 0.4;
  if (turned.engagedTurns < least) {
    yield offer('runInTee', { kind: 'rod.turn', turns: Math.min(1, least - turned.engagedTurns) });
    return;
  }
  if (Math.abs(turned.offHeadingRad) <= ON_HEADING_RAD) return;
  const short = -turned.offHeadingRad / TURN_RAD;
  yield offer('runInTee', { kind: 'rod.turn', turns: short > 0 ? short : short + 1 });
}

function* shown(view: DueView, id: 'R2' | 'R5', sinceS: number): Generator<Offer> {
  const lacks = wanting(view, id);
  if (lacks.has('quiet') || lacks.has('shutIn') || lacks.has('noPuff'))
    yield* bledAndShutIn(view, sinceS, view.limits.quietS, view.limits.shutS);
}

/** Stage r4: joined, keeper broken and snugged, the first-chamber rig on the new tee and proved. */
export function* provingNewTee(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (rig.line.tieIn === null) {
    const piece = pick(view, 'tieIn');
    if (piece !== null && !rig.kit[piece].sealant)
      yield offer('sealThread', { kind: 'sealant.apply', piece });
    yield* place(view, 'placePiece', 'tieIn');
  }
  const lacks = wanting(view, 'R4');
  if (rig.saddle.on === 'board') {
    if (lacks.has('teeMark')) yield offer('mark', { kind: 'mark', at: 'tee' }, 'R4');
    if (lacks.has('cracked')) {
      const back = latest(view.facts, 'keeper.turned', (f) => f.atS > lastS(view, 'renewal.turned'));
      const turns = back === null ? -BITE_TURNS : BITE_TURNS;
      yield offer('breakKeeper', { kind: 'keeper.turn', turns, holdBack: true }, 'R4');
    }
    if (rig.seatRing.piece === null) yield* place(view, 'placePiece', 'seatRing');
    yield* place(view, 'placePiece', 'saddle');
  }
  yield* chains(view);
  if (!rig.stack.some((p) => p.kind === 'isolationValve')) yield* place(view, 'placePiece', 'isolationValve');
  yield* workValve(view);
  if (!rig.stack.some((p) => p.kind === 'upperSpool')) yield* place(view, 'placePiece', 'upperSpool');
  if (
    latest(view.facts, 'gauge.read', (f) => f.gauge === 'main' && f.atS > lastS(view, 'renewal.turned')) ===
    null
  )
    yield offer('readInstrument', { kind: 'gauge.read', gauge: 'main' }, 'R4');
  yield* proving(view, 'R4', newTeeChamber);
}

/** Stage r5: keeper and stopper out, the new plug in, the rig off. */
export function* settingNewPlug(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (rig.renewal.plug.at === 'tee') {
    yield* newPlugShown(view);
    return;
  }
  if (rig.keeper.at === 'tee' || rig.rod.load === 'keeper') {
    yield* drawing(view, 'socket', 'keeper', { why: 'drawKeeper', turns: -1 });
    return;
  }
  if (rig.stopper.at === 'set' || rig.stopper.at === 'holder') {
    yield* drawingStopper(view);
    return;
  }
  const piece = pick(view, 'newTopPlug');
  if (piece !== null && !rig.kit[piece].sealant && rig.rod.load !== 'newPlug')
    yield offer('sealThread', { kind: 'sealant.apply', piece });
  if (rig.rod.engaged !== 'newPlug') yield* underRod(view, 'socket', { kind: 'newTopPlug', name: 'newPlug' });
  if (topKind(view) !== 'rodBarrel') return;
  if (rig.rod.engaged === null) yield* lowerOrLift(view);
  else if (!rig.renewal.plug.threadFound) yield offer('findThread', { kind: 'rod.turn', turns: -0.25 });
  else yield offer('screwClosing', { kind: 'rod.turn', turns: 1 });
}

/** The rod on what is screwed in, that turned out and drawn up. */
function* drawing(
  view: DueView,
  tip: 'socket' | 'stopperHolder',
  what: string,
  turn: { readonly why: 'drawKeeper'; readonly turns: number },
): Generator<Offer> {
  const { rig } = view;
  if (rig.rod.load === what) {
    if (topKind(view) === 'rodBarrel') yield* topOff(view);
    else yield offer('loadRod', { kind: 'rod.load', piece: null });
    return;
  }
  // keeper and stem are longer than the barrel alone takes in over the ball
  if (topKind(view) === null && !rig.stack.some((p) => p.kind === 'upperSpool'))
    yield* place(view, 'placePiece', 'upperSpool');
  yield* underRod(view, tip, null);
  if (topKind(view) !== 'rodBarrel') return;
  if (rig.rod.engaged === null) yield* lowerOrLift(view);
  else yield offer(turn.why, { kind: 'rod.turn', turns: turn.turns });
}

/** Latched, slackened a little, left until the pressures have come equal, slackened off, drawn. */
function* drawingStopper(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (rig.stopper.at === 'set') {
    if (topKind(view) === null) {
      yield* takeOff(view, 'takeOff', 'upperSpool');
      yield* fitTip(view, 'stopperHolder');
    }
    yield* underRod(view, 'stopperHolder', null);
    if (topKind(view) !== 'rodBarrel') return;
    if (rig.rod.engaged === null) yield* lowerOrLift(view);
    else yield offer('slackenStopper', { kind: 'rod.turn', turns: -0.25 });
    return;
  }
  if (topKind(view) !== 'rodBarrel') {
    yield offer('loadRod', { kind: 'rod.load', piece: null });
    return;
  }
  const slackedS = lastS(view, 'stopper.squeezed');
  const waitedS = view.clockS - slackedS;
  const equal = latest(view.facts, 'stopper.squeezed', (f) => f.turns <= 0);
  if (rig.stopper.torqueNm > 0 && equal === null) {
    if (slackedS > lastS(view, 'rod.engaged') && waitedS < SLACK_WAIT_S)
      yield waitFor('slackenStopper', SLACK_WAIT_S - waitedS);
    const feltFrom = feltAtLatch(view);
    const feltNow = view.readings?.rodFeltN ?? feltFrom;
    if (feltNow - feltFrom < GAS_FELT_N) {
      yield offer('slackenStopper', { kind: 'innerRod.turn', turns: -SLACK_TURNS });
      return;
    }
    if (waitedS < EQUAL_S) yield waitFor('slackenStopper', EQUAL_S - waitedS);
    yield offer('drawStopper', { kind: 'innerRod.turn', turns: -6 });
    return;
  }
  if (waitedS < SLACK_WAIT_S) yield waitFor('slackenStopper', SLACK_WAIT_S - waitedS);
  yield* topOff(view);
}

/** Gas is felt in the rod from this much more push, N. */
const GAS_FELT_N = 4;

/** What the rod felt like when it came down on the stopper, N. */
function feltAtLatch(view: DueView): number {
  return latest(view.facts, 'rod.moved', (f) => f.atS <= lastS(view, 'rod.engaged'))?.feltN ?? 0;
}

function* newPlugShown(view: DueView): Generator<Offer> {
  const { rig, limits } = view;
  const { plug } = rig.renewal;
  if (rig.rod.engaged === 'newPlug') {
    if (plug.torqueNm < limits.closingNm[0] + FIRM_OVER_NM) {
      const turns = plug.engagedTurns < limits.closingHandTurns ? 1 : 1 / 6;
      yield offer('screwClosing', { kind: 'rod.turn', turns });
      yield offer('screwClosing', { kind: 'rod.turn', turns: 1 / 12 });
    }
    yield* shown(view, 'R5', lastS(view, 'newPlug.turned'));
    yield offer('raiseRod', { kind: 'rod.move', lengthM: -0.5 });
    return;
  }
  if (rig.saddle.on === 'tee' && wanting(view, 'R5').has('square')) {
    yield* toTop(view, 'sightCap');
    yield* openValve(view);
    yield* look(view, 'downBore', lastS(view, 'newPlug.turned'));
  }
  yield* signing(view, 'R5');
  if (rig.saddle.on !== 'board') yield* rigOff(view);
  yield* takeOff(view, 'takeOff', 'seatRing');
}

/** Torque at which a plug is firm on the rod, N·m: above the least asked, well under the most. */
const FIRM_OVER_NM = 6;

/** Stage r6: tight with gas, purged, relit. */
export function* purging(view: DueView): Generator<Offer> {
  const { rig, limits } = view;
  const set = limitsOf(view);
  const sinceS = lastS(view, 'newPlug.turned');
  if (latest(view.facts, 'gauge.read', (f) => f.gauge === 'main' && f.atS > sinceS) === null)
    yield offer('readInstrument', { kind: 'gauge.read', gauge: 'main' }, 'R6');
  const watchS = Math.min(300, limits.leakWatchS + 5);
  for (const at of ['tieIn', 'newPlug', 'teeThread'] as const) yield* fluid(view, at, sinceS, watchS);
  const lacks = wanting(view, 'R6');
  if (lacks.has('continuous') || lacks.has('share')) {
    if (rig.line.riser === null) yield* place(view, 'placePiece', 'purgeRiser');
    if (rig.line.riserOpen <= 0) yield offer('purgeLine', { kind: 'riser.turn', open: 1 }, 'R6');
    const read = latest(view.facts, 'riser.read', (f) => f.atS > lastS(view, 'riser.turned'));
    const pauseS = read !== null && read.gasShare >= set.purgeShare ? set.purgeS + 5 : 20;
    const fromS = Math.max(read?.atS ?? 0, lastS(view, 'riser.turned'));
    if (view.clockS - fromS < pauseS) yield waitFor('purgeLine', pauseS - (view.clockS - fromS), 'R6');
    yield offer('purgeLine', { kind: 'riser.read' }, 'R6');
    return;
  }
  if (rig.line.riserOpen > 0) yield offer('purgeLine', { kind: 'riser.turn', open: -1 }, 'R6');
  const on: KitKind = 'purgeRiser';
  yield* takeOff(view, 'takeOff', on);
  if (lacks.has('list')) yield offer('relight', { kind: 'site.do', task: 'relightList' }, 'R6');
  yield* signing(view, 'R6');
  if (rig.site.done.relight === undefined) yield offer('relight', { kind: 'site.do', task: 'relight' });
}
