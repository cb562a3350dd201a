import { openings, quietFor, type Opening } from './bleeding.ts';
import { item, type EvidenceItem, type Told } from './told.ts';

/** With the valve open since a time: the bleed quiet, shut in, and opened again without a puff. */
export function shownTight(told: Told, fromS: number | null): readonly EvidenceItem[] {
  const { limits } = told;
  const heard = fromS === null ? [] : openings(told).filter((o) => o.openedS >= fromS && o.valve === 'open');
  const quiet = heard.find((o) => quietFor(o) >= limits.quietS) ?? null;
  const later: readonly Opening[] = quiet ? heard.filter((o) => o.openedS > quiet.openedS) : [];
  const reopened = later.filter((o) => o.shutForS >= limits.shutS).at(-1) ?? later.at(-1) ?? null;
  const shutS = reopened?.shutForS ?? 0;
  return [
    item('quiet', quiet !== null, { quietS: quiet ? quietFor(quiet) : 0, limitS: limits.quietS }),
    item('shutIn', reopened !== null && shutS >= limits.shutS, { shutS, limitS: limits.shutS }),
    item('noPuff', reopened !== null && !reopened.puff, { aboveGaugePa: reopened?.aboveGaugePa ?? 0 }),
  ];
}
