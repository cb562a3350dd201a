import { neededToRenew } from '../evidence/h01Ready.ts';
import { cradleMains, workOf, type KitKind, type SiteTask } from '../../rig/index.ts';
import { latest } from '../recall.ts';
import { ledAway } from './onStack.ts';
import { look, offer, pick, signing, task, waitFor, wanting, type DueView, type Offer } from './view.ts';

const tasks: readonly SiteTask[] = [
  'readOrder', 'traceAtMain', 'traceAtMeter', 'permit', 'ignitionCleared', 'extinguisher', 'barricade', 'ladder', 'shoring',
  'secondPerson', 'callGasControl', 'findShutoff', 'shutCustomer', 'tagCustomer', 'checkFarFeed',
]; // prettier-ignore
const kinds: readonly KitKind[] = [
  'seatRing', 'saddle', 'isolationValve', 'lowerSpool', 'upperSpool', 'sightCap', 'testHead', 'rodBarrel', 'socket',
  'stopperHolder', 'boreStopper', 'keeperPlug', 'cupGasket', 'splitCollar', 'closingPlug', 'valveCap', 'serviceCap',
]; // prettier-ignore

/** How long the hole is aired before its air is read again, s (assumed). */
const AIRING_S = 120;

/** What has been seen that no work can mend: stop and refer back. */
export function* referral(view: DueView): Generator<Offer> {
  const rating = view.job.system.ratingGaugePa;
  const main = latest(view.facts, 'gauge.read', (f) => f.gauge === 'main');
  const saw = view.facts.flatMap((f) => (f.fact === 'looked' ? [f.saw] : []));
  if (main && main.readingGaugePa > rating)
    yield offer('referBack', { kind: 'refer', reason: 'pressureAboveRating' });
  if (saw.some((s) => s.face === 'beyondUse'))
    yield offer('referBack', { kind: 'refer', reason: 'bossBeyondUse' });
  if (saw.some((s) => s.wallSound === false))
    yield offer('referBack', { kind: 'refer', reason: 'wallUnsound' });
  if (saw.some((s) => s.wrap === 'suspect'))
    yield offer('referBack', { kind: 'refer', reason: 'suspectWrap' });
}

/** Stage 1: set up. */
export function* settingUp(view: DueView): Generator<Offer> {
  for (const name of tasks) yield* task(view, name);
  yield* fitDetector(view);
  const lacks = wanting(view, 'H1');
  if (lacks.has('air')) yield* goodAir(view);
  yield* fitGauge(view);
  for (const gauge of ['main', 'second'] as const) {
    if (!view.rig.site.zeroed[gauge]) yield offer('zeroInstrument', { kind: 'gauge.zero', gauge }, 'H1');
  }
  if (lacks.has('mainPressure')) yield offer('readInstrument', { kind: 'gauge.read', gauge: 'main' }, 'H1');
  if (lacks.has('secondGauge')) yield offer('readInstrument', { kind: 'gauge.read', gauge: 'second' }, 'H1');
  for (const at of ['boss', 'coupling', 'wall', 'wrap'] as const) yield* look(view, at);
  for (const kind of kinds) yield* inspect(view, pick(view, kind));
  if (workOf(view.job) !== 'abandon')
    for (const kind of neededToRenew) yield* inspect(view, pick(view, kind));
  for (const piece of Object.values(view.rig.kit))
    if (piece.kind === 'serviceCap') yield* inspect(view, piece.id);
  for (const piece of Object.values(view.rig.kit)) if (piece.kind === 'chain') yield* inspect(view, piece.id);
  if (cradleMains.includes(view.job.workpiece.mainNps)) {
    for (const piece of Object.values(view.rig.kit)) {
      if (piece.kind === 'cradleBlock' && piece.stamped === view.job.workpiece.mainNps)
        yield* inspect(view, piece.id);
    }
  }
  yield* ledAway(view);
  for (const at of ['around', 'hose'] as const)
    if (!latest(view.facts, 'looked', (f) => f.at === at))
      yield offer('lookRound', { kind: 'look', at }, 'H1');
  yield* signing(view, 'H1');
}

/** A detector that does not show what it is shown is changed, and the other one tested. */
function* fitDetector(view: DueView): Generator<Offer> {
  const bump = latest(view.facts, 'detector.bumped');
  if (bump?.passed === true && bump.shownShare === undefined) return;
  if (bump && (view.rig.site.done.changeDetector ?? -1) < bump.atS)
    yield offer('siteTask', { kind: 'site.do', task: 'changeDetector' }, 'H1');
  yield offer('readInstrument', { kind: 'detector.bump' }, 'H1');
}

/** A gauge on the main far too coarse for what it reads is changed, and the other one zeroed. */
function* fitGauge(view: DueView): Generator<Offer> {
  const zeroed = latest(view.facts, 'gauge.zeroed', (f) => f.gauge === 'main');
  if (zeroed?.rangePa === undefined) return;
  if ((view.rig.site.done.changeGauge ?? -1) < zeroed.atS)
    yield offer('siteTask', { kind: 'site.do', task: 'changeGauge' }, 'H1');
  yield offer('zeroInstrument', { kind: 'gauge.zero', gauge: 'main' }, 'H1');
}

/** The detector read low in the hole; air that is not good is given a blower and time before it is read again. */
function* goodAir(view: DueView): Generator<Offer> {
  const bad = latest(view.facts, 'detector.read', (f) => f.where === 'hole');
  if (bad) {
    yield* task(view, 'ventilate');
    const aired = view.clockS - Math.max(bad.atS, view.rig.site.done.ventilate ?? 0);
    if (aired < AIRING_S) yield waitFor('standBy', AIRING_S - aired, 'H1');
  }
  yield offer('readInstrument', { kind: 'detector.read', where: 'hole' }, 'H1');
}

/** A piece looked over; one that was found wanting is set aside, and so the next of its kind comes up. */
function* inspect(view: DueView, id: string | null): Generator<Offer> {
  if (id === null || view.rig.kit[id].rejected) return;
  if (!view.rig.kit[id].inspected) yield offer('inspectPiece', { kind: 'piece.inspect', piece: id }, 'H1');
  const found = latest(view.facts, 'piece.inspected', (f) => f.piece === id)?.found ?? [];
  if (found.length > 0) yield offer('rejectPiece', { kind: 'piece.reject', piece: id }, 'H1');
}
