import { describe, expect, it } from 'vitest';
import { findScenario, shippedScenarios } from '../../src/practice/scenarios.ts';
import { shippedNames } from '../scenarios/shipped.ts';

describe('the list of exercises', () => {
  it('holds every shipped exercise, each found by its name', () => {
    const listed = shippedScenarios.map(({ id }) => id);
    expect([...listed].sort((a, b) => (a < b ? -1 : 1))).toEqual(shippedNames);
    for (const name of shippedNames) expect(findScenario(name)?.id).toBe(name);
  });

  it('shows abandonments by tee, then by main, from small to large', () => {
    const sizes = shippedScenarios
      .filter(({ id }) => id.startsWith('abandon-'))
      .map(({ job }) => `${job.workpiece.teeSize} on ${job.workpiece.mainNps}`);
    expect(sizes).toEqual([
      '3/4 on 1-1/4', '3/4 on 1-1/2', '3/4 on 3', '3/4 on 12',
      '1 on 2', '1 on 4', '1 on 6', '1 on 8', '1 on 10',
      '1-1/4 on 3', '1-1/4 on 4', '1-1/4 on 6',
    ]); // prettier-ignore
  });
});
