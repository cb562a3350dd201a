import { workOf } from '../../rig/index.ts';
import { kindOf, latest, latestDone, stampOf } from '../recall.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';

/** Ready to open the coupling: from the last thread to the plug's seal every barrier is single, so all is to hand. */
export function readyToOpen(told: Told): readonly EvidenceItem[] {
  const { facts, limits, job } = told;
  const did = (task: string): boolean => latest(facts, 'site.done', (f) => f.task === task) !== null;
  const goesIn = workOf(job) === 'abandon' ? 'closingPlug' : 'renewalTee';
  const sealed = latestDone(
    facts,
    'sealant.apply',
    (a) => kindOf(job, a.piece) === goesIn && stampOf(job, a.piece) === job.workpiece.teeSize,
  );
  const cutS = latest(facts, 'branch.cut', (f) => f.part === 'through')?.atS ?? 0;
  const main = latest(facts, 'gauge.read', (f) => f.gauge === 'main' && f.atS >= cutS);
  const readingGaugePa = main?.readingGaugePa ?? 0;
  const ageS = main ? told.nowS - main.atS : 0;
  const lel = latest(facts, 'detector.read', (f) => f.where === 'hole' && f.atS >= cutS);
  const lelShare = lel?.lelShare ?? 0;
  return [
    item('plug', sealed !== null),
    item('spares', did('bringSpares')),
    item('twoPeople', did('secondPerson')),
    item(
      'mainPressure',
      main !== null && readingGaugePa <= job.system.ratingGaugePa && ageS <= limits.stopAgeS,
      {
        readingGaugePa,
        ratingGaugePa: job.system.ratingGaugePa,
        ageS,
      },
    ),
    item('air', lel !== null && lelShare < limits.workLelShare, {
      lelShare,
      limitLelShare: limits.workLelShare,
    }),
  ];
}
