import { cradleMains, workOf, type KitKind } from '../../rig/index.ts';
import { every, kindOf, latest, latestDone, stampOf } from '../recall.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';

/** Depth from which a ladder or ramp must stand within reach, m (4 ft, 29 CFR 1926.651(c)(2)). */
export const EXIT_DEPTH_M = 1.2192;
/** Depth from which the sides are protected, m (5 ft, 29 CFR 1926.652(a)). */
export const PROTECT_DEPTH_M = 1.524;

/** Kinds the job puts into the rig whatever the size; two chains. */
const needed: readonly KitKind[] = [
  'seatRing', 'saddle', 'chain', 'isolationValve', 'lowerSpool', 'upperSpool', 'sightCap', 'testHead', 'rodBarrel',
  'socket', 'stopperHolder', 'boreStopper', 'keeperPlug', 'cupGasket', 'splitCollar', 'closingPlug',
]; // prettier-ignore

/** What a renewal puts in besides. */
export const neededToRenew: readonly KitKind[] = [
  'renewalTee',
  'newTopPlug',
  'tieIn',
  'testSet',
  'purgeRiser',
];

/** Ready to put the first wrench on: the right pressure, a sound boss, a dead customer, air, exits, people and kit. */
export function ready(told: Told): readonly EvidenceItem[] {
  const { facts, job } = told;
  const did = (task: string): boolean => latest(facts, 'site.done', (f) => f.task === task) !== null;
  const saw = (at: string): boolean => latest(facts, 'looked', (f) => f.at === at && f.saw.visible) !== null;
  const boss = latest(facts, 'looked', (f) => f.at === 'boss');
  const wall = latest(facts, 'looked', (f) => f.at === 'wall');
  const wrap = latest(facts, 'looked', (f) => f.at === 'wrap');
  const outlet = latestDone(facts, 'hose.lead')?.action.outlet ?? 'none';
  const depthM = job.site.holeDepthM;
  const kit = uninspected(told);
  return [
    item('order', did('readOrder') && did('traceAtMain') && did('traceAtMeter')),
    mainPressure(told),
    secondGauge(told),
    item('supply', did('shutCustomer') && did('tagCustomer') && did('checkFarFeed')),
    item('boss', boss !== null && boss.saw.face !== 'beyondUse'),
    item('coupling', saw('coupling')),
    item('wall', wall !== null && wall.saw.wallSound !== false),
    item('wrap', wrap !== null && wrap.saw.wrap !== 'suspect'),
    item('bump', latest(facts, 'detector.bumped')?.passed === true),
    air(told),
    item('ignition', did('ignitionCleared')),
    item('extinguisher', did('extinguisher')),
    item('exit', depthM < EXIT_DEPTH_M || did('ladder'), { depthM, fromM: EXIT_DEPTH_M }),
    item('protection', depthM < PROTECT_DEPTH_M || did('shoring'), { depthM, fromM: PROTECT_DEPTH_M }),
    item('hose', outlet === 'away'),
    item('shutoff', did('findShutoff')),
    item('contact', did('callGasControl')),
    item('kit', kit === 0, { uninspectedPieces: kit }),
  ];
}

function mainPressure({ facts, limits, job }: Told): EvidenceItem {
  const { ratingGaugePa, orderPressureGaugePa } = job.system;
  const read = latest(facts, 'gauge.read', (f) => f.gauge === 'main' && f.zeroed);
  const readingGaugePa = read?.readingGaugePa ?? 0;
  const near = Math.abs(readingGaugePa - orderPressureGaugePa) <= limits.orderShare * orderPressureGaugePa;
  return item('mainPressure', read !== null && readingGaugePa <= ratingGaugePa && near, {
    readingGaugePa,
    ratingGaugePa,
    orderPressureGaugePa,
  });
}

function secondGauge({ facts, limits }: Told): EvidenceItem {
  const main = latest(facts, 'gauge.read', (f) => f.gauge === 'main');
  const second = latest(facts, 'gauge.read', (f) => f.gauge === 'second' && f.zeroed);
  const apartPa = main && second ? Math.abs(main.readingGaugePa - second.readingGaugePa) : 0;
  return item('secondGauge', main !== null && second !== null && apartPa <= limits.secondGaugePa, {
    apartPa,
    limitPa: limits.secondGaugePa,
  });
}

function air({ facts, limits }: Told): EvidenceItem {
  const read = latest(facts, 'detector.read', (f) => f.where === 'hole');
  const [low, high] = limits.oxygenShare;
  const lelShare = read?.lelShare ?? 0;
  const oxygenShare = read?.oxygenShare ?? 0;
  const good = lelShare < limits.workLelShare && oxygenShare >= low && oxygenShare <= high;
  return item('air', read !== null && good, { lelShare, oxygenShare, limitLelShare: limits.workLelShare });
}

/** How many pieces the job needs that nobody has looked over, of the right stamp where they carry one. */
function uninspected({ facts, job }: Told): number {
  const { mainNps, teeSize } = job.workpiece;
  const seen = new Set(every(facts, 'piece.inspected').map((f) => f.piece));
  const count = (kind: KitKind, stamp: string): number => {
    let n = 0;
    for (const id of seen) {
      const stamped = stampOf(job, id);
      if (kindOf(job, id) === kind && (stamped === null || stamped === stamp)) n += 1;
    }
    return n;
  };
  let missing = 0;
  const kinds = workOf(job) === 'abandon' ? needed : [...needed, ...neededToRenew];
  for (const kind of kinds)
    missing += Math.max(
      0,
      (kind === 'chain' ? 2 : 1) - count(kind, kind === 'tieIn' ? job.system.service.nps : teeSize),
    );
  if (cradleMains.includes(mainNps)) missing += Math.max(0, 2 - count('cradleBlock', mainNps));
  return missing;
}
