import { openings, type Opening } from '../bleeding.ts';
import { latest } from '../recall.ts';
import { OPEN_RAD, SHUT_RAD, type KitKind } from '../../rig/index.ts';
import { fluid, lastS, offer, pick, place, waitFor, type DueView, type Offer } from './view.ts';

export const QUARTER_RAD = Math.PI / 2;
/** How long a bleed stays shut to see whether pressure comes back before a piece is taken off, s. */
const LOOK_AGAIN_S = 30;
const closers: ReadonlySet<KitKind> = new Set(['testHead', 'sightCap', 'rodBarrel', 'valveCap']);

/** The piece that closes the stack, or null. */
export function topKind(view: DueView): KitKind | null {
  const last = view.rig.stack[view.rig.stack.length - 1];
  return last && closers.has(last.kind) ? last.kind : null;
}

export function* openValve(view: DueView): Generator<Offer> {
  const { openRad } = view.rig.valve;
  if (openRad >= OPEN_RAD) return;
  const stepRad = openRad === 0 ? 0.1 : openRad < 0.3 ? 0.4 : QUARTER_RAD;
  yield offer('openValve', { kind: 'valve.turn', angleRad: stepRad });
}

export function* shutValve(view: DueView): Generator<Offer> {
  if (view.rig.valve.openRad > SHUT_RAD)
    yield offer('shutValve', { kind: 'valve.turn', angleRad: -QUARTER_RAD });
}

/** What stands on top comes off safely: rod up, valve shut, bled quiet, shut, waited, opened without a puff. */
export function* topOff(view: DueView): Generator<Offer> {
  const top = topKind(view);
  if (top === null) return;
  if (top === 'testHead') yield* ventHead(view);
  if (top === 'rodBarrel') {
    if (view.rig.rod.travelM > 0) yield offer('raiseRod', { kind: 'rod.move', lengthM: -0.5 });
    yield* shutValve(view);
    yield* bledQuiet(view, 2);
  }
  if (top === 'sightCap') {
    yield* shutValve(view);
    yield* bledQuiet(view, 1);
  }
  const last = view.rig.stack[view.rig.stack.length - 1];
  yield offer('takeOff', { kind: 'piece.remove', piece: last.id, holdBack: true });
}

function* ventHead(view: DueView): Generator<Offer> {
  if (view.rig.testHead.ventOpen < 1) yield offer('openVent', { kind: 'vent.turn', open: 1 });
  if ((view.readings?.headGaugePa ?? 0) > view.limits.puffPa) yield waitFor('openVent', 5);
}

/** A puff on a low main may be over before an ear has it: then somebody has to listen whether the bleed is quiet. */
const LISTEN_AFTER_S = 20;

function* waitingForQuiet(view: DueView, last: Opening | undefined): Generator<Offer> {
  if (
    last &&
    view.clockS - last.openedS > LISTEN_AFTER_S &&
    view.clockS - lastS(view, 'listened') > LISTEN_AFTER_S
  )
    yield offer('waitQuiet', { kind: 'listen' });
  yield waitFor('waitQuiet', 5);
}

/** The bleed over the shut valve, opened until it has been quiet so many times, with a wait shut in between. */
function* bledQuiet(view: DueView, times: number): Generator<Offer> {
  const fromS = Math.max(lastS(view, 'valve.turned'), lastS(view, 'piece.placed'));
  const over = openings(view.told).filter((o) => o.openedS >= fromS && o.valve === 'shut');
  const last = over[over.length - 1];
  yield* ledAway(view);
  if (view.rig.bleed.openRad > 0) {
    if (!last || last.quietFromS === null) {
      yield* waitingForQuiet(view, last);
      return;
    }
    if (over.length < times || (times > 1 && last.puff))
      yield offer('shutBleed', { kind: 'bleed.turn', angleRad: -QUARTER_RAD });
    return;
  }
  const shutS = view.clockS - lastS(view, 'bleed.turned');
  if (last && over.length < times && shutS < LOOK_AGAIN_S) yield waitFor('waitShutIn', LOOK_AGAIN_S - shutS);
  if (over.length < times || (times > 1 && last && last.puff))
    yield offer('openBleed', { kind: 'bleed.turn', angleRad: QUARTER_RAD });
}

