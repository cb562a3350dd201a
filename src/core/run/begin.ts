import { jobAtStart } from '../faults/index.ts';
import { procedureAtStart } from '../procedure/index.ts';
import { fillMol, firstStepS } from '../physics/index.ts';
import { layOut, setUp, stillAir, type Hindrance } from '../rig/index.ts';
import type { Scenario } from '../scenario/index.ts';
import { ATM_PA } from '../units/index.ts';
import { advance } from './advance.ts';
import { cleanAir } from './air.ts';
import { attempt } from './attempt.ts';
import { ready } from './gas.ts';
import { struckAtStart } from './struck.ts';
import { FIRST_MARK_S } from './settle.ts';
import type { RunState } from './types.ts';

/**
 * A run as the trainee takes it over: at the gate, or where the actions already done have brought the job. Throws
 * PreludeRefused where one of them was not possible; `preludeProblem` asks that beforehand.
 */
export function begin(scenario: Scenario): RunState {
  const { prelude } = scenario;
  let run = atGate(scenario);
  prelude.forEach((entry, i) => {
    const attempted = attempt(advance(run, entry.atS), entry.action);
    if ('hindrance' in attempted) throw new PreludeRefused(i, attempted.hindrance);
    run = attempted.run;
  });
  return advance(run, run.busyUntilS);
}

/** An action that the exercise says was already done, and that nobody could have done there. */
export class PreludeRefused extends Error {
  constructor(
    readonly index: number,
    readonly hindrance: Hindrance,
  ) {
    super(`action ${index + 1} of the prelude is not possible there: ${hindrance}`);
  }
}

/** Before anything is touched: tee, barrel and service full of gas at the main's pressure. */
function atGate(scenario: Scenario): RunState {
  const job = jobAtStart(scenario.job, scenario.faults);
  const rig = setUp(job);
  const network = layOut(rig, stillAir);
  const pressureAbsPa = ATM_PA + job.system.mainPressureGaugePa;
  const filled = network.cells.map((cell) => fillMol(cell.volumeM3, pressureAbsPa, 1, network.temperatureK));
  const airMol = filled.map((cell) => cell.airMol);
  const gasMol = filled.map((cell) => cell.gasMol);
  return {
    scenario,
    rig,
    struck: struckAtStart(scenario),
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
