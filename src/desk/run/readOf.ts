import { evidence, type EvidenceItem } from '../../core/procedure/index.ts';
import type { Fact, HoldPointId } from '../../core/rig/index.ts';
import type { RunState } from '../../core/run/index.ts';
import type { HoldPointResult } from '../../core/judge/index.ts';

/** Facts that say what somebody read, saw or heard, with what was true beside it. */
const readings = [
  'gauge.read',
  'detector.read',
  'detector.bumped',
  'measured',
  'leak.looked',
  'listened',
  'looked',
  'bleed.quiet',
  'gaugeRing.tried',
  'record.written',
] as const satisfies readonly Fact['fact'][];
export type ReadingFact = Extract<Fact, { readonly fact: (typeof readings)[number] }>;

/** One hold point with everything that was read for it. */
export interface HoldEvidence {
  readonly id: HoldPointId;
  readonly outcome: HoldPointResult['outcome'];
  /** When it was signed for good, s; null where it was not. */
  readonly signedS: number | null;
  /** When it was decided, s. */
  readonly atS: number | null;
  /** Its requirements as they stood then. */
  readonly items: readonly EvidenceItem[];
  /** What was read since the hold point before it. */
  readonly read: readonly ReadingFact[];
}

const isReading = (fact: Fact): fact is ReadingFact => readings.some((kind) => kind === fact.fact);

/** What each hold point of a run rests on: from the decision about the one before it to its own. */
export function evidenceOf(run: RunState, results: readonly HoldPointResult[]): readonly HoldEvidence[] {
  const { job, limits } = run.scenario;
  let fromS = 0;
  return results.map(({ id, outcome, atS }) => {
    const decidedS = atS ?? run.clockS;
    const facts = run.facts.filter((fact) => fact.atS <= decidedS);
    const signed = facts.findLast((fact) => fact.fact === 'signed' && fact.holdPoint === id);
    const until = signed === undefined ? facts : facts.slice(0, facts.indexOf(signed) + 1);
    const read = atS === null ? [] : until.filter(isReading).filter((fact) => fact.atS >= fromS);
    if (atS !== null) fromS = signed?.atS ?? decidedS;
    return {
      id,
      outcome,
      signedS: signed?.atS ?? null,
      atS,
      items: atS === null ? [] : evidence(id, until, limits, job).items,
      read,
    };
  });
}

/** What was shown and what was true, where a reading has a number for both. SI. */
export interface Beside {
  readonly read: number;
  readonly truth: number;
  readonly as: 'pressure' | 'share' | 'length';
}

/** The two numbers of a reading, or null where it has not both. */
export function besideOf(fact: ReadingFact): Beside | null {
  switch (fact.fact) {
    case 'gauge.read':
      return { read: fact.readingGaugePa, truth: fact.trueGaugePa, as: 'pressure' };
    case 'detector.read':
      return { read: fact.lelShare, truth: fact.trueLelShare, as: 'share' };
    case 'measured':
      return { read: fact.readingM, truth: fact.trueM, as: 'length' };
    default:
      return null;
  }
}

/** How long was watched or listened, s, where the reading itself says so; a gauge is watched since its last reading. */
export function watchedS(fact: ReadingFact, before: readonly ReadingFact[]): number | null {
  if (fact.fact === 'leak.looked') return fact.watchS;
  if (fact.fact === 'bleed.quiet') return fact.hissedS;
  if (fact.fact !== 'gauge.read') return null;
  const last = before.findLast((one) => one.fact === 'gauge.read' && one.gauge === fact.gauge);
  return last === undefined ? null : fact.atS - last.atS;
}
