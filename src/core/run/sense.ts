import { constants } from '../catalogue/index.ts';
import { oxygenFraction } from '../physics/index.ts';
import type { Sense } from '../rig/index.ts';
import { bleedLevelDb, gaugeOf, holeLevelDb, placeOf, streetDb, type GasView } from './gas.ts';
import type { HoleAir, RunState } from './types.ts';

/** Answers to what the rig may ask, each worked out only when it is asked. */
class GasSense implements Sense {
  readonly streetDb = streetDb;

  constructor(
    private readonly run: RunState,
    private readonly view: GasView,
    readonly atS: number,
    private readonly air: HoleAir,
  ) {}

  get seed(): number {
    return this.run.scenario.seed;
  }

  gaugePa(cell: string): number {
    return gaugeOf(this.view, cell);
  }

  gasFraction(cell: string): number {
    const total = this.mol(cell);
    return total > 0 ? this.view.contents.gasMol[placeOf(this.view.network, cell)] / total : 0;
  }

  mol(cell: string): number {
    const i = placeOf(this.view.network, cell);
    return i < 0 ? 0 : this.view.contents.airMol[i] + this.view.contents.gasMol[i];
  }

  flowMolPerS(prefix: string): number {
    const { links } = this.view.network;
    const { airMolPerS, gasMolPerS } = this.view.flows;
    let flow = 0;
    for (let i = 0; i < links.length; i += 1) {
      const { id } = links[i];
      if (id !== prefix && !id.startsWith(`${prefix}.`)) continue;
      flow += Math.abs(airMolPerS[i] + gasMolPerS[i]);
    }
    return flow;
  }

  get bleedDb(): number {
    return bleedLevelDb(this.view);
  }

  get holeDb(): number {
    return holeLevelDb(this.view);
  }

  get lelShare(): number {
    return this.air.detectorLelShare;
  }

  get overRange(): boolean {
    return this.air.overRange;
  }

  get trueLelShare(): number {
    return this.air.gasFraction / this.run.scenario.job.site.lelFraction;
  }

  get oxygenShare(): number {
    return oxygenFraction(this.air.gasFraction, constants.airOxygenFraction.value);
  }
}

/** What the rig may ask of the gas, from a view of it. */
export function senseOf(run: RunState, view: GasView, atS: number, air: HoleAir): Sense {
  return new GasSense(run, view, atS, air);
}
