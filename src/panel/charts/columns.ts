import { PSI_PA } from '../../core/units/index.ts';
import type { Sample } from '../../session/index.ts';
import type { UnitSystem } from '../../text/index.ts';

/** What a chart draws: times in minutes, then a column a curve; null where there is nothing to draw. */
export interface Columns {
  readonly minutes: readonly number[];
  readonly main: readonly (number | null)[];
  readonly head: readonly (number | null)[];
  readonly lel: readonly (number | null)[];
  /** Main and test head on stretches that were given up. */
  readonly given: readonly (number | null)[];
}

/** Unit of a chart's pressure axis. */
export const axisUnit: Readonly<Record<UnitSystem, { readonly name: string; readonly pa: number }>> = {
  us: { name: 'psig', pa: PSI_PA },
  si: { name: 'kPa', pa: 1000 },
};

interface Point {
  readonly sample: Sample;
  readonly given: boolean;
}

/** Joins the trace and the given-up stretches into columns over one rising time axis. */
export function columnsOf(
  trace: readonly Sample[],
  abandoned: readonly (readonly Sample[])[],
  system: UnitSystem,
): Columns {
  const { pa } = axisUnit[system];
  const points: Point[] = [
    ...trace.map((sample) => ({ sample, given: false })),
    ...abandoned.flat().map((sample) => ({ sample, given: true })),
  ].sort((a, b) => a.sample.atS - b.sample.atS);
  const kept = (pick: (sample: Sample) => number | null) =>
    points.map(({ sample, given }) => (given ? null : pick(sample)));
  return {
    minutes: points.map(({ sample }) => sample.atS / 60),
    main: kept((sample) => sample.mainGaugePa / pa),
    head: kept((sample) => (sample.headGaugePa === null ? null : sample.headGaugePa / pa)),
    lel: kept((sample) => sample.lelShare * 100),
    given: points.map(({ sample, given }) =>
      given && sample.headGaugePa !== null ? sample.headGaugePa / pa : null,
    ),
  };
}

/** Rows of the table twin: the sample nearest after each step of time, at most so many. */
export function tableRows(trace: readonly Sample[], most: number): readonly Sample[] {
  if (trace.length <= most) return trace;
  const lastS = trace[trace.length - 1].atS;
  const stepS = Math.ceil(lastS / most / 10) * 10;
  const rows: Sample[] = [];
  let dueS = 0;
  for (const sample of trace) {
    if (sample.atS < dueS) continue;
    rows.push(sample);
    dueS = (Math.floor(sample.atS / stepS) + 1) * stepS;
  }
  return rows;
}
