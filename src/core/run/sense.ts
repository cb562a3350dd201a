import { constants } from '../catalogue/index.ts';
import { oxygenFraction } from '../physics/index.ts';
import type { Sense } from '../rig/index.ts';
import { bleedLevelDb, gaugeOf, holeLevelDb, streetDb, type GasView } from './gas.ts';
import type { HoleAir, RunState } from './types.ts';

/** What the rig may ask of the gas, from a view of it. */
export function senseOf(run: RunState, view: GasView, atS: number, air: HoleAir): Sense {
  const at = (cell: string): number => view.network.cells.findIndex((one) => one.id === cell);
  const { lelFraction } = run.scenario.job.site;
  return {
    atS,
    seed: run.scenario.seed,
    gaugePa: (cell) => gaugeOf(view, cell),
    gasFraction: (cell) => {
      const i = at(cell);
      const total = i < 0 ? 0 : view.contents.airMol[i] + view.contents.gasMol[i];
      return total > 0 ? view.contents.gasMol[i] / total : 0;
    },
    mol: (cell) => {
      const i = at(cell);
      return i < 0 ? 0 : view.contents.airMol[i] + view.contents.gasMol[i];
    },
    flowMolPerS: (prefix) => {
      let flow = 0;
      for (let i = 0; i < view.network.links.length; i += 1) {
        const { id } = view.network.links[i];
        if (id !== prefix && !id.startsWith(`${prefix}.`)) continue;
        flow += Math.abs(view.flows[i].airMolPerS + view.flows[i].gasMolPerS);
      }
      return flow;
    },
    get bleedDb() {
      return bleedLevelDb(view);
    },
    get holeDb() {
      return holeLevelDb(view);
    },
    streetDb,
    lelShare: air.detectorLelShare,
    trueLelShare: air.gasFraction / lelFraction,
    oxygenShare: oxygenFraction(air.gasFraction, constants.airOxygenFraction.value),
  };
}
