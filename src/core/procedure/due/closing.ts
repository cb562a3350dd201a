import { latest } from '../recall.ts';
import { leftInGround } from '../evidence/h12HandedBack.ts';
import { recordFieldsOf, workOf, type RecordField } from '../../rig/index.ts';
import { renewalLimits } from '../settings.ts';
import { PSI_PA } from '../../units/index.ts';
import { bledAndShutIn, lowerOrLift, openValve, toTop, topKind, topOff, underRod } from './onStack.ts';
import { rigOff } from './stopping.ts';
import {
  fluid,
  lastS,
  look,
  offer,
  pick,
  signing,
  takeOff,
  task,
  waitFor,
  wanting,
  type DueView,
  type Offer,
} from './view.ts';

/** Torque at which the closing plug is firm on the rod, N·m: above the least asked, well under the most. */
const FIRM_OVER_NM = 6;

/** Stage 10: draw the tee. */
export function* drawingTee(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (rig.tee.at === 'coupling') {
    yield* readyToOpen(view);
    yield* underRod(view, 'socket', null);
    if (topKind(view) !== 'rodBarrel') return;
    if (rig.rod.engaged === null) {
      yield* lowerOrLift(view);
      return;
    }
    yield offer('unscrewTee', { kind: 'rod.turn', turns: -0.5 });
    yield offer('unscrewTee', { kind: 'rod.turn', turns: -0.125 });
    return;
  }
  if (rig.tee.at === 'rod') {
    if (topKind(view) === 'rodBarrel') yield* topOff(view);
    else yield offer('loadRod', { kind: 'rod.load', piece: null });
  }
}

function* readyToOpen(view: DueView): Generator<Offer> {
  if (view.procedure.holds.H10 !== 'open') return;
  const lacks = wanting(view, 'H10');
  const plug = pick(view, workOf(view.job) === 'abandon' ? 'closingPlug' : 'renewalTee');
  if (lacks.has('plug') && plug !== null)
    yield offer('sealThread', { kind: 'sealant.apply', piece: plug }, 'H10');
  yield* task(view, 'bringSpares');
  yield* task(view, 'secondPerson');
  if (lacks.has('mainPressure')) yield offer('readInstrument', { kind: 'gauge.read', gauge: 'main' }, 'H10');
  if (lacks.has('air')) yield offer('readInstrument', { kind: 'detector.read', where: 'hole' }, 'H10');
  yield* signing(view, 'H10');
}

/** Stage 11: close the coupling. Past the last thread there is no way but forward. */
export function* closingCoupling(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (rig.closing.at !== 'coupling' || rig.rod.engaged === 'closing') {
    yield* cappedBetween(view);
    if (!sawThreads(view) && rig.rod.engaged !== 'closing') {
      yield* toTop(view, 'sightCap');
      yield* openValve(view);
      yield* look(view, 'downBore', lastS(view, 'tee.free'));
    }
    const plug = pick(view, 'closingPlug');
    if (plug !== null && !rig.kit[plug].sealant && rig.rod.load !== 'closing') {
      yield offer('sealThread', { kind: 'sealant.apply', piece: plug });
    }
    if (rig.rod.engaged !== 'closing')
      yield* underRod(view, 'socket', { kind: 'closingPlug', name: 'closing' });
    if (topKind(view) !== 'rodBarrel') return;
    yield* screwingIn(view);
    return;
  }
  yield* provingPlug(view);
}

/** The upper spool has done its part; the cap closes the valve until the next piece stands on it. */
function* cappedBetween(view: DueView): Generator<Offer> {
  if (topKind(view) !== null) return;
  yield* takeOff(view, 'takeOff', 'upperSpool');
  const capped = latest(view.facts, 'piece.placed', (f) => view.rig.kit[f.piece]?.kind === 'valveCap');
  if (!capped || capped.atS < lastS(view, 'tee.free')) yield* toTop(view, 'valveCap');
}

function sawThreads(view: DueView): boolean {
  return !wanting(view, 'H11').has('threads');
}

function* screwingIn(view: DueView): Generator<Offer> {
  const { rig, limits } = view;
  if (rig.rod.engaged === null) {
    yield* lowerOrLift(view);
    return;
  }
  const found = latest(view.facts, 'closing.turned', (f) => f.engagedTurns === 0);
  if (!found || found.atS < lastS(view, 'rod.engaged')) {
    if (rig.closing.engagedTurns === 0) yield offer('findThread', { kind: 'rod.turn', turns: -0.25 });
  }
  if (rig.closing.torqueNm < limits.closingNm[0] + FIRM_OVER_NM) {
    const turns = rig.closing.engagedTurns < limits.closingHandTurns ? 1 : 1 / 6;
    yield offer('screwClosing', { kind: 'rod.turn', turns });
    yield offer('screwClosing', { kind: 'rod.turn', turns: 1 / 12 });
  }
  const lacks = wanting(view, 'H11');
  if (lacks.has('quiet') || lacks.has('shutIn') || lacks.has('noPuff')) {
    yield* bledAndShutIn(view, lastS(view, 'closing.turned'), limits.quietS, limits.shutS);
    return;
  }
  yield offer('raiseRod', { kind: 'rod.move', lengthM: -0.5 });
}

