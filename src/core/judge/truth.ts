import { PSI_PA } from '../units/index.ts';
import type { Fact } from '../rig/index.ts';
import type { Limits } from '../procedure/index.ts';

/** What a sound gauge and an eye may be off by, Pa: a crew is not misled by that (one division, assumed). */
const GAUGE_OFF_PA = PSI_PA;
/** What the difference of two readings of one gauge may be off by, Pa (two quarter divisions, assumed). */
const TWICE_READ_PA = 0.5 * PSI_PA;

/** The same fact with the truth in place of the reading. */
export function truthOf(fact: Fact, limits: Limits): Fact {
  switch (fact.fact) {
    case 'gauge.read': {
      const offPa = fact.gauge === 'main' ? GAUGE_OFF_PA : 0;
      return { ...fact, readingGaugePa: Math.max(0, fact.trueGaugePa - offPa) };
    }
    case 'detector.read':
      return { ...fact, lelShare: fact.trueLelShare };
    case 'bleed.turned':
      return { ...fact, puff: fact.puff || (fact.aboveGaugePa > 2 * limits.puffPa && fact.openRad > 0) };
    default:
      return fact;
  }
}

/** Limits with room for what sound instruments are off by, so that only a real difference misleads. */
export function widen(limits: Limits): Limits {
  const [low, high] = limits.lowStageGaugePa;
  return {
    ...limits,
    orderShare: limits.orderShare * 1.5,
    secondGaugePa: limits.secondGaugePa + 2 * GAUGE_OFF_PA,
    lowStageGaugePa: [Math.max(0, low - GAUGE_OFF_PA), high + GAUGE_OFF_PA],
    overMainPa: limits.overMainPa + 3 * GAUGE_OFF_PA,
    dropPa: limits.dropPa + TWICE_READ_PA,
    seatTestPa: limits.seatTestPa + GAUGE_OFF_PA,
    risePa: limits.risePa + TWICE_READ_PA,
    workLelShare: limits.workLelShare * 1.2,
  };
}
