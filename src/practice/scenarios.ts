import { mainSizes, teeSizes } from '../core/catalogue/index.ts';
import { parseScenario, type Scenario } from '../core/scenario/index.ts';

const files = import.meta.glob<{ default: unknown }>('../../scenarios/*/scenario.json', { eager: true });

/** The exercises that come with the product, by family and size. One that does not parse is a fault of ours and is thrown. */
export const shippedScenarios: readonly Scenario[] = Object.entries(files)
  .map(([path, file]) => {
    const parsed = parseScenario(file.default);
    if ('problems' in parsed)
      throw new Error(`${path}: ${parsed.problems[0].where} ${parsed.problems[0].says}`);
    return parsed.scenario;
  })
  .sort(byFamilyAndSize);

/** The shipped exercise of that name. */
export function findScenario(id: string): Scenario | undefined {
  return shippedScenarios.find((scenario) => scenario.id === id);
}

/** The family is the first word of an exercise's name; in it the small tees come first, then the small mains. */
function byFamilyAndSize(a: Scenario, b: Scenario): number {
  const [one, other] = [familyOf(a), familyOf(b)];
  if (one !== other) return one < other ? -1 : 1;
  return rankOf(a) - rankOf(b) || (a.title < b.title ? -1 : 1);
}

function familyOf({ id }: Scenario): string {
  return id.split('-')[0];
}

function rankOf({ job }: Scenario): number {
  const { teeSize, mainNps } = job.workpiece;
  return teeSizes.indexOf(teeSize) * mainSizes.length + mainSizes.indexOf(mainNps);
}
