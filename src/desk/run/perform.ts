import { GAS_KG_PER_MOL } from '../../core/judge/index.ts';
import {
  advance,
  attempt,
  begin,
  read,
  truePressures,
  type RecordEntry,
  type RunState,
} from '../../core/run/index.ts';
import type { Hindrance } from '../../core/rig/index.ts';
import type { Scenario } from '../../core/scenario/index.ts';
import type { Performance, Sample } from '../../session/index.ts';

/** One point of the desk's chart: what was read, and beside it what was true. */
export interface DeskSample extends Sample {
  /** True pressure below the ball, Pa gauge; null while there is no chamber. */
  readonly chamberGaugePa: number | null;
  /** Push of the gas felt on the rod, N upward; null with no barrel on the rig. */
  readonly rodN: number | null;
  /** Fuel gas let go into the hole so far, kg. */
  readonly toHoleKg: number;
}

/** A run performed for review, as far as the rig lets it. */
export interface Reviewed extends Performance {
  readonly trace: readonly DeskSample[];
  /** Entry, from 0, that the rig refuses now, and why; null where all of it could be done. */
  readonly refused: { readonly entry: number; readonly hindrance: Hindrance } | null;
}

/** Simulated seconds between two points of the chart, and between two kept states of a long wait. */
const sampleEveryS = 4;
const keepEveryS = 60;

/**
 * Performs a record's actions again. The run is kept after every action and once a minute of waiting, so that any
 * moment is a short advance away. What the rig refuses ends it there: the rest of a damaged run is not guessed.
 */
export function perform(scenario: Scenario, entries: readonly RecordEntry[], endS: number): Reviewed {
  let run = begin(scenario);
  const moments = [run];
  const trace = [sample(run)];
  let refused: Reviewed['refused'] = null;

  function pass(untilS: number): void {
    while (run.clockS < untilS) {
      run = advance(run, Math.min(untilS, run.clockS + sampleEveryS));
      trace.push(sample(run));
      if (run.clockS - moments[moments.length - 1].clockS >= keepEveryS) moments.push(run);
    }
  }

  for (let i = 0; i < entries.length && refused === null; i += 1) {
    pass(entries[i].atS);
    const tried = attempt(run, entries[i].action);
    if ('hindrance' in tried) refused = { entry: i, hindrance: tried.hindrance };
    else {
      run = tried.run;
      moments.push(run);
      trace.push(sample(run));
    }
  }
  if (refused === null) pass(endS);
  return { scenario, entries, moments, trace, end: run, refused };
}

function sample(run: RunState): DeskSample {
  const { atS, mainGaugePa, secondGaugePa, headGaugePa, lelShare, rodFeltN } = read(run);
  return {
    atS,
    mainGaugePa,
    secondGaugePa,
    headGaugePa,
    lelShare,
    chamberGaugePa: truePressures(run).chamber ?? null,
    rodN: rodFeltN,
    toHoleKg: run.ledger.toHoleMol * GAS_KG_PER_MOL,
  };
}
