import { parseScenario, type Scenario } from '../../core/scenario/index.ts';

const files = import.meta.glob<{ default: unknown }>([
  '../../../scenarios/abandon-1in-tee-on-4in-main/scenario.json',
  '../../../scenarios/abandon-34in-tee-on-12in-main/scenario.json',
  '../../../scenarios/abandon-114in-tee-on-6in-main/scenario.json',
]);

/**
 * The exercises that the invented cohort performs: few, so that each is performed often enough to be compared, and all to
 * be finished, so that every hold point is come to.
 */
export async function demoScenarios(): Promise<readonly Scenario[]> {
  const found = await Promise.all(
    Object.keys(files)
      .sort((a, b) => (a < b ? -1 : 1))
      .map((path) => files[path]()),
  );
  return found.map(({ default: written }) => {
    const parsed = parseScenario(written);
    if ('problems' in parsed) throw new Error(parsed.problems[0].says);
    return parsed.scenario;
  });
}
