import { fillMol, firstStepS } from '../physics/index.ts';
import { boundaryIds, layOut, mainGaugePa, type RigState } from '../rig/index.ts';
import { ATM_PA } from '../units/index.ts';
import { advanceAir } from './air.ts';
import { changed } from './changed.ts';
import { ready, viewGas } from './gas.ts';
import { senseOf } from './sense.ts';
import type { RunState } from './types.ts';

/**
 * Carries the gas over to a rig that changed: a cell that grew takes in open air, one that shrank or went leaves its
 * share in the hole (or in the cell that swallowed it), and no mole is lost or made.
 */
export function refit(run: RunState, rig: RigState, atS: number): RunState {
  const sense = senseOf(run, viewGas(run.network, run.gas, atS), atS, run.air);
  const network = layOut(rig, sense);
  const airMol: number[] = [];
  const gasMol: number[] = [];
  let spilledAir = 0;
  let spilledGas = 0;
  let vented = 0;
  const mainAbsPa = ATM_PA + mainGaugePa(run.rig, sense);
  for (const cell of network.cells) {
    const was = run.network.cells.findIndex((one) => one.id === cell.id);
    const oldM3 = was < 0 ? 0 : run.network.cells[was].volumeM3;
    const air = was < 0 ? 0 : run.gas.airMol[was];
    const gas = was < 0 ? 0 : run.gas.gasMol[was];
    // a main that from now on is a pipe of its own is full of gas, not of open air
    if (was < 0 && cell.id === boundaryIds.main) {
      airMol.push(0);
      gasMol.push(fillMol(cell.volumeM3, mainAbsPa, 1, network.temperatureK).gasMol);
      continue;
    }
    if (cell.volumeM3 >= oldM3) {
      airMol.push(air + fillMol(cell.volumeM3 - oldM3, ATM_PA, 0, network.temperatureK).airMol);
      gasMol.push(gas);
    } else {
      const kept = cell.volumeM3 / oldM3;
      airMol.push(air * kept);
      gasMol.push(gas * kept);
      spilledAir += air * (1 - kept);
      spilledGas += gas * (1 - kept);
    }
  }
  for (let i = 0; i < run.network.cells.length; i += 1) {
    const { id } = run.network.cells[i];
    if (id === boundaryIds.main || network.cells.some((cell) => cell.id === id)) continue;
    const into = id === 'barrel' ? network.cells.findIndex((cell) => cell.id === 'chamber') : -1;
    if (into >= 0) {
      airMol[into] += run.gas.airMol[i];
      gasMol[into] += run.gas.gasMol[i];
    } else {
      spilledAir += run.gas.airMol[i];
      spilledGas += run.gas.gasMol[i];
    }
  }
  if (rig.branch.purged && !run.rig.branch.purged) vented = blowThrough(network, airMol, gasMol);
  const next = { airMol, gasMol };
  const puffMol = run.ledger.puffMol + spilledGas;
  return changed(run, {
    rig,
    network,
    gas: { atS, airMol, gasMol, stepS: firstStepS(ready(network), atS, next) },
    air: spilledGas > 0 ? advanceAir(run.air, rig, { airMol: spilledAir, gasMol: spilledGas }, 0) : run.air,
    ledger: {
      ...run.ledger,
      toHoleMol: run.ledger.toHoleMol + spilledGas,
      throughBleedMol: run.ledger.throughBleedMol + vented,
      puffMol,
      largestPuffMol: Math.max(run.ledger.largestPuffMol, puffMol),
    },
  });
}

/** The dead service blown through with air from the cut to an outdoor vent at its far end: mol of gas let out there. */
function blowThrough(network: RunState['network'], airMol: number[], gasMol: number[]): number {
  let vented = 0;
  for (let i = 0; i < network.cells.length; i += 1) {
    if (!network.cells[i].id.startsWith('service')) continue;
    vented += gasMol[i];
    airMol[i] = fillMol(network.cells[i].volumeM3, ATM_PA, 0, network.temperatureK).airMol;
    gasMol[i] = 0;
  }
  return vented;
}
