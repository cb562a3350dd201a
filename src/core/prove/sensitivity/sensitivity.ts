import { assess, type RunAssessment } from '../../judge/index.ts';
import { drive, steady } from '../../hands/index.ts';
import { begin, type RunState } from '../../run/index.ts';
import type { Scenario } from '../../scenario/index.ts';
import { actsOf } from './acts.ts';
import { deviationsOf, stepsOf, type Deviation, type Way } from './deviations.ts';
import { playDeviation, playOn } from './playOn.ts';
import { chargedAs } from './chargedAs.ts';
import { expectedOf, type Expected } from './rules/index.ts';

/** A deviation that cost other than the rule says: noticed too little, or punished for nothing. */
export interface Miss {
  readonly key: string;
  readonly way: Way;
  readonly toward: string | null;
  /** Index of its first entry in the model run. */
  readonly at: number;
  readonly expected: Expected;
  /** Points lost in all, and the verdict it came to. */
  readonly lost: number;
  readonly verdict: RunAssessment['verdict'];
  readonly dropped: number;
}

/** How sensitive the judging of one exercise is, over the single deviations that have a rule. */
export interface NoticingResult {
  readonly tried: number;
  readonly mattering: number;
  readonly noticed: number;
  /** Noticed of those that matter; 1 where none does. */
  readonly share: number;
  readonly harmless: number;
  readonly punished: number;
  /** Acts the hands could not do any more, over all plays. */
  readonly dropped: number;
  /** Deviations that nothing is written for: they are counted, never played. */
  readonly unruled: number;
  /** Deviations that have a rule, whether they were played or not. */
  readonly ruled: number;
  readonly misses: readonly Miss[];
}

/** `every`: play each n-th ruled deviation; `most`: play so many at most, spread evenly. `goOn` is told the share done; false stops. */
export interface NoticingOptions {
  readonly every?: number;
  readonly most?: number;
  readonly goOn?: (share: number) => boolean;
}

/**
 * Deviates once from the steady hand's run in every way a rule is written for, and holds the judge's answer against the
 * rule. A deviation shares the model's run up to its act and plays only the rest. Pure.
 */
export function sensitivity(
  scenario: Scenario,
  { every = 1, most = Infinity, goOn = () => true }: NoticingOptions = {},
): NoticingResult {
  const { entries } = drive(scenario, steady);
  const begun = begin(scenario);
  const steps = stepsOf(entries, begun.clockS);
  const before: RunState[] = [];
  const whole = assess(playOn(begun, steps, (run) => before.push(run)).run);
  const acts = actsOf(entries);
  const all = deviationsOf({ scenario, steps, acts });
  const ruled = all.flatMap((deviation) => {
    const expected = expectedOf(deviation.act, deviation.way, acts);
    return expected === null ? [] : [{ deviation, expected }];
  });
  const apart = Math.max(every, Math.ceil(ruled.length / most));
  const sample = ruled.filter((_one, i) => i % apart === 0);
  const tally = { tried: 0, mattering: 0, noticed: 0, harmless: 0, punished: 0, dropped: 0 };
  const misses: Miss[] = [];
  for (const { deviation, expected } of sample) {
    if (!goOn(tally.tried / sample.length)) break;
    const { run, dropped } = playDeviation(before, deviation);
    const assessed = assess(run);
    const right = chargedAs(expected, whole, assessed, scenario.weights);
    tally.tried += 1;
    tally.dropped += dropped.length;
    if ('harmless' in expected) {
      tally.harmless += 1;
      if (!right) tally.punished += 1;
    } else {
      tally.mattering += 1;
      if (right) tally.noticed += 1;
    }
    if (!right) misses.push(missOf(deviation, expected, whole, assessed, dropped.length));
  }
  const share = tally.mattering === 0 ? 1 : tally.noticed / tally.mattering;
  return { ...tally, share, unruled: all.length - ruled.length, ruled: ruled.length, misses };
}

function missOf(
  { act, way }: Deviation,
  expected: Expected,
  whole: RunAssessment,
  { score, verdict }: RunAssessment,
  dropped: number,
): Miss {
  const { key, toward, from: at } = act;
  return { key, way, toward, at, expected, lost: whole.score - score, verdict, dropped };
}
