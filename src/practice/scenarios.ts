import type { Scenario } from '../core/scenario/index.ts';
import { openBench } from '../store/index.ts';

/** What the start page knows of an exercise without fetching it. */
export interface ExerciseCard {
  readonly id: string;
  readonly title: string;
  readonly family: Scenario['family'];
  /** Nominal pipe sizes as they are stamped: `1-1/4`. */
  readonly mainNps: string;
  readonly teeSize: string;
  readonly orderPressureGaugePa: number;
  readonly holdPoints: number;
  readonly cutScore: number;
}

/** Headings of the start page, in order. */
export const exerciseGroups = ['abandon', 'renew', 'fault', 'drill'] as const;
export type ExerciseGroup = (typeof exerciseGroups)[number];

/** Where stopping is right stands among where something may be wrong: a heading of its own would give it away. */
const groupOfFamily: Readonly<Record<Scenario['family'], ExerciseGroup>> = {
  sound: 'abandon',
  renewal: 'renew',
  fault: 'fault',
  manyFaults: 'fault',
  stop: 'fault',
  drill: 'drill',
};

const cards = import.meta.glob<ExerciseCard>('../../scenarios/*/scenario.json', {
  query: '?card',
  import: 'default',
  eager: true,
});
const documents = import.meta.glob<unknown>('../../scenarios/*/scenario.json', { import: 'default' });

/** The heading an exercise stands under. */
export const groupOf = ({ family }: ExerciseCard): ExerciseGroup => groupOfFamily[family];

/** The exercises that come with the product: by heading, then the small tees first, then the small mains. */
export const shippedExercises: readonly ExerciseCard[] = Object.values(cards).sort(
  (a, b) =>
    exerciseGroups.indexOf(groupOf(a)) - exerciseGroups.indexOf(groupOf(b)) ||
    inches(a.teeSize) - inches(b.teeSize) ||
    inches(a.mainNps) - inches(b.mainNps) ||
    (a.id < b.id ? -1 : 1),
);

/**
 * Fetches the exercise of that name, a shipped one or one of this browser's own; undefined where there is none that can
 * be worked. A shipped one that does not parse is a fault of ours and is thrown.
 */
export async function fetchScenario(id: string): Promise<Scenario | undefined> {
  const fetchDocument = documents[`../../scenarios/${id}/scenario.json`];
  if (fetchDocument === undefined) return findOwn(id);
  const document = fetchDocument();
  // Named where it is fetched: else everything that floor offers is fetched with it.
  const { parseScenario } = await import('../core/scenario/index.ts');
  const parsed = parseScenario(await document);
  if ('problems' in parsed) throw new Error(`${id}: ${parsed.problems[0].where} ${parsed.problems[0].says}`);
  return parsed.scenario;
}

async function findOwn(id: string): Promise<Scenario | undefined> {
  const own = await (await openBench()).find(id);
  if (own === undefined) return undefined;
  const { parseScenario } = await import('../core/scenario/index.ts');
  const parsed = parseScenario(own.document);
  return 'problems' in parsed ? undefined : parsed.scenario;
}

/** `1-1/4` as 1.25. */
function inches(nps: string): number {
  return nps.split('-').reduce((sum, part) => {
    const [over, under = 1] = part.split('/').map(Number);
    return sum + over / under;
  }, 0);
}
