import { PSI_PA } from '../../units/index.ts';
import { latest } from '../recall.ts';
import type { ProofChamber } from '../proof.ts';
import { OPEN_RAD, SHUT_RAD, type HoldPointId, type LeakPlace } from '../../rig/index.ts';
import { lastPlacedS, openValve, QUARTER_RAD, toTop } from './onStack.ts';
import { lastS, offer, signing, waitFor, wanting, type DueView, type Offer } from './view.ts';

/** What one stroke of the hand pump adds to a litre, Pa (0.15 L at one atmosphere). */
const STROKE_PA_M3 = 15.2;
/** Aimed at above the main's reading, Pa: clear of the gauge's error, well under the limit. */
const ABOVE_MAIN_PA = 15000;
const SETTLED_GAUGE_PA = 1500;
/** How long fluid is watched at each joint, s. */
const WATCH_S = 20;
/** Reading from which a rise is watched at all, Pa gauge (one division). */
const DOWN_GAUGE_PA = PSI_PA;

/** Stages 3 and 9: a chamber proved, in the order that wastes least. */
export function* proving(view: DueView, id: HoldPointId, chamber: ProofChamber): Generator<Offer> {
  yield* toTop(view, 'testHead');
  yield* signing(view, id);
  const lacks = wanting(view, id);
  const { rig, limits } = view;
  const head =
    view.readings?.headGaugePa ??
    latest(view.facts, 'gauge.read', (f) => f.gauge === 'head')?.readingGaugePa ??
    0;
  if (!rig.site.zeroed.head) yield offer('zeroInstrument', { kind: 'gauge.zero', gauge: 'head' }, id);
  if (lacks.has('keeperMark')) yield offer('mark', { kind: 'mark', at: 'keeper' }, id);
  if (lacks.has('seatTest') && seatTestBegun(view)) {
    yield* seatTest(view, id, head);
    return;
  }
  if (lacks.has('riseBefore')) {
    yield* rise(view, id, head);
    return;
  }
  const [low, high] = limits.lowStageGaugePa;
  const target = view.facts.length === 0 ? 0 : mainReading(view) + ABOVE_MAIN_PA;
  const perStroke = STROKE_PA_M3 / chamber.wholeM3;
  if (lacks.has('lowStage')) {
    yield* shutVent(view, id);
    yield* openValve(view);
    if (head < low) yield offer('pumpLowStage', { kind: 'pump.stroke', strokes: 1 }, id);
    if (head > high) yield offer('openVent', { kind: 'vent.turn', open: 1 }, id);
    yield offer('readHead', { kind: 'gauge.read', gauge: 'head' }, id);
  }
  const places = chamber.fluidAt.filter((place) => lacks.has(`fluid.${place}`));
  const held = !['atPressure', 'held', 'settled', 'noDrop'].some((one) => lacks.has(one));
  if (!held || places.length > 0) {
    yield* shutVent(view, id);
    yield* openValve(view);
    if (head >= low && head <= high) yield* lowStageLooks(view, id, places);
    if (head < target - ABOVE_MAIN_PA / 2) {
      const strokes = Math.max(1, Math.min(10, Math.floor((target - head) / perStroke)));
      yield offer('pumpToMain', { kind: 'pump.stroke', strokes }, id);
      return;
    }
    for (const place of places) yield leakFluid(view, id, place);
    if (!held) yield* holdAtMain(view, id);
    return;
  }
  if (lacks.has('seatTest')) {
    yield* seatTest(view, id, head);
    return;
  }
  if (lacks.has('rise')) yield* rise(view, id, head);
  if (lacks.has('ventedAway')) yield offer('openVent', { kind: 'vent.turn', open: 1 }, id);
}

function mainReading(view: DueView): number {
  return (
    latest(view.facts, 'gauge.read', (f) => f.gauge === 'main')?.readingGaugePa ??
    view.job.system.orderPressureGaugePa
  );
}

function* shutVent(view: DueView, id: HoldPointId): Generator<Offer> {
  if (view.rig.testHead.ventOpen > 0) yield offer('shutVent', { kind: 'vent.turn', open: -1 }, id);
}

function leakFluid(view: DueView, id: HoldPointId, at: LeakPlace): Offer {
  const watchS = Math.max(WATCH_S, view.limits.fluidWatchS);
  return offer('leakFluid', { kind: 'leakFluid.apply', at, watchS }, id);
}

/** Fluid once at every joint at the low stage, before more pressure goes in: a coarse leak shows there already. */
function* lowStageLooks(view: DueView, id: HoldPointId, places: readonly LeakPlace[]): Generator<Offer> {
  const onS = lastPlacedS(view, 'testHead');
  for (const place of places) {
    if (!latest(view.facts, 'leak.looked', (f) => f.at === place && f.atS >= onS))
      yield leakFluid(view, id, place);
  }
}

