import { PSI_PA } from '../../units/index.ts';
import type { LeakPlace } from '../../rig/index.ts';
import { every, latest } from '../recall.ts';
import { renewalLimits } from '../settings.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';

/**
 * Purged, and tight with gas: the tie-in and the plug were in no test but this one (49 CFR 192.503(d)); the air is
 * driven out in one continuous flow (192.629) to an outdoor riser until what leaves it is gas.
 */
export function purged(told: Told): readonly EvidenceItem[] {
  const { facts } = told;
  const flow = purgeOf(told);
  const set = told.limits.renewal ?? renewalLimits;
  return [
    tightWithGas(told, 'tieIn'),
    tightWithGas(told, 'newPlug'),
    tightWithGas(told, 'teeThread'),
    item('continuous', flow.openedS !== null && flow.fullForS >= set.purgeS, {
      fullForS: flow.fullForS,
      limitS: set.purgeS,
    }),
    item('share', flow.gasShare >= set.purgeShare, { gasShare: flow.gasShare, limitShare: set.purgeShare }),
    item('list', latest(facts, 'site.done', (f) => f.task === 'relightList') !== null),
  ];
}

function tightWithGas({ facts, limits }: Told, at: LeakPlace): EvidenceItem {
  const plugS = latest(facts, 'newPlug.turned')?.atS ?? null;
  const main = latest(facts, 'gauge.read', (f) => f.gauge === 'main')?.readingGaugePa ?? 0;
  const look = plugS === null ? null : latest(facts, 'leak.looked', (f) => f.at === at && f.atS >= plugS);
  const pressureGaugePa = look?.pressureGaugePa ?? 0;
  const enough = main > 0 && pressureGaugePa >= main - PSI_PA;
  const quiet = look !== null && look.bubbles === 'none' && look.watchS >= limits.leakWatchS;
  return item(`fluid.${at}`, quiet && enough, {
    watchS: look?.watchS ?? 0,
    limitS: limits.leakWatchS,
    pressureGaugePa,
  });
}

interface Purge {
  readonly openedS: number | null;
  /** How long every reading was full of gas, from the first such one on, in one opening of the riser, s. */
  readonly fullForS: number;
  /** Last share of gas read. */
  readonly gasShare: number;
}

/** The last opening of the riser, as its readings tell it. */
function purgeOf(told: Told): Purge {
  const { facts, limits } = told;
  const share = (limits.renewal ?? renewalLimits).purgeShare;
  const turns = every(facts, 'riser.turned');
  const opened = turns.findLast((f, i) => f.open > 0 && (i === 0 || turns[i - 1].open <= 0));
  if (opened === undefined) return { openedS: null, fullForS: 0, gasShare: 0 };
  const shutS = turns.find((f) => f.atS > opened.atS && f.open <= 0)?.atS ?? told.nowS;
  const reads = every(facts, 'riser.read', (f) => f.atS >= opened.atS && f.atS <= shutS);
  let sinceS: number | null = null;
  let fullForS = 0;
  for (const read of reads) {
    if (read.gasShare < share) sinceS = null;
    else sinceS ??= read.atS;
    fullForS = sinceS === null ? 0 : read.atS - sinceS;
  }
  return { openedS: opened.atS, fullForS, gasShare: reads.at(-1)?.gasShare ?? 0 };
}
