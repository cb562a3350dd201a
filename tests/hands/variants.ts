import { PSI_PA } from '../../src/core/units/index.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import { exercise } from '../scenario/exercise.ts';

/** The shipped exercise with something else about it. */
export function variant(change: (draft: Scenario) => void): Scenario {
  const draft = exercise();
  change(draft);
  return draft;
}

/** The same job on a main at another pressure, ordered so. */
export const atPsig = (
  pressurePsig: number,
  intendedEnding: Scenario['intendedEnding'] = 'complete',
): Scenario =>
  variant((draft) => {
    draft.job.system.mainPressureGaugePa = pressurePsig * PSI_PA;
    draft.job.system.orderPressureGaugePa = pressurePsig * PSI_PA;
    draft.intendedEnding = intendedEnding;
  });
