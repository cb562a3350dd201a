import { parseScenario, type Scenario } from '../../core/scenario/index.ts';

/** What the bench lists of a shipped exercise. */
interface Card {
  readonly id: string;
  readonly title: string;
}

const cards = import.meta.glob<Card>('../../../scenarios/*/scenario.json', {
  query: '?card',
  import: 'default',
  eager: true,
});
const documents = import.meta.glob<unknown>('../../../scenarios/*/scenario.json', { import: 'default' });

/** The exercises that come with the product, by name. */
export const shippedCards: readonly Card[] = Object.values(cards).sort((a, b) => (a.id < b.id ? -1 : 1));

/** Names that no exercise of one's own may take. */
export const shippedNames: readonly string[] = shippedCards.map(({ id }) => id);

/** @throws an Error where there is none of that name, or where it does not parse: a fault of ours */
export async function fetchShipped(id: string): Promise<Scenario> {
  const fetchDocument = documents[`../../../scenarios/${id}/scenario.json`];
  if (fetchDocument === undefined) throw new Error(`There is no shipped exercise ${id}.`);
  const parsed = parseScenario(await fetchDocument());
  if ('problems' in parsed) throw new Error(`${id}: ${parsed.problems[0].where} ${parsed.problems[0].says}`);
  return parsed.scenario;
}
