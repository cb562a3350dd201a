import { parseScenario, type Scenario } from '../core/scenario/index.ts';

const files = import.meta.glob<{ default: unknown }>('../../scenarios/*/scenario.json', { eager: true });

/** The exercises that come with the product, by title. One that does not parse is a fault of ours and is thrown. */
export const shippedScenarios: readonly Scenario[] = Object.entries(files)
  .map(([path, file]) => {
    const parsed = parseScenario(file.default);
    if ('problems' in parsed)
      throw new Error(`${path}: ${parsed.problems[0].where} ${parsed.problems[0].says}`);
    return parsed.scenario;
  })
  .sort((a, b) => (a.title < b.title ? -1 : 1));

/** The shipped exercise of that name. */
export function findScenario(id: string): Scenario | undefined {
  return shippedScenarios.find((scenario) => scenario.id === id);
}
