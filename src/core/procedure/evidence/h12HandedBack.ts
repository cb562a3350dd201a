import { recordFieldsOf, workOf, type LeakPlace, type RecordField, type Work } from '../../rig/index.ts';
import { lastTelling } from '../leakFluid.ts';
import { every, kindOf, latest, latestDone } from '../recall.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';
import { purgedOrSmall, recordTrue } from '../recordTruth.ts';
import { serviceCapped } from './h08TeeFits.ts';

/** Handed back: tight at the main's pressure, disconnected, purged, sealed, coated, and written down as it was read. */
export function handedBack(told: Told): readonly EvidenceItem[] {
  const { facts } = told;
  const did = (task: string): boolean => latest(facts, 'site.done', (f) => f.task === task) !== null;
  const written = (field: RecordField): string =>
    latest(facts, 'record.written', (f) => f.field === field)?.value ?? '';
  const fields = recordFieldsOf(told.job);
  const untrue = fields.filter((field) => !recordTrue(told, field, written(field))).length;
  const bondOff = (['tee', 'service'] as const).every(
    (end) => latestDone(facts, 'bond.clamp', (a) => a.end === end)?.action.clamped !== true,
  );
  return [
    ...fluids(told),
    zero(told, 'hole'),
    zero(told, 'beside'),
    ...endState(told),
    item('coated', did('coat') && !rigLeftOn(told)),
    item('bondOff', bondOff),
    item('record', untrue === 0, { fieldsMissingOrUntrue: untrue }),
  ];
}

/** Every joint that stays in the ground and was made or disturbed. */
export const leftInGround: Readonly<Record<Work, readonly LeakPlace[]>> = {
  abandon: ['closingPlug', 'weld', 'cutEnd'],
  renew: ['newPlug', 'teeThread', 'tieIn', 'weld', 'cutEnd'],
  reconnect: ['newPlug', 'teeThread', 'tieIn', 'weld'],
};

function fluids(told: Told): readonly EvidenceItem[] {
  return leftInGround[workOf(told.job)].map((at) => fluid(told, at));
}

/** The old service abandoned (49 CFR 192.727(b)), or the customer on gas again, or both. */
function endState(told: Told): readonly EvidenceItem[] {
  const { facts } = told;
  const work = workOf(told.job);
  const cut = latest(facts, 'branch.cut', (f) => f.part === 'through') !== null;
  const closed = work === 'renew' || latest(facts, 'closing.turned') !== null;
  const abandoned = [
    item('disconnected', cut && teeOut(told)),
    item('purged', purgedOrSmall(told)),
    item('sealed', closed && serviceCapped(told)),
  ];
  const relit = item('relit', latest(facts, 'site.done', (f) => f.task === 'relight') !== null);
  return work === 'abandon' ? abandoned : work === 'renew' ? [...abandoned, relit] : [relit];
}

function teeOut(told: Told): boolean {
  return latest(told.facts, 'tee.free') !== null;
}

/** Rubber or collar of the rig still round tee or coupling: coated over, it keeps the wet on the steel. */
function rigLeftOn({ facts, job }: Told): boolean {
  const on = new Set<string>();
  for (const f of facts) {
    if (f.fact === 'piece.removed') on.delete(f.piece);
    if (
      f.fact === 'piece.placed' &&
      ['seatRing', 'cupGasket', 'splitCollar'].includes(kindOf(job, f.piece) ?? '')
    )
      on.add(f.piece);
  }
  return on.size > 0;
}

/** When the last plug went in: the closing plug, or the new tee's own, s. */
function closedAtS({ facts, nowS }: Told): number {
  return (latest(facts, 'newPlug.turned') ?? latest(facts, 'closing.turned'))?.atS ?? nowS;
}

/** Leak fluid after the coupling was closed, watched long enough, at the main's pressure where the main stands behind. */
function fluid(told: Told, at: LeakPlace): EvidenceItem {
  const { facts, limits } = told;
  const closedS = closedAtS(told);
  const look = lastTelling(
    every(facts, 'leak.looked', (f) => f.at === at && (at === 'cutEnd' || f.atS >= closedS)),
    (one) => one.watchS >= limits.leakWatchS,
  );
  const main = latest(facts, 'gauge.read', (f) => f.gauge === 'main')?.readingGaugePa ?? 0;
  const pressureGaugePa = look?.pressureGaugePa ?? 0;
  const enough = at === 'cutEnd' || pressureGaugePa >= main - limits.secondGaugePa;
  return item(
    `fluid.${at}`,
    look !== null && look.bubbles === 'none' && look.watchS >= limits.leakWatchS && enough,
    { watchS: look?.watchS ?? 0, limitS: limits.leakWatchS, pressureGaugePa },
  );
}

/** One step of the detector's display counts as zero, share of the lower explosive limit. */
const ZERO_LEL_SHARE = 0.01;

function zero(told: Told, where: 'hole' | 'beside'): EvidenceItem {
  const closedS = closedAtS(told);
  const read = latest(told.facts, 'detector.read', (f) => f.where === where && f.atS >= closedS);
  const lelShare = read?.lelShare ?? 1;
  return item(`air.${where}`, read !== null && lelShare < ZERO_LEL_SHARE, { lelShare });
}
