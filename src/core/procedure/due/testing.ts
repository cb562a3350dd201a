import { PSI_PA } from '../../units/index.ts';
import { serviceTestGaugePa, workOf, type HoldPointId, type LeakPlace } from '../../rig/index.ts';
import { testOn } from '../lineTest.ts';
import { latest } from '../recall.ts';
import { renewalLimits } from '../settings.ts';
import { offer, place, signing, waitFor, wanting, type DueView, type Offer } from './view.ts';

/** Aimed at above what is asked for, Pa: clear of the gauge's own error. */
const ABOVE_PA = 2 * PSI_PA;
/** How long fluid is watched, s. */
const WATCH_S = 30;

interface Test {
  readonly id: HoldPointId;
  readonly on: 'bench' | 'line';
  readonly leastGaugePa: number;
  readonly strokes: number;
  readonly holdS: number;
  readonly fluidAt: LeakPlace;
  readonly temperature: boolean;
}

/** Stage r1: the renewal tee on its bench cap. */
export function* provingOnBench(view: DueView): Generator<Offer> {
  yield* testing(view, {
    id: 'R1',
    on: 'bench',
    leastGaugePa: latest(view.facts, 'gauge.read', (f) => f.gauge === 'main')?.readingGaugePa ?? 0,
    strokes: 1,
    holdS: view.limits.holdS,
    fluidAt: 'benchTee',
    temperature: false,
  });
}

/** Stage r3: the line alone, its main end capped. */
export function* testingLine(view: DueView): Generator<Offer> {
  const { rig } = view;
  if (rig.line.tieIn !== null) return;
  if (rig.site.marks.tee === undefined) yield offer('mark', { kind: 'mark', at: 'tee' });
  if (workOf(view.job) === 'renew') {
    if (!rig.line.laid) yield offer('layService', { kind: 'site.do', task: 'layService' });
    if (rig.line.cap === null && wanting(view, 'R3').has('atPressure'))
      yield* place(view, 'placePiece', 'serviceCap');
  }
  yield* testing(view, {
    id: 'R3',
    on: 'line',
    leastGaugePa: serviceTestGaugePa(view.job),
    strokes: 60,
    holdS: (view.limits.renewal ?? renewalLimits).lineTestS,
    fluidAt: 'lineEnds',
    temperature: true,
  });
  if (rig.testSet.on !== null) return;
  const cap = workOf(view.job) === 'renew' ? rig.line.cap : oldCap(view);
  if (cap !== null) yield offer('takeOff', { kind: 'piece.remove', piece: cap, holdBack: true });
}

/** The cap on the old line's cut end, while it is on. */
function oldCap({ rig }: DueView): string | null {
  if (!rig.branch.capped) return null;
  return Object.values(rig.kit).find((p) => p.kind === 'serviceCap' && p.where === 'rig')?.id ?? null;
}

/** Joined, zeroed, pumped, settled, read, looked at, held, read again, signed, vented and taken off. */
function* testing(view: DueView, test: Test): Generator<Offer> {
  const { rig, limits } = view;
  const { id } = test;
  if (view.procedure.holds[id] === 'open') {
    yield* signing(view, id);
    if (rig.testSet.on === null) {
      yield offer('joinTestSet', { kind: 'testSet.join', to: test.on }, id);
      return;
    }
    if (!rig.site.zeroed.test) yield offer('zeroInstrument', { kind: 'gauge.zero', gauge: 'test' }, id);
    yield* upAndHeld(view, test);
    return;
  }
  if (rig.testSet.on !== test.on) return;
  if (rig.testSet.ventOpen < 1) yield offer('openVent', { kind: 'testSet.vent', open: 1 }, id);
  const ventedS = latest(view.facts, 'testSet.vented')?.atS ?? 0;
  const read = latest(view.facts, 'gauge.read', (f) => f.gauge === 'test' && f.atS > ventedS);
  if (read === null || read.readingGaugePa > limits.puffPa) {
    if (view.clockS - Math.max(ventedS, read?.atS ?? 0) < 10) yield waitFor('openVent', 10, id);
    yield offer('readInstrument', { kind: 'gauge.read', gauge: 'test' }, id);
    return;
  }
  yield offer('joinTestSet', { kind: 'testSet.join', to: null }, id);
}

function* upAndHeld(view: DueView, test: Test): Generator<Offer> {
  const { id, leastGaugePa, strokes, holdS } = test;
  const facts = testOn(view.told, test.on) ?? [];
  const pumpedS = latest(facts, 'testSet.pumped')?.atS ?? 0;
  const pumped = latest(facts, 'testSet.pumped')?.gaugePa ?? 0;
  if (pumped < leastGaugePa + ABOVE_PA) {
    yield offer('pumpTest', { kind: 'testSet.pump', strokes }, id);
    return;
  }
  const settledS = view.clockS - pumpedS;
  if (settledS < view.limits.settleS) yield waitFor('settle', view.limits.settleS - settledS + 1, id);
  const reads = facts.flatMap((f) =>
    f.fact === 'gauge.read' && f.gauge === 'test' && f.atS > pumpedS ? [f] : [],
  );
  const temperatures = facts.filter((f) => f.fact === 'temperature.read' && f.atS > pumpedS);
  if (test.temperature && temperatures.length === 0)
    yield offer('readInstrument', { kind: 'temperature.read' }, id);
  if (reads.length === 0) yield offer('readInstrument', { kind: 'gauge.read', gauge: 'test' }, id);
  if (wanting(view, id).has('fluid')) {
    const watchS = Math.max(WATCH_S, view.limits.fluidWatchS);
    yield offer('leakFluid', { kind: 'leakFluid.apply', at: test.fluidAt, watchS }, id);
  }
  const heldS = view.clockS - (reads[0]?.atS ?? view.clockS);
  if (heldS < holdS) yield waitFor('hold', holdS - heldS + 2, id);
  if (test.temperature && temperatures.length === 1)
    yield offer('readInstrument', { kind: 'temperature.read' }, id);
  yield offer('readInstrument', { kind: 'gauge.read', gauge: 'test' }, id);
}
