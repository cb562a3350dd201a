import { allHands, drive, steady } from '../../core/hands/index.ts';
import { performAgain, type Performance } from '../../session/index.ts';
import { fetchScenario } from '../scenarios.ts';

/** An exercise as a scripted hand does it, by default the steady one; null where there is none of that name. */
export async function performBy(scenarioId: string, hand: string | null): Promise<Performance | null> {
  const scenario = await fetchScenario(scenarioId);
  const does = hand === null ? steady : allHands[hand];
  if (scenario === undefined || does === undefined) return null;
  const { entries, run } = drive(scenario, does);
  return performAgain(scenario, entries, run.clockS);
}
