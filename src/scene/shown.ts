import type { Action } from '../core/rig/index.ts';
import type { Readings, RunState } from '../core/run/index.ts';
import { hasPlace } from './describe/work.ts';
import type { CellGas, LinkGas, Shown } from './describe/view.ts';

/** What is true of the gas now, as the run tells it; shown in practice alone. */
export interface GasTruth {
  /** Pressure of each cell, Pa gauge. */
  readonly pressuresGaugePa: Readonly<Record<string, number>>;
  readonly flows: readonly {
    readonly id: string;
    readonly from: string;
    readonly to: string;
    readonly kgPerS: number;
  }[];
}

/** Leak-detection fluid stays wet so long, s (assumed). */
const WET_S = 120;

/**
 * What the picture may show of a run: instruments and fluid always, the gas itself only where truth is given.
 * `lookAt` is work whose place is looked at instead of the last done.
 */
export function shownOf(
  run: RunState,
  readings: Readings | null,
  truth: GasTruth | null,
  lookAt: Action | null = null,
): Shown {
  return {
    readings,
    gas: truth ? gasOf(run, truth) : null,
    fluid: fluidOf(run),
    doing: doingOf(run),
    lookAt,
  };
}

function gasOf(run: RunState, truth: GasTruth): NonNullable<Shown['gas']> {
  const cells: CellGas[] = run.network.cells.map(({ id }, i) => {
    const all = run.gas.airMol[i] + run.gas.gasMol[i];
    return {
      id,
      gaugePa: truth.pressuresGaugePa[id] ?? 0,
      gasFraction: all > 0 ? run.gas.gasMol[i] / all : 0,
    };
  });
  if (!cells.some((cell) => cell.id === 'main'))
    cells.push({ id: 'main', gaugePa: truth.pressuresGaugePa.main ?? 0, gasFraction: 1 });
  const fractions = new Map(cells.map((cell) => [cell.id, cell.gasFraction]));
  const links: LinkGas[] = truth.flows.map(({ id, from, to, kgPerS }) => ({
    id,
    kgPerS,
    gasFraction: fractions.get(kgPerS >= 0 ? from : to) ?? 0,
  }));
  return { cells, links };
}

/** The last thing done that has a place on the rig. */
function doingOf(run: RunState): Action | null {
  for (let i = run.facts.length - 1; i >= 0; i -= 1) {
    const fact = run.facts[i];
    if (fact.fact === 'done' && hasPlace(fact.action)) return fact.action;
  }
  return null;
}

/** Each place once, by what was last seen there, for as long as the fluid is wet. */
function fluidOf(run: RunState): Shown['fluid'] {
  const seen = new Map<string, Shown['fluid'][number]>();
  for (let i = run.facts.length - 1; i >= 0 && run.facts[i].atS >= run.clockS - WET_S; i -= 1) {
    const fact = run.facts[i];
    if (fact.fact === 'leak.looked' && !seen.has(fact.at)) {
      seen.set(fact.at, { at: fact.at, gasMolPerS: fact.gasMolPerS });
    }
  }
  return [...seen.values()];
}
