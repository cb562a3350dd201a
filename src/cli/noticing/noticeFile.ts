import { sensitivity, type NoticingResult } from '../../core/prove/index.ts';
import { readScenario } from '../readInput.ts';

/** What one exercise notices of the slips that rules are written for. */
export interface NoticedExercise extends NoticingResult {
  readonly id: string;
}

/** Plays each n-th single deviation of the exercise and holds the judge against the rules. */
export function noticeFile(place: string, every: number): NoticedExercise {
  const scenario = readScenario(place);
  return { id: scenario.id, ...sensitivity(scenario, { every }) };
}
