import { describe, expect, it } from 'vitest';
import { actsOf, expectedOf, isPaper, sensitivity } from '../../src/core/prove/index.ts';
import { exercise, steadyRun } from '../judge/play.ts';
import { shipped } from '../scenarios/shipped.ts';

describe('single deviations from the model run', () => {
  const { entries } = steadyRun();
  const acts = actsOf(entries);

  it('takes pulls on tensioners in turn as one act, and every entry into just one', () => {
    expect(acts.reduce((sum, act) => sum + act.to - act.from, 0)).toBe(entries.length);
    const pulls = acts.find((act) => act.key === 'tensioner.turn on');
    expect(pulls && pulls.to - pulls.from).toBeGreaterThanOrEqual(4);
  });

  it('has a rule for every act that moves no part and is done once', () => {
    const single = acts.filter((act) => act.of === 1 && isPaper(entries[act.from].action));
    expect(single.length).toBeGreaterThan(50);
    const bare = single.filter((act) => act.toward !== null && expectedOf(act, 'leftOut', acts) === null);
    expect(bare.map((act) => act.key)).toEqual([]);
  });

  it.each([
    ['abandon-1in-tee-on-4in-main', 9],
    ['renew-34in-tee-on-2in-main', 24],
    ['fault-several-third', 11],
  ])(
    'of %s are noticed where they matter and cost nothing where they do not, each %ith played',
    { timeout: 240_000 },
    (name, every) => {
      const { tried, share, punished, misses } = sensitivity(shipped(name), { every });
      expect(tried).toBeGreaterThan(30);
      expect(
        share,
        misses.map(({ key, way, toward }) => `${toward} ${key} ${way}`).join('; '),
      ).toBeGreaterThanOrEqual(0.97);
      expect(punished).toBe(0);
    },
  );

  it('are missed by a judge whose headings weigh nothing', { timeout: 120_000 }, () => {
    const blind = exercise((scenario) => {
      for (const point of scenario.holdPoints) Object.assign(point, { critical: false, weight: 0.01 });
    });
    expect(sensitivity(blind, { every: 20 }).share).toBeLessThan(0.9);
  });
});