export function* ledAway(view: DueView): Generator<Offer> {
  if (view.rig.hose !== 'away') yield offer('leadHose', { kind: 'hose.lead', outlet: 'away' });
}

/** Brings a closing piece onto the stack; whatever else is there comes off first. */
export function* toTop(view: DueView, kind: 'testHead' | 'sightCap' | 'valveCap'): Generator<Offer> {
  const top = topKind(view);
  if (top === kind) return;
  if (top !== null) {
    yield* topOff(view);
    return;
  }
  yield* shutValve(view);
  yield* place(view, 'placePiece', kind);
}

/** Down with the rod until it takes hold; where it will not reach, everything comes off again, spool too. */
export function* lowerOrLift(view: DueView): Generator<Offer> {
  yield offer('lowerRod', { kind: 'rod.move', lengthM: 0.5 });
  yield* topOff(view);
}

/** The rod's tip and load as they must be, barrel on, rod in hand, valve eased open, the new joint looked at. */
export function* underRod(
  view: DueView,
  tip: 'socket' | 'stopperHolder',
  load: { readonly kind: KitKind; readonly name: string } | null,
): Generator<Offer> {
  const { rod, kit } = view.rig;
  const tipKind = rod.tip === null ? null : kit[rod.tip].kind;
  const right = tipKind === tip && rod.load === (load?.name ?? null);
  if (topKind(view) !== null && (topKind(view) !== 'rodBarrel' || !right)) {
    yield* topOff(view);
    return;
  }
  if (topKind(view) === null) {
    yield* shutValve(view);
    if (!right) yield* dressRod(view, tip, load?.kind ?? null);
    yield* place(view, 'placePiece', 'rodBarrel');
    yield* place(view, 'placePiece', 'upperSpool');
    return;
  }
  yield* ledAway(view);
  if (view.rig.bleed.openRad > 0 && view.rig.valve.openRad <= SHUT_RAD) {
    yield offer('shutBleed', { kind: 'bleed.turn', angleRad: -QUARTER_RAD });
  }
  if (!rod.held) yield offer('holdRod', { kind: 'rod.hold', held: true });
  yield* openValve(view);
  yield* fluid(view, 'topJoint', lastPlacedS(view, 'rodBarrel'), 15);
}

function* dressRod(view: DueView, tip: KitKind, load: KitKind | null): Generator<Offer> {
  if (view.rig.rod.load !== null) yield offer('loadRod', { kind: 'rod.load', piece: null });
  yield* fitTip(view, tip);
  const piece = load === null ? null : pick(view, load);
  if (piece !== null) yield offer('loadRod', { kind: 'rod.load', piece });
}

/** Offers the tip of a kind where another, or none, is on the rod. */
export function* fitTip(view: DueView, tip: KitKind): Generator<Offer> {
  const { rod, kit } = view.rig;
  const fitted = rod.tip === null ? null : kit[rod.tip];
  const piece = pick(view, tip);
  if (fitted?.kind !== tip && piece !== null) yield offer('fitTip', { kind: 'rod.fit', tip: piece });
}

export function lastPlacedS(view: DueView, kind: KitKind): number {
  return latest(view.facts, 'piece.placed', (f) => view.rig.kit[f.piece]?.kind === kind)?.atS ?? 0;
}

/** With the valve open: bleed open until quiet so long, shut so long, opened again; for what lies below. */
export function* bledAndShutIn(
  view: DueView,
  sinceS: number,
  quietS: number,
  shutS: number,
): Generator<Offer> {
  const heard = openings(view.told).filter((o) => o.openedS >= sinceS && o.valve === 'open');
  const last = heard[heard.length - 1];
  yield* ledAway(view);
  if (view.rig.bleed.openRad > 0) {
    const quiet = last && last.quietFromS !== null ? view.clockS - last.quietFromS : 0;
    if (last?.quietFromS === null) yield* waitingForQuiet(view, last);
    else if (quiet < quietS) yield waitFor('waitQuiet', quietS - quiet);
    yield offer('shutBleed', { kind: 'bleed.turn', angleRad: -QUARTER_RAD });
    return;
  }
  const shutForS = view.clockS - lastS(view, 'bleed.turned');
  if (last && shutForS < shutS) yield waitFor('waitShutIn', shutS - shutForS);
  yield offer('openBleed', { kind: 'bleed.turn', angleRad: QUARTER_RAD });
}
