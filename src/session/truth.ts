import { trueFlows, truePressures, type RunState } from '../core/run/index.ts';

/** What no crew is shown and a picture draws: true pressures of the cells, Pa gauge, and flows of the links, kg/s. */
export interface Truth {
  readonly pressuresGaugePa: ReturnType<typeof truePressures>;
  readonly flows: ReturnType<typeof trueFlows>;
}

/** The truth of a run at its clock. */
export function truthOf(run: RunState): Truth {
  return { pressuresGaugePa: truePressures(run), flows: trueFlows(run) };
}