/** Settled, read, held and read again. */
function* holdAtMain(view: DueView, id: HoldPointId): Generator<Offer> {
  const disturbedS = Math.max(lastS(view, 'pumped'), lastS(view, 'valve.turned'), lastS(view, 'vent.turned'));
  const settled = view.clockS - disturbedS;
  if (settled < view.limits.settleS) {
    yield waitFor('settle', view.limits.settleS - settled + 1, id);
    return;
  }
  const from = view.facts.find(
    (f) => f.fact === 'gauge.read' && f.gauge === 'head' && f.atS >= disturbedS + view.limits.settleS,
  );
  const held = from ? view.clockS - from.atS : 0;
  if (from && held < view.limits.holdS) yield waitFor('hold', view.limits.holdS - held + 1, id);
  yield offer('readHead', { kind: 'gauge.read', gauge: 'head' }, id);
}

/** Whether the chamber above was shut off under pressure and not yet joined and read again. */
function seatTestBegun(view: DueView): boolean {
  const shut = latest(view.facts, 'valve.turned', (f) => f.openRad <= SHUT_RAD);
  const before = latest(view.facts, 'gauge.read', (f) => f.gauge === 'head');
  if (!shut || !before || before.atS > shut.atS || lastS(view, 'pumped') > shut.atS) return false;
  return before.readingGaugePa > view.limits.lowStageGaugePa[1];
}

/** Shut under pressure, vent above to nothing, vent shut, join again, read. */
function* seatTest(view: DueView, id: HoldPointId, head: number): Generator<Offer> {
  const { rig } = view;
  if (!seatTestBegun(view)) {
    const disturbedS = Math.max(
      lastS(view, 'pumped'),
      lastS(view, 'valve.turned'),
      lastS(view, 'vent.turned'),
    );
    const readSince = latest(view.facts, 'gauge.read', (f) => f.gauge === 'head' && f.atS > disturbedS);
    if (!readSince) yield offer('readHead', { kind: 'gauge.read', gauge: 'head' }, id);
    if (rig.valve.openRad > SHUT_RAD)
      yield offer('shutValve', { kind: 'valve.turn', angleRad: -QUARTER_RAD }, id);
  }
  const shutS = latest(view.facts, 'valve.turned', (f) => f.openRad <= SHUT_RAD)?.atS ?? 0;
  const vented = latest(view.facts, 'vent.turned', (f) => f.open > 0 && f.atS >= shutS);
  if (!vented) yield offer('openVent', { kind: 'vent.turn', open: 1 }, id);
  if (rig.testHead.ventOpen > 0 && head > SETTLED_GAUGE_PA) {
    yield waitFor('openVent', 5, id);
    return;
  }
  yield* shutVent(view, id);
  if (rig.valve.openRad < OPEN_RAD)
    yield offer('openValve', { kind: 'valve.turn', angleRad: QUARTER_RAD }, id);
  yield offer('readHead', { kind: 'gauge.read', gauge: 'head' }, id);
}

/** Vented to nothing with the valve open, vent shut, read, watched, read again. */
function* rise(view: DueView, id: HoldPointId, head: number): Generator<Offer> {
  yield* openValve(view);
  const shut = latest(view.facts, 'vent.turned', (f) => f.open === 0);
  const disturbedS = Math.max(lastS(view, 'pumped'), lastS(view, 'valve.turned'), lastS(view, 'vent.turned'));
  const base = latest(view.facts, 'gauge.read', (f) => f.gauge === 'head' && f.atS > disturbedS);
  const down = head <= view.limits.risePa;
  if (view.rig.testHead.ventOpen > 0) {
    if (!down) {
      yield waitFor('openVent', 5, id);
      return;
    }
    yield* shutVent(view, id);
  }
  const fromZero = base !== null && base.readingGaugePa <= DOWN_GAUGE_PA;
  if (!shut || (!down && !fromZero)) yield offer('openVent', { kind: 'vent.turn', open: 1 }, id);
  if (!base) yield offer('readHead', { kind: 'gauge.read', gauge: 'head' }, id);
  const firstRead = view.facts.find(
    (f) => f.fact === 'gauge.read' && f.gauge === 'head' && f.atS > disturbedS,
  );
  const watched = firstRead ? view.clockS - firstRead.atS : 0;
  if (watched < view.limits.riseS) yield waitFor('watchRise', view.limits.riseS - watched + 1, id);
  if (base && base !== firstRead && base.atS - (firstRead?.atS ?? 0) >= view.limits.riseS) {
    yield offer('openVent', { kind: 'vent.turn', open: 1 }, id);
    return;
  }
  yield offer('readHead', { kind: 'gauge.read', gauge: 'head' }, id);
}
