import exerciseText from '../../../scenarios/abandon-1in-tee-on-4in-main/scenario.json?raw';
import type { Scenario } from '../../../src/core/scenario/index.ts';
import { randomDigests, wellDone } from '../../run/randomRuns.ts';

/** What this page offers to whoever holds the browser. The shipped app offers nothing of the kind. */
export interface RunsOfThisEngine {
  readonly jobDigest: string;
  readonly digests: (firstSeed: number, count: number) => string[];
}

declare global {
  interface Window {
    runs?: RunsOfThisEngine;
  }
}

const job = wellDone(JSON.parse(exerciseText) as Scenario);
window.runs = {
  jobDigest: job.digest,
  digests: (firstSeed, count) => randomDigests(job, firstSeed, count),
};
