import { unitsOf, voiceOf, words, type UnitSystem } from '../../text/index.ts';
import type { RunState } from '../../core/run/index.ts';
import type { Grip } from './offer.ts';

/** All a row needs, for a run at this moment. */
export function gripOf(run: RunState, system: UnitSystem, holdBack: boolean, watchS: number): Grip {
  return {
    run,
    words: words(),
    voice: voiceOf(run.scenario.job, system),
    units: unitsOf(system),
    holdBack,
    watchS,
  };
}
