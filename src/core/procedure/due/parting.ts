import { latest } from '../recall.ts';
import { secondChamber } from '../proof.ts';
import { PILOT_DRILLED_S } from '../evidence/h07DeadAtCut.ts';
import { chains } from './seating.ts';
import { proving } from './proving.ts';
import { topKind } from './onStack.ts';
import {
  fluid,
  lastS,
  look,
  offer,
  place,
  signing,
  task,
  waitFor,
  wanting,
  type DueView,
  type Offer,
} from './view.ts';

const BITE_TURNS = 1 / 12;
const SNUG_TURNS = 0.01;
/** Turns each collar bolt is drawn past snug. */
const BOLT_TURNS = 1;

/** Stage 8: part the service. */
export function* partingService(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (rig.branch.cut !== 'through') {
    yield* task(view, 'traceAtMain');
    yield* task(view, 'traceAtMeter');
    yield* task(view, 'supportPipe');
    yield* task(view, 'measureVolts');
    for (const end of ['tee', 'service'] as const) {
      if (!rig.site.bonded[end]) yield offer('bond', { kind: 'bond.clamp', end, clamped: true }, 'H7');
    }
    if (rig.branch.cut === 'whole') yield offer('cutPilot', { kind: 'branch.cut', part: 'pilot' }, 'H7');
    yield* watchingPilot(view);
    yield* signing(view, 'H7');
    yield offer('cutThrough', { kind: 'branch.cut', part: 'through' });
    return;
  }
  if (rig.tee.trim === 'whole') yield offer('trimTee', { kind: 'tee.trim', how: 'saw' });
  if (rig.tee.trim === 'sawn') yield offer('trimTee', { kind: 'tee.trim', how: 'dress' });
  if (!rig.tee.filed) yield offer('trimTee', { kind: 'tee.trim', how: 'file' });
  const lacks = wanting(view, 'H8');
  if (lacks.has('gaugeRing')) yield offer('trimTee', { kind: 'gaugeRing.try' }, 'H8');
  if (!rig.branch.purged) yield offer('purge', { kind: 'service.purge' });
  if (!rig.branch.capped) yield* place(view, 'placePiece', 'serviceCap');
  yield* task(view, 'bringRig');
  yield* task(view, 'bringSpares');
}

function* watchingPilot(view: DueView): Generator<Offer> {
  const lacks = wanting(view, 'H7');
  const pilot = latest(view.facts, 'branch.cut', (f) => f.part === 'pilot');
  if (!pilot) return;
  const watchedS = view.clockS - pilot.atS - PILOT_DRILLED_S;
  if (lacks.has('noFlow')) {
    if (watchedS < view.limits.noFlowS) yield waitFor('watchPilot', view.limits.noFlowS - watchedS + 1, 'H7');
    yield offer('watchPilot', { kind: 'listen' }, 'H7');
  }
  if (lacks.has('air')) yield offer('readInstrument', { kind: 'detector.read', where: 'hole' }, 'H7');
}

/** Stage 9: seal on the coupling. */
export function* sealingOnCoupling(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (rig.saddle.on === 'board') {
    yield* teeReady(view);
    if (rig.collar.gasket === null) yield* place(view, 'placePiece', 'cupGasket');
    if (rig.collar.collar === null) yield* place(view, 'placePiece', 'splitCollar');
    yield* bolts(view);
    yield* place(view, 'placePiece', 'saddle');
  }
  yield* chains(view);
  const has = (kind: string): boolean => rig.stack.some((p) => p.kind === kind);
  if (!has('isolationValve') && !has('lowerSpool')) yield* place(view, 'placePiece', 'lowerSpool');
  if (!has('isolationValve')) yield* place(view, 'placePiece', 'isolationValve');
  if (!has('upperSpool') && topKind(view) === null) yield* place(view, 'placePiece', 'upperSpool');
  yield* proving(view, 'H9', secondChamber(view.job.workpiece.teeSize));
}

/** Bare even metal, a hold point, and the tee's bite broken and snugged before anything hides it. */
function* teeReady(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (rig.collar.gasket !== null) return;
  if (!rig.site.cleaned.coupling) yield offer('clean', { kind: 'clean', at: 'coupling' });
  yield* look(view, 'gasketSeat', lastS(view, 'branch.cut'));
  yield* signing(view, 'H8');
  if (rig.site.marks.tee === undefined) yield offer('mark', { kind: 'mark', at: 'tee' });
  if (!rig.tee.broken) yield offer('breakTeeBite', { kind: 'tee.turn', turns: -BITE_TURNS, holdBack: true });
  if (rig.tee.turnsBack > SNUG_TURNS) {
    yield offer('snugTee', { kind: 'tee.turn', turns: Math.min(1, rig.tee.turnsBack), holdBack: true });
  }
  for (const at of ['teeThread', 'weld'] as const) yield* fluid(view, at, lastS(view, 'tee.turned'), 30);
}

function* bolts(view: DueView): Generator<Offer> {
  const [left, right] = view.rig.collar.bolts;
  const bolt = left <= right ? 0 : 1;
  if (Math.min(left, right) < BOLT_TURNS)
    yield offer('drawUpBolts', { kind: 'collarBolt.turn', bolt, turns: 0.25 });
}
