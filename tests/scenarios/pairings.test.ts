import { describe, expect, it } from 'vitest';
import { parseScenario } from '../../src/core/scenario/index.ts';
import { hasRoom, mains, pairings, paired, tees } from './pairings.ts';

const every = mains.flatMap((main) => tees.map((tee) => [main, tee] as const));

describe('pairings of main and tee', () => {
  it('are 24 of 27: what has no room for its coupling is left out', () => {
    expect(pairings).toHaveLength(24);
    expect(every.filter(([main, tee]) => !hasRoom(main, tee))).toEqual([
      ['1-1/4', '1'],
      ['1-1/4', '1-1/4'],
      ['1-1/2', '1-1/4'],
    ]);
  });

  it.each(every)('an NPS %s main with an NPS %s tee is read or refused as the diameters say', (main, tee) => {
    const parsed = parseScenario(paired(main, tee, 35));
    if (hasRoom(main, tee)) {
      expect(parsed).toHaveProperty('scenario');
      return;
    }
    expect('problems' in parsed && parsed.problems.map((p) => p.where)).toEqual(['job.workpiece.teeSize']);
    expect('problems' in parsed && parsed.problems[0].says).toContain(
      `An NPS ${main} main has no room for the coupling of an NPS ${tee} tee`,
    );
  });

  it.each(mains)('an NPS %s main asks for its own cradle blocks if it is small, for none if it is large', (main) => {
    const scenario = paired(main, '3/4', 35);
    scenario.job.kit = scenario.job.kit.filter((piece) => piece.kind !== 'cradleBlock');
    const small = ['1-1/4', '1-1/2', '2', '3'].includes(main);
    expect('problems' in parseScenario(scenario)).toBe(small);
  });
});
