import { drive, steady } from '../../src/core/hands/index.ts';
import { advance, attempt, digestOf, type RunState } from '../../src/core/run/index.ts';
import type { Action } from '../../src/core/rig/index.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import { Chance, drawAction } from '../../src/cli/bench/randomActions.ts';

/** A job well done, with moments of it from which a slip can start. */
export interface Job {
  readonly moments: readonly RunState[];
  readonly actions: readonly Action[];
  readonly kit: readonly string[];
  /** Digest of the whole job as it ended. */
  readonly digest: string;
}

/** Drives the steady hand through an exercise and keeps every moment of it. */
export function wellDone(scenario: Scenario): Job {
  const moments: RunState[] = [];
  const { entries, run } = drive(scenario, steady, (now) => moments.push(now));
  return {
    moments: moments.filter((moment) => moment.rig.ending === null),
    actions: entries.map((entry) => entry.action),
    kit: scenario.job.kit.map((piece) => piece.id),
    digest: digestOf(run),
  };
}

/** Acts of one random run, tried or done. */
const ACTS = 24;

/**
 * A run that starts somewhere in a good job and goes on at random: acts of that job out of their order, acts no crew
 * would think of, and waits between. `visit` sees the run after every act that was possible.
 */
export function randomRun(job: Job, seed: number, visit?: (run: RunState) => void): RunState {
  const chance = new Chance(seed);
  let run = chance.pick(job.moments);
  for (let acts = 0; acts < ACTS && run.rig.ending === null; acts += 1) {
    const attempted = attempt(run, chance.now(0.6) ? chance.pick(job.actions) : drawAction(chance, job.kit));
    if (!('hindrance' in attempted)) {
      run = advance(attempted.run, attempted.run.busyUntilS);
      visit?.(run);
    }
    if (chance.now(0.3)) run = advance(run, run.clockS + chance.between(0, 90));
  }
  return run;
}

/** Digests of so many random runs, one after another from a first seed. */
export function randomDigests(job: Job, firstSeed: number, count: number): string[] {
  return Array.from({ length: count }, (_, i) => digestOf(randomRun(job, firstSeed + i)));
}
