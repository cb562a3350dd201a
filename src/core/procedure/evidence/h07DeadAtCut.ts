import { openings, quietFor } from '../bleeding.ts';
import { latest, latestDone, since } from '../recall.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';
import { stopOf } from './h04ServiceStopped.ts';

/** Dead at the cut: the right service, bonded, freshly stopped, and no flow at the pilot opening. */
export function deadAtCut(told: Told): readonly EvidenceItem[] {
  const { facts, limits } = told;
  const did = (task: string): boolean => latest(facts, 'site.done', (f) => f.task === task) !== null;
  const pilot = latest(facts, 'branch.cut', (f) => f.part === 'pilot');
  const watch = pilot ? noFlow(told, pilot.atS) : { watchedS: 0, quiet: false };
  const lel = latest(facts, 'detector.read');
  const provedS = lastProvedS(told);
  const ageS = provedS === null ? 0 : told.nowS - provedS;
  const lelShare = lel?.lelShare ?? 0;
  return [
    item('traced', did('traceAtMain') && did('traceAtMeter')),
    item('bonded', bonded(told, 'tee') && bonded(told, 'service')),
    item('stopFresh', provedS !== null && ageS <= limits.stopAgeS, { ageS, limitS: limits.stopAgeS }),
    item('noFlow', pilot !== null && watch.quiet && watch.watchedS >= limits.noFlowS, {
      watchedS: watch.watchedS,
      limitS: limits.noFlowS,
    }),
    item('air', lel !== null && pilot !== null && lel.atS >= pilot.atS && lelShare < limits.workLelShare, {
      lelShare,
      limitLelShare: limits.workLelShare,
    }),
  ];
}

function bonded(told: Told, end: 'tee' | 'service'): boolean {
  return latestDone(told.facts, 'bond.clamp', (a) => a.end === end)?.action.clamped === true;
}

/** When the stop was last seen to hold: the reopening without a puff, or the quiet minute before the keeper, s. */
function lastProvedS(told: Told): number | null {
  const { reopened } = stopOf(told);
  if (!reopened || reopened.puff) return null;
  const leftS = latest(told.facts, 'stopper.left')?.atS ?? told.nowS;
  const keeperS = since(told.facts, leftS).find((f) => f.fact === 'keeper.turned')?.atS ?? told.nowS;
  const later = openings(told).filter(
    (o) =>
      o.openedS > leftS && o.openedS < keeperS && o.valve === 'open' && quietFor(o) >= told.limits.lookQuietS,
  );
  return later[later.length - 1]?.untilS ?? reopened.openedS;
}

/** Hands need so long to drill the pilot, s; the cut is told when they begin (assumed, as the rig's own hands). */
export const PILOT_DRILLED_S = 60;

/** Standing by the pilot opening from when it is through: listened or read the detector there, without a sound of gas. */
function noFlow(told: Told, pilotS: number): { readonly watchedS: number; readonly quiet: boolean } {
  const throughS = pilotS + PILOT_DRILLED_S;
  let watchedS = 0;
  let quiet = true;
  for (const f of since(told.facts, pilotS)) {
    if (f.fact === 'branch.cut') break;
    if (f.fact === 'listened') {
      watchedS = f.atS - throughS;
      quiet &&= !f.heard;
    }
    if (f.fact === 'detector.read' && f.where !== 'beside') {
      watchedS = f.atS - throughS;
      quiet &&= f.lelShare < told.limits.workLelShare;
    }
    if (f.fact === 'blow.began') quiet = false;
  }
  return { watchedS, quiet };
}
