import type { Scenario } from '../../core/scenario/index.ts';
import { exerciseIn } from './tell.ts';

/** What an exercise says of itself. */
export interface ExerciseWords {
  readonly title: string;
  readonly brief: string;
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
  return exerciseIn(scenario.id, { title: scenario.title, brief: scenario.brief, operator, address, says });
}

/** The title of an exercise of which no more is at hand. */
export function exerciseTitle(id: string, title: string): string {
  return exerciseIn(id, { title, brief: '', operator: '', address: '', says: [] }).title;
}
