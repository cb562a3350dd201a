import { drive, steady } from '../../core/hands/index.ts';
import { performAgain, type Performance } from '../../session/index.ts';
import { fetchScenario } from '../scenarios.ts';

/** A shipped exercise as the steady hand does it; null where there is none of that name. */
export async function performSteadily(scenarioId: string): Promise<Performance | null> {
  const scenario = await fetchScenario(scenarioId);
  if (scenario === undefined) return null;
  const { entries, run } = drive(scenario, steady);
  return performAgain(scenario, entries, run.clockS);
}
