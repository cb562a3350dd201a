import { describe, expect, it } from 'vitest';
import { faultFamilies, faults } from '../../src/core/faults/index.ts';
import { drive, steady } from '../../src/core/hands/index.ts';
import { judge } from '../../src/core/judge/index.ts';
import { shipped, shippedNames } from '../scenarios/shipped.ts';

const planted = shippedNames.map(shipped).filter((scenario) => scenario.faults.length > 0);
const familiesOf = (scenario: (typeof planted)[number]) =>
  new Set(scenario.faults.map(({ fault }) => faults[fault].family));

describe('the shipped exercises with something planted', () => {
  it('are one for each family at least, four with several faults, three where stopping is right', () => {
    const single = planted.filter(({ family }) => family === 'fault');
    for (const family of faultFamilies)
      expect(
        single.some((s) => familiesOf(s).has(family) && familiesOf(s).size === 1),
        family,
      ).toBe(true);
    const several = planted.filter(({ family }) => family === 'manyFaults');
    expect(several.length).toBeGreaterThanOrEqual(4);
    for (const { faults: all } of several) expect(all.length).toBeGreaterThanOrEqual(3);
    expect(planted.filter(({ family }) => family === 'stop').length).toBeGreaterThanOrEqual(3);
  });

  it.each(planted.map((scenario) => [scenario.id, scenario] as const))(
    '%s is passed by a steady crew that is told nothing of it, with the ending meant',
    (_, scenario) => {
      const { entries, run } = drive(scenario, steady);
      const assessment = judge(scenario, { entries, endS: run.clockS });
      expect(assessment.findings).toEqual([]);
      expect([assessment.verdict, assessment.ending]).toEqual(['pass', scenario.intendedEnding]);
      expect(assessment.headings.abnormal.got).toBe(assessment.headings.abnormal.of);
    },
  );

  it.each(planted.map((scenario) => [scenario.id, scenario] as const))(
    '%s is another job without its faults',
    (_, scenario) => {
      const sound = { ...scenario, faults: [] };
      const ends = [scenario, sound].map((one) => JSON.stringify(drive(one, steady).run.facts));
      expect(ends[0]).not.toBe(ends[1]);
    },
  );
});
