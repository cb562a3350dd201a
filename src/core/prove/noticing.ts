import type { Scenario } from '../scenario/index.ts';
import { sensitivity, type Miss } from './sensitivity/index.ts';
import type { GoOn, Note, Noticing, Proof } from './types.ts';

/** Least share of the slips that matter which an exercise must notice; one slip alone is no share. */
const NOTICED_LEAST = 0.98;
const MISSED_LEAST = 2;
const TOLD = 10;

/** Plays so many single deviations at most and holds the judge against the rules; null where it was stopped. */
export function noticingOf(scenario: Scenario, goOn: GoOn, most: number): Noticing | null {
  let stopped = false;
  const found = sensitivity(scenario, {
    most,
    goOn: (share) => {
      stopped = !goOn('noticing', share);
      return !stopped;
    },
  });
  if (stopped) return null;
  const { tried, ruled, noticed, share, harmless, punished, misses } = found;
  const named = (isHarmless: boolean): readonly string[] =>
    misses
      .filter(({ expected }) => 'harmless' in expected === isHarmless)
      .slice(0, TOLD)
      .map(nameOf);
  const slips = { missed: named(false), unfair: named(true) };
  return { tried, of: ruled, noticed, share, harmless, punished, ...slips };
}

function nameOf({ key, way, toward }: Miss): string {
  return `${key}${toward === null ? '' : ` (${toward})`}: ${way}`;
}

/** A proof with what it notices, worked out beside it. */
export function withNoticing(proof: Proof, noticing: Noticing | null): Proof {
  const notes = [...proof.notes, ...noticingNotes(noticing)];
  return { ...proof, noticing, notes };
}

function noticingNotes(noticing: Noticing | null): readonly Note[] {
  if (noticing === null) return [];
  const { share, punished, missed, unfair } = noticing;
  const note = { field: 'weights', grave: false } as const;
  return [
    ...(share < NOTICED_LEAST && missed.length >= MISSED_LEAST
      ? [{ ...note, id: 'fewNoticed' as const, numbers: { share }, about: missed[0] }]
      : []),
    ...(punished > 0
      ? [{ ...note, id: 'harmlessPunished' as const, numbers: { punished }, about: unfair[0] }]
      : []),
  ];
}
