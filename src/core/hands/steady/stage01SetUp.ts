import { cradleMains, kitKinds, type KitKind, type SiteTask } from '../../rig/index.ts';
import { act, lastOf, lookRound, readGauge, StopWork, wait, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { soundPiece } from './recover/kit.ts';

/** Depths from which a way out and protected sides are needed, m (4 ft and 5 ft: 29 CFR 1926.651(c)(2), 1926.652(a)). */
const EXIT_DEPTH_M = 1.2192;
const PROTECT_DEPTH_M = 1.524;

const before: readonly SiteTask[] = [
  'readOrder',
  'permit',
  'callGasControl',
  'findShutoff',
  'barricade',
  'ignitionCleared',
  'extinguisher',
];
const service: readonly SiteTask[] = [
  'traceAtMain',
  'traceAtMeter',
  'shutCustomer',
  'tagCustomer',
  'checkFarFeed',
];

/** Cradle blocks are looked at where the main needs them, the magnet when something has dropped. */
const used = kitKinds.filter((kind) => kind !== 'cradleBlock' && kind !== 'magnet');
/** What only a renewal uses. */
const renewing: ReadonlySet<KitKind> = new Set([
  'renewalTee',
  'newTopPlug',
  'tieIn',
  'testSet',
  'purgeRiser',
]);

/** Site, people, service, air, pressure, workpiece and kit; then the first signature. */
export function* setUp(crew: Crew): Work {
  for (const task of before) yield* act(crew, { kind: 'site.do', task });
  const { holeDepthM } = crew.order;
  if (holeDepthM >= EXIT_DEPTH_M) yield* act(crew, { kind: 'site.do', task: 'ladder' });
  if (holeDepthM >= PROTECT_DEPTH_M) yield* act(crew, { kind: 'site.do', task: 'shoring' });
  yield* act(crew, { kind: 'site.do', task: 'secondPerson' });
  yield* airTested(crew);
  for (const task of service) yield* act(crew, { kind: 'site.do', task });
  yield* pressureRead(crew);
  yield* workpieceSeen(crew);
  yield* kitInspected(crew);
  yield* act(crew, { kind: 'hose.lead', outlet: 'away' });
  yield* lookRound(crew);
  yield* act(crew, { kind: 'sign', holdPoint: 'H1' });
}

function* airTested(crew: Crew): Work {
  if (!(yield* bumped(crew))) {
    yield* act(crew, { kind: 'site.do', task: 'changeDetector' });
    if (!(yield* bumped(crew))) throw new StopWork('kitUnfit');
  }
  yield* airGood(crew);
}

/** Shown the test gas: it must pass, and show what it is shown. */
function* bumped(crew: Crew): Work<boolean> {
  const bump = lastOf(yield* act(crew, { kind: 'detector.bump' }), 'detector.bumped');
  return bump?.passed === true && bump.shownShare === undefined;
}

/** Detector read low in the hole. Gas or too little oxygen: out, a blower set, and tested again before anybody works. */
export function* airGood(crew: Crew): Work {
  const { workLelShare, oxygenShare } = crew.order.limits;
  for (let tries = 0; tries < AIR_TRIES_MOST; tries += 1) {
    const facts = yield* act(crew, { kind: 'detector.read', where: 'hole' });
    const air = lastOf(facts, 'detector.read');
    if (air === null) throw new StopWork('other');
    const good =
      air.lelShare < workLelShare && air.oxygenShare >= oxygenShare[0] && air.oxygenShare <= oxygenShare[1];
    if (good) return;
    if (crew.view.rig.done.ventilate === undefined) {
      yield* act(crew, { kind: 'leaveHole' });
      yield* act(crew, { kind: 'site.do', task: 'ventilate' });
    }
    yield* wait(crew, AIRING_S);
  }
  throw new StopWork('gasInHole');
}

/** The hole is aired so long before it is tested again, s, and so often before it is given up. */
const AIRING_S = 120;
const AIR_TRIES_MOST = 4;

function* pressureRead(crew: Crew): Work {
  const { ratingGaugePa, orderPressureGaugePa, limits } = crew.order;
  const zeroed = lastOf(yield* act(crew, { kind: 'gauge.zero', gauge: 'main' }), 'gauge.zeroed');
  if (zeroed?.rangePa !== undefined) {
    yield* act(crew, { kind: 'site.do', task: 'changeGauge' });
    yield* act(crew, { kind: 'gauge.zero', gauge: 'main' });
  }
  yield* act(crew, { kind: 'gauge.zero', gauge: 'second' });
  const main = yield* readGauge(crew, 'main');
  const second = yield* readGauge(crew, 'second');
  if (Math.max(main, second) > ratingGaugePa) throw new StopWork('pressureAboveRating');
  if (Math.abs(main - second) > limits.secondGaugePa) throw new StopWork('other');
  if (Math.abs(main - orderPressureGaugePa) > limits.orderShare * orderPressureGaugePa)
    throw new StopWork('outOfRange');
}

function* workpieceSeen(crew: Crew): Work {
  const wrap = yield* seen(crew, 'wrap');
  if (wrap.wrap === 'suspect') throw new StopWork('suspectWrap');
  const wall = yield* seen(crew, 'wall');
  if (wall.wallSound === false) throw new StopWork('wallUnsound');
  yield* seen(crew, 'coupling');
  yield* bossFit(crew);
}

/** The boss looked at; beyond use is a stop. */
export function* bossFit(crew: Crew): Work {
  const boss = yield* seen(crew, 'boss');
  if (boss.face === 'beyondUse') throw new StopWork('bossBeyondUse');
}

function* seen(crew: Crew, at: 'boss' | 'coupling' | 'wall' | 'wrap') {
  const facts = yield* act(crew, { kind: 'look', at });
  const looked = lastOf(facts, 'looked');
  if (looked === null || !looked.saw.visible) throw new StopWork('other');
  return looked.saw;
}

/** Every piece that will be used, looked over; a doubtful one is set aside and the next of its kind taken. */
function* kitInspected(crew: Crew): Work {
  for (const kind of used)
    if (crew.order.work !== 'abandon' || !renewing.has(kind)) yield* soundPiece(crew, kind);
  if (crew.order.work === 'renew') yield* soundPiece(crew, 'serviceCap', 1);
  yield* soundPiece(crew, 'chain', 1);
  yield* soundPiece(crew, 'closingPlug', 1);
  if (!cradleMains.includes(crew.order.mainNps)) return;
  yield* soundPiece(crew, 'cradleBlock');
  yield* soundPiece(crew, 'cradleBlock', 1);
}