function* provingPlug(view: DueView): Generator<Offer> {
  const lacks = wanting(view, 'H11');
  if (view.rig.saddle.on === 'coupling' && view.procedure.holds.H11 === 'open') {
    if (topKind(view) === 'rodBarrel' && (lacks.has('quiet') || lacks.has('shutIn') || lacks.has('noPuff'))) {
      if (view.rig.rod.travelM > 0) yield offer('raiseRod', { kind: 'rod.move', lengthM: -0.5 });
      yield* openValve(view);
      yield* bledAndShutIn(view, lastS(view, 'closing.turned'), view.limits.quietS, view.limits.shutS);
      return;
    }
    if (lacks.has('square')) {
      yield* toTop(view, 'sightCap');
      yield* openValve(view);
      yield* look(view, 'downBore', lastS(view, 'closing.turned'));
    }
    yield* signing(view, 'H11');
  }
  yield* rigOff(view);
  yield* takeOff(view, 'takeOff', 'splitCollar');
  yield* takeOff(view, 'takeOff', 'cupGasket');
}

/** Stage 12: prove and hand back. */
export function* handingBack(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (rig.saddle.on !== 'board' || rig.collar.collar !== null || rig.collar.gasket !== null) {
    yield* rigOff(view);
    yield* takeOff(view, 'takeOff', 'splitCollar');
    yield* takeOff(view, 'takeOff', 'cupGasket');
  }
  const watchS = Math.min(300, view.limits.leakWatchS + 5);
  for (const at of leftInGround[workOf(view.job)]) {
    const closedS = Math.max(lastS(view, 'closing.turned'), lastS(view, 'newPlug.turned'));
    const since = at === 'cutEnd' ? lastS(view, 'branch.cut') : closedS;
    yield* fluid(view, at, since, watchS);
  }
  const lacks = wanting(view, 'H12');
  for (const where of ['hole', 'beside'] as const) {
    if (!lacks.has(`air.${where}`)) continue;
    const read = latest(view.facts, 'detector.read', (f) => f.where === where);
    if (read && read.lelShare > 0 && view.clockS - read.atS < 60) yield waitFor('readInstrument', 60, 'H12');
    yield offer('readInstrument', { kind: 'detector.read', where }, 'H12');
  }
  for (const end of ['tee', 'service'] as const) {
    if (rig.site.bonded[end]) yield offer('bond', { kind: 'bond.clamp', end, clamped: false }, 'H12');
  }
  yield* task(view, 'coat');
  for (const field of recordFieldsOf(view.job)) {
    if (rig.site.record[field] === undefined) yield* write(view, field);
  }
  yield* signing(view, 'H12');
  yield* task(view, 'cover');
  yield offer('finish', { kind: 'finish' });
}

function* write(view: DueView, field: RecordField): Generator<Offer> {
  yield offer('writeRecord', { kind: 'record.write', field, value: valueFor(view, field) }, 'H12');
}

/** What was really read or done, as it is written down. */
function valueFor(view: DueView, field: RecordField): string {
  const head = (seat: string): string => {
    const read = view.facts.flatMap((f) =>
      f.fact === 'gauge.read' && f.gauge === 'head' && f.under.saddleOn === seat ? [f.readingGaugePa] : [],
    );
    return psig(Math.max(0, ...read));
  };
  switch (field) {
    case 'mainPressure':
      return psig(latest(view.facts, 'gauge.read', (f) => f.gauge === 'main')?.readingGaugePa ?? 0);
    case 'proof1':
      return head('tee');
    case 'proof2':
      return head('coupling');
    case 'testDuration':
      return minutes(view.limits.holdS);
    case 'serviceTest':
      return psig(
        latest(view.facts, 'gauge.read', (f) => f.gauge === 'test' && f.readingGaugePa > 0)?.readingGaugePa ??
          0,
      );
    case 'serviceTestDuration':
      return minutes((view.limits.renewal ?? renewalLimits).lineTestS);
    case 'gasPurge':
      return `${Math.floor((latest(view.facts, 'riser.read')?.gasShare ?? 0) * 100 + 0.5)} per cent`;
    case 'testMedium':
      return 'air';
    case 'crew':
      return 'two';
    default:
      return 'done';
  }
}

const minutes = (durationS: number): string => `${Math.floor(durationS / 60)} min`;

function psig(gaugePa: number): string {
  const tenths = Math.floor((gaugePa / PSI_PA) * 10 + 0.5);
  return `${Math.floor(tenths / 10)}.${tenths % 10} psig`;
}
