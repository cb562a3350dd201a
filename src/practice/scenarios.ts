import type { Scenario } from '../core/scenario/index.ts';

/** What the start page knows of an exercise without fetching it. */
export interface ExerciseCard {
  readonly id: string;
  readonly title: string;
  /** Nominal pipe sizes as they are stamped: `1-1/4`. */
  readonly mainNps: string;
  readonly teeSize: string;
  readonly orderPressureGaugePa: number;
  readonly holdPoints: number;
  readonly cutScore: number;
}

/** Headings of the start page, in order. What else a name may begin with stands under the last. */
export const exerciseGroups = ['abandon', 'renew', 'fault', 'drill', 'other'] as const;
export type ExerciseGroup = (typeof exerciseGroups)[number];

/** First word of an exercise's name, and the heading it stands under. */
const groupOfFamily: Readonly<Record<string, ExerciseGroup>> = {
  abandon: 'abandon',
  renew: 'renew',
  reconnect: 'renew',
  discontinue: 'renew',
  fault: 'fault',
  drill: 'drill',
};

const cards = import.meta.glob<ExerciseCard>('../../scenarios/*/scenario.json', {
  query: '?card',
  import: 'default',
  eager: true,
});
const documents = import.meta.glob<unknown>('../../scenarios/*/scenario.json', { import: 'default' });

/** The exercises that come with the product: by heading, then the small tees first, then the small mains. */
export const shippedExercises: readonly ExerciseCard[] = Object.values(cards).sort(
  (a, b) =>
    exerciseGroups.indexOf(groupOf(a.id)) - exerciseGroups.indexOf(groupOf(b.id)) ||
    inches(a.teeSize) - inches(b.teeSize) ||
    inches(a.mainNps) - inches(b.mainNps) ||
    (a.id < b.id ? -1 : 1),
);

export function groupOf(id: string): ExerciseGroup {
  const family = id.split('-')[0];
  return Object.hasOwn(groupOfFamily, family) ? groupOfFamily[family] : 'other';
}

/**
 * Fetches the shipped exercise of that name; undefined where there is none. One that does not parse is a fault of
 * ours and is thrown.
 */
export async function fetchScenario(id: string): Promise<Scenario | undefined> {
  const fetchDocument = documents[`../../scenarios/${id}/scenario.json`];
  if (fetchDocument === undefined) return undefined;
  const [{ parseScenario }, document] = await Promise.all([
    import('../core/scenario/index.ts'),
    fetchDocument(),
  ]);
  const parsed = parseScenario(document);
  if ('problems' in parsed) throw new Error(`${id}: ${parsed.problems[0].where} ${parsed.problems[0].says}`);
  return parsed.scenario;
}

/** `1-1/4` as 1.25. */
function inches(nps: string): number {
  return nps.split('-').reduce((sum, part) => {
    const [over, under = 1] = part.split('/').map(Number);
    return sum + over / under;
  }, 0);
}
