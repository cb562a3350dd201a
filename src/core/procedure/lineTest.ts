import type { Fact, LeakPlace } from '../rig/index.ts';
import { lastTelling } from './leakFluid.ts';
import { every, type FactOf } from './recall.ts';
import { item, type EvidenceItem, type Told } from './told.ts';

type Read = FactOf<'gauge.read'>;

/** Facts from the last joining of the test set to a place until it came off, or now. */
export function testOn({ facts }: Told, to: 'bench' | 'line'): readonly Fact[] | null {
  let from = -1;
  for (let i = facts.length - 1; i >= 0 && from < 0; i -= 1) {
    const fact = facts[i];
    if (fact.fact === 'testSet.joined' && fact.to === to) from = i;
  }
  if (from < 0) return null;
  const off = facts.findIndex((f, i) => i > from && f.fact === 'testSet.joined');
  return facts.slice(from, off < 0 ? facts.length : off);
}

export interface TestHold {
  readonly start: Read;
  readonly end: Read;
}

/** The longest time between two readings of the zeroed test gauge at pressure, with neither pump nor vent touched between. */
export function longestHold(test: readonly Fact[], leastGaugePa: number): TestHold | null {
  let best: TestHold | null = null;
  let start: Read | null = null;
  for (const fact of test) {
    if (disturbs(fact)) start = null;
    if (fact.fact !== 'gauge.read' || fact.gauge !== 'test' || !fact.zeroed) continue;
    if (start === null) {
      if (fact.readingGaugePa >= leastGaugePa) start = fact;
      best ??= start === null ? null : { start, end: start };
      continue;
    }
    if (best === null || fact.atS - start.atS >= best.end.atS - best.start.atS) best = { start, end: fact };
  }
  return best;
}

function disturbs(fact: Fact): boolean {
  return (
    fact.fact === 'testSet.pumped' ||
    fact.fact === 'testSet.vented' ||
    (fact.fact === 'done' && fact.action.kind === 'testSet.pump')
  );
}

/** Leak fluid at a place under the test's pressure, watched long enough: no bubbles. */
export function quietUnderFluid(
  test: readonly Fact[] | null,
  at: LeakPlace,
  leastGaugePa: number,
  watchLimitS: number,
): EvidenceItem {
  const looks = test === null ? [] : every(test, 'leak.looked', (f) => f.at === at);
  const last = lastTelling(looks, (l) => l.watchS >= watchLimitS && l.pressureGaugePa >= leastGaugePa);
  return item('fluid', last !== null && last.bubbles === 'none', {
    watchS: last?.watchS ?? 0,
    fluidWatchS: watchLimitS,
    pressureGaugePa: last?.pressureGaugePa ?? 0,
  });
}
