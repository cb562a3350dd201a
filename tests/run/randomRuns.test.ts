import { describe, expect, it } from 'vitest';
import { advance, digestOf, type RunState } from '../../src/core/run/index.ts';
import { exercise } from '../scenario/exercise.ts';
import { Chance } from '../../src/cli/bench/randomActions.ts';
import { randomRun, wellDone } from './randomRuns.ts';

const job = wellDone(exercise());
/** Runs tried here; `stillmain bench` tries actions by the hundred thousand. */
const RUNS = 120;

/** Everything a run may not hold at any moment. */
function unsound(run: RunState): string[] {
  const wrong: string[] = [];
  const { airMol, gasMol } = run.gas;
  [...airMol, ...gasMol].forEach((mol, i) => {
    if (!(mol >= 0 && mol < Infinity) || Object.is(mol, -0)) wrong.push(`content ${i} is ${mol} mol`);
  });
  // The project's own bound: 1e-9 of what moved.
  if (!(run.closure <= 1e-9)) wrong.push(`mass is open by ${run.closure}`);
  if (!(run.air.gasFraction >= 0 && run.air.gasFraction <= 1)) wrong.push(`hole at ${run.air.gasFraction}`);
  return wrong;
}

describe('a crew that does anything at any time', () => {
  it('never meets a pressure below nothing, a number that is none, or gas from nowhere', () => {
    const wrong: string[] = [];
    let acts = 0;
    for (let seed = 1; seed <= RUNS; seed += 1)
      randomRun(job, seed, (run) => {
        acts += 1;
        wrong.push(...unsound(run).map((what) => `run ${seed}: ${what}`));
      });
    expect(wrong).toEqual([]);
    expect(acts).toBeGreaterThan(5 * RUNS);
  });

  it('finds the same state whether time ran in one piece or was cut anywhere', () => {
    for (let seed = 1; seed <= RUNS; seed += 1) {
      const chance = new Chance(seed);
      const run = randomRun(job, seed);
      const laterS = run.clockS + chance.between(0.01, 200);
      let cut = run;
      for (let cuts = 1 + chance.below(5); cuts > 0; cuts -= 1)
        cut = advance(cut, cut.clockS + chance.between(0, 1) * (laterS - cut.clockS));
      expect(digestOf(advance(cut, laterS)), `run ${seed}`).toBe(digestOf(advance(run, laterS)));
    }
  });

  it('lives the same run again from the same seed, and another from another', () => {
    const digest = (seed: number): string => digestOf(randomRun(job, seed));
    expect(digest(7)).toBe(digest(7));
    expect(digest(7)).not.toBe(digest(8));
  });
});
