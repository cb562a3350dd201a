import { POUND_FORCE_N, PSI_PA } from '../../core/units/index.ts';
import type { UnitSystem } from '../../text/index.ts';
import type { DeskSample } from './perform.ts';

/** What the desk's chart can draw. */
export const curveIds = ['main', 'head', 'chamber', 'lel', 'gas', 'rod'] as const;
export type CurveId = (typeof curveIds)[number];

/** Scale a curve is drawn on: curves of one kind share it. */
export type ScaleId = 'pressure' | 'share' | 'mass' | 'force';

export interface Curve {
  readonly scale: ScaleId;
  readonly colour: string;
  readonly width: number;
  readonly dash: readonly number[];
  /** The sample's figure in the unit of the scale, null where there is nothing to draw. */
  readonly pick: (sample: DeskSample, system: UnitSystem) => number | null;
}

/** One avoirdupois ounce, kg (exact by definition of the pound). */
const OUNCE_KG = 0.028349523125;

const paOf: Readonly<Record<UnitSystem, number>> = { us: PSI_PA, si: 1000 };
const newtonOf: Readonly<Record<UnitSystem, number>> = { us: POUND_FORCE_N, si: 1 };
const kgOf: Readonly<Record<UnitSystem, number>> = { us: OUNCE_KG, si: 0.001 };

/** Units as the scales are marked. */
export const scaleUnits: Readonly<Record<UnitSystem, Readonly<Record<ScaleId, string>>>> = {
  us: { pressure: 'psig', share: '% LEL', mass: 'oz', force: 'lbf' },
  si: { pressure: 'kPa', share: '% LEL', mass: 'g', force: 'N' },
};

const pressure = (gaugePa: number | null, system: UnitSystem): number | null =>
  gaugePa === null ? null : gaugePa / paOf[system];

/** How each curve is drawn and what it is. No two are told apart by colour alone. */
export const curves: Readonly<Record<CurveId, Curve>> = {
  main: {
    scale: 'pressure',
    colour: '--trace-1',
    width: 2,
    dash: [],
    pick: (sample, system) => pressure(sample.mainGaugePa, system),
  },
  head: {
    scale: 'pressure',
    colour: '--trace-2',
    width: 2,
    dash: [6, 3],
    pick: (sample, system) => pressure(sample.headGaugePa, system),
  },
  chamber: {
    scale: 'pressure',
    colour: '--ink-soft',
    width: 1,
    dash: [],
    pick: (sample, system) => pressure(sample.chamberGaugePa, system),
  },
  lel: {
    scale: 'share',
    colour: '--trace-3',
    width: 2,
    dash: [2, 3],
    pick: (sample) => sample.lelShare * 100,
  },
  gas: {
    scale: 'mass',
    colour: '--good',
    width: 2,
    dash: [12, 3, 2, 3],
    pick: (sample, system) => sample.toHoleKg / kgOf[system],
  },
  rod: {
    scale: 'force',
    colour: '--bad',
    width: 1.5,
    dash: [3, 3],
    pick: (sample, system) => (sample.rodN === null ? null : sample.rodN / newtonOf[system]),
  },
};

/** Rows of the chart's table twin: the sample nearest after each even step of time, at most so many. */
export function rowsOf(trace: readonly DeskSample[], most: number): readonly DeskSample[] {
  const lastS = trace[trace.length - 1].atS;
  const stepS = Math.max(1, Math.ceil(lastS / most / 10) * 10);
  const rows: DeskSample[] = [];
  let dueS = 0;
  for (const sample of trace) {
    if (sample.atS < dueS) continue;
    rows.push(sample);
    dueS = (Math.floor(sample.atS / stepS) + 1) * stepS;
  }
  return rows;
}
