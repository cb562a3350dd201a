import { recordFields, type LeakPlace, type RecordField } from '../../rig/index.ts';
import { latest, latestDone } from '../recall.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';
import { purgedOrSmall, recordTrue } from '../recordTruth.ts';
import { serviceCapped } from './h08TeeFits.ts';

/** Handed back: tight at the main's pressure, disconnected, purged, sealed, coated, and written down as it was read. */
export function handedBack(told: Told): readonly EvidenceItem[] {
  const { facts } = told;
  const did = (task: string): boolean => latest(facts, 'site.done', (f) => f.task === task) !== null;
  const written = (field: RecordField): string =>
    latest(facts, 'record.written', (f) => f.field === field)?.value ?? '';
  const untrue = recordFields.filter((field) => !recordTrue(told, field, written(field))).length;
  const closed = latest(facts, 'closing.turned') !== null;
  const bondOff = (['tee', 'service'] as const).every(
    (end) => latestDone(facts, 'bond.clamp', (a) => a.end === end)?.action.clamped !== true,
  );
  return [
    fluid(told, 'closingPlug'),
    fluid(told, 'weld'),
    fluid(told, 'cutEnd'),
    zero(told, 'hole'),
    zero(told, 'beside'),
    item('disconnected', latest(facts, 'branch.cut', (f) => f.part === 'through') !== null && teeOut(told)),
    item('purged', purgedOrSmall(told)),
    item('sealed', closed && serviceCapped(told)),
    item('coated', did('coat')),
    item('bondOff', bondOff),
    item('record', untrue === 0, { fieldsMissingOrUntrue: untrue }),
  ];
}

function teeOut(told: Told): boolean {
  return latest(told.facts, 'tee.free') !== null;
}

/** Leak fluid after the coupling was closed, watched long enough, at the main's pressure where the main stands behind. */
function fluid(told: Told, at: LeakPlace): EvidenceItem {
  const { facts, limits } = told;
  const closedS = latest(facts, 'closing.turned')?.atS ?? told.nowS;
  const look = latest(facts, 'leak.looked', (f) => f.at === at && (at === 'cutEnd' || f.atS >= closedS));
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
  const closedS = latest(told.facts, 'closing.turned')?.atS ?? told.nowS;
  const read = latest(told.facts, 'detector.read', (f) => f.where === where && f.atS >= closedS);
  const lelShare = read?.lelShare ?? 1;
  return item(`air.${where}`, read !== null && lelShare < ZERO_LEL_SHARE, { lelShare });
}
