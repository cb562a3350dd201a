import type { Readings, RunState } from '../core/run/index.ts';
import { read } from '../core/run/index.ts';

/** One point of the strip chart: what the instruments showed. Pa gauge, share of the lower explosive limit. */
export interface Sample {
  readonly atS: number;
  readonly mainGaugePa: number;
  readonly secondGaugePa: number;
  readonly headGaugePa: number | null;
  readonly lelShare: number;
}

/** Simulated seconds between two points of the chart while nothing is done. */
export const sampleEveryS = 2;

/** A point of the chart from what the crew reads. */
export function sampleOf(readings: Readings): Sample {
  return {
    atS: readings.atS,
    mainGaugePa: readings.mainGaugePa,
    secondGaugePa: readings.secondGaugePa,
    headGaugePa: readings.headGaugePa,
    lelShare: readings.lelShare,
  };
}

/** The same from a run. */
export function sampleRun(run: RunState): Sample {
  return sampleOf(read(run));
}
