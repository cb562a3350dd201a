import { procedureAtStart } from '../procedure/index.ts';
import { fillMol, firstStepS } from '../physics/index.ts';
import { layOut, setUp, stillAir } from '../rig/index.ts';
import type { Scenario } from '../scenario/index.ts';
import { ATM_PA } from '../units/index.ts';
import { cleanAir } from './air.ts';
import { ready } from './gas.ts';
import { FIRST_MARK_S } from './settle.ts';
import type { RunState } from './types.ts';

/** A run at its beginning: tee, barrel and service full of gas at the main's pressure, nothing touched. */
export function begin(scenario: Scenario): RunState {
  const rig = setUp(scenario.job);
  const network = layOut(rig, stillAir);
  const pressureAbsPa = ATM_PA + scenario.job.system.mainPressureGaugePa;
  const filled = network.cells.map((cell) => fillMol(cell.volumeM3, pressureAbsPa, 1, network.temperatureK));
  const airMol = filled.map((cell) => cell.airMol);
  const gasMol = filled.map((cell) => cell.gasMol);
  return {
    scenario,
    rig,
    network,
    gas: { atS: 0, airMol, gasMol, stepS: firstStepS(ready(network), 0, { airMol, gasMol }) },
    sinceS: 0,
    agedS: 0,
    markS: FIRST_MARK_S,
    ledger: {
      toHoleMol: 0,
      throughBleedMol: 0,
      toServiceMol: 0,
      airIntoMainMol: 0,
      fromMainMol: 0,
      puffMol: 0,
      largestPuffMol: 0,
    },
    air: cleanAir,
    ear: { hissSinceS: null, blowing: null, reliefLifted: false, saddleLifted: false, flammable: false },
    procedure: procedureAtStart(),
    facts: [],
    clockS: 0,
    busyUntilS: 0,
    actions: 0,
    throughputMol: 0,
    closure: 0,
  };
}
