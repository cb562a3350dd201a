import { describe, expect, it } from 'vitest';
import { expectedHissS } from '../../src/bench/parts/hiss.ts';
import { makeExercise } from '../../src/bench/parts/make.ts';
import { sites } from '../../src/bench/parts/sites.ts';
import { faultSets } from '../../src/bench/parts/faultSets.ts';
import { faults } from '../../src/core/faults/index.ts';
import { drive, steady } from '../../src/core/hands/index.ts';
import { assess } from '../../src/core/judge/index.ts';
import type { MainSize, TeeSize } from '../../src/core/rig/index.ts';
import { parseScenario, type Scenario } from '../../src/core/scenario/index.ts';
import { shipped, shippedNames } from '../scenarios/shipped.ts';

const words = {
  title: 'A service goes',
  brief: 'It goes.',
  workOrder: { number: '1', operator: 'The yard', address: 'Bay 1', says: ['Take it off.'] },
};
const made = (mainNps: MainSize, teeSize: TeeSize, site = sites[0]): Scenario =>
  makeExercise({ id: 'own-new', mainNps, teeSize, site, seed: 7, words });

describe('a new exercise from a ready site', () => {
  it.each(sites.map((site) => [site.id, site] as const))('parses at %s', (_, site) => {
    expect(parseScenario(made('4', '1', site))).not.toHaveProperty('problems');
  });

  it.each([
    ['2', '1-1/4'],
    ['1-1/2', '3/4'],
    ['12', '1'],
  ] as const)('of a main %s and a tee %s is finished and passed by a steady crew', (main, tee) => {
    expect(assess(drive(made(main, tee), steady).run)).toMatchObject({ verdict: 'pass', ending: 'complete' });
  });

  it('says at once what is wrong with a pairing that cannot be', () => {
    const parsed = parseScenario(made('1-1/4', '1-1/4'));
    expect('problems' in parsed && parsed.problems[0].where).toBe('job.workpiece.teeSize');
  });
});

describe('the hiss that is to be expected', () => {
  it('is what the shipped exercises set, to a fiftieth', () => {
    const jobs = shippedNames
      .map(shipped)
      .filter(({ kind, faults: planted }) => kind === 'job' && planted.length === 0);
    expect(jobs.length).toBeGreaterThan(8);
    for (const { id, job, limits } of jobs)
      expect(Math.abs(expectedHissS(job) / limits.expectedHissS - 1), id).toBeLessThan(0.02);
  });
});

describe('a ready set of faults', () => {
  it('sets each off in a way that the fault knows', () => {
    for (const { faults: planted } of faultSets)
      for (const { fault, when } of planted) expect(faults[fault].triggers).toContain(when.trigger);
  });
});
