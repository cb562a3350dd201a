import type { Scenario } from '../../core/scenario/index.ts';
import { exerciseIn } from './tell.ts';

/** What an exercise says of itself. */
export interface ExerciseWords {
  readonly title: string;
  readonly operator: string;
  readonly address: string;
  /** The work order, line by line. */
  readonly says: readonly string[];
}

/**
 * An exercise in the language of the moment. One that did not come with the product speaks in the words of whoever
 * wrote it.
 */
export function exerciseWords(scenario: Scenario): ExerciseWords {
  const { operator, address, says } = scenario.workOrder;
  return exerciseIn({ title: scenario.title, operator, address, says });
}

/** The title of an exercise of which no more is at hand. */
export function exerciseTitle(title: string): string {
  return exerciseIn({ title, operator: '', address: '', says: [] }).title;
}
