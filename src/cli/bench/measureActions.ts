import { drive, steady } from '../../core/hands/index.ts';
import { solverSteps } from '../../core/physics/index.ts';
import type { Action } from '../../core/rig/index.ts';
import { advance, attempt, type RunState } from '../../core/run/index.ts';
import type { Scenario } from '../../core/scenario/index.ts';
import { leastMs, whole } from './cpu.ts';
import { Chance, drawAction } from './randomActions.ts';

/** What random actions did to the real run. */
export interface ActionsReport {
  /** Actions that were done, and those a hand tried for it: what cannot be done costs next to nothing. */
  readonly n: number;
  readonly tried: number;
  /** Actions after which a cell held less than nothing or no number, the hole an impossible mixture, or mass did not close to 1e-9 of what moved. */
  readonly failures: number;
  /** Most steps of the solver between one action and the next. */
  readonly maxSteps: number;
  readonly ms: number;
  readonly worstClosure: number;
}

/** Actions tried from one moment of the job before another is drawn. */
const A_WAY = 100;
/** How often the next action is one of the job's own, in its order or out of it; the rest is any act, likely or mad. */
const IN_ORDER = 0.35;
const OF_THE_JOB = 0.6;
/** How often the crew waits after it, and how long at most, s. */
const WAITS = 0.1;
const WAITS_S = 90;
const OPEN_MOST = 1e-9;

/** A whole job, and a run at each of its moments, to go astray from. */
interface Job {
  readonly moments: readonly RunState[];
  readonly actions: readonly Action[];
  readonly kit: readonly string[];
}

/** Does so many actions at random from moments of the whole job, each with the time hands need and what comes of it. */
export function measureActions(scenario: Scenario, count: number, seed: number): ActionsReport {
  const moments: RunState[] = [];
  const { entries } = drive(scenario, steady, (now) => moments.push(now));
  const job = {
    moments: moments.filter(({ rig }) => rig.ending === null),
    actions: entries.map(({ action }) => action),
    kit: scenario.job.kit.map(({ id }) => id),
  };
  let report: ActionsReport = { n: 0, tried: 0, failures: 0, maxSteps: 0, ms: 0, worstClosure: 0 };
  const ms = leastMs(1, () => {
    report = goAstray(job, count, new Chance(seed));
  });
  return { ...report, ms: whole(ms) };
}

function goAstray(job: Job, count: number, chance: Chance): ActionsReport {
  const told = { n: 0, tried: 0, failures: 0, maxSteps: 0, ms: 0, worstClosure: 0 };
  while (told.n < count) {
    let next = chance.below(job.moments.length);
    let run = job.moments[next];
    run = advance(run, run.busyUntilS);
    for (let i = 0; i < A_WAY && told.n < count && run.rig.ending === null; i += 1) {
      const drawn = chance.between(0, 1);
      if (drawn < IN_ORDER) next = (next + 1) % job.actions.length;
      const action =
        drawn < IN_ORDER
          ? job.actions[next]
          : drawn < OF_THE_JOB
            ? chance.pick(job.actions)
            : drawAction(chance, job.kit);
      const before = solverSteps();
      const attempted = attempt(run, action);
      told.tried += 1;
      if (!('hindrance' in attempted)) {
        told.n += 1;
        run = advance(attempted.run, attempted.run.busyUntilS);
      }
      if (chance.now(WAITS)) run = advance(run, run.clockS + chance.between(0, WAITS_S));
      told.maxSteps = Math.max(told.maxSteps, solverSteps() - before);
      told.worstClosure = Math.max(told.worstClosure, run.closure);
      if (!isSound(run)) told.failures += 1;
    }
  }
  return told;
}

/** Every content and the air of the hole a number that can be, and no step's mass open. */
function isSound({ gas, air, closure }: RunState): boolean {
  const can = (mol: number): boolean => mol >= 0 && mol < Infinity;
  return (
    gas.airMol.every(can) &&
    gas.gasMol.every(can) &&
    air.gasFraction >= 0 &&
    air.gasFraction <= 1 &&
    closure <= OPEN_MOST
  );
}
