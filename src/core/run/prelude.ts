import type { Problem, Scenario } from '../scenario/index.ts';
import { begin, PreludeRefused } from './begin.ts';

/** What of a run had already happened when the trainee took over. */
export interface Given {
  readonly facts: number;
  readonly actions: number;
  readonly atS: number;
}

const nothing: Given = { facts: 0, actions: 0, atS: 0 };
let kept: { readonly scenario: Scenario; readonly given: Given } | null = null;

/** What the prelude of an exercise brings about; nothing where the trainee begins at the gate. */
export function givenBy(scenario: Scenario): Given {
  if (scenario.prelude.length === 0) return nothing;
  if (kept === null || kept.scenario !== scenario) {
    const { facts, actions, clockS } = begin(scenario);
    kept = { scenario, given: { facts: facts.length, actions, atS: clockS } };
  }
  return kept.given;
}

/** The first action of a prelude that could not have been done, as a problem of the document; null where all could. */
export function preludeProblem(scenario: Scenario): Problem | null {
  if (scenario.prelude.length === 0) return null;
  try {
    begin(scenario);
    return null;
  } catch (refused) {
    if (!(refused instanceof PreludeRefused)) throw refused;
    return {
      where: `prelude[${refused.index}].action`,
      says: `No hand could have done this there: ${refused.hindrance}.`,
    };
  }
}
