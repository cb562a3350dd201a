import { describe, expect, it } from 'vitest';
import { fetchScenario, groupOf, shippedExercises } from '../../src/practice/scenarios.ts';
import { shippedNames } from '../scenarios/shipped.ts';

describe('the list of exercises', () => {
  it('holds every shipped exercise, and says of each what its document says', async () => {
    const listed = shippedExercises.map(({ id }) => id);
    expect([...listed].sort((a, b) => (a < b ? -1 : 1))).toEqual(shippedNames);
    for (const card of shippedExercises) {
      const scenario = await fetchScenario(card.id);
      expect(scenario).toBeDefined();
      expect(card).toEqual({
        id: scenario?.id,
        title: scenario?.title,
        mainNps: scenario?.job.workpiece.mainNps,
        teeSize: scenario?.job.workpiece.teeSize,
        orderPressureGaugePa: scenario?.job.system.orderPressureGaugePa,
        holdPoints: scenario?.holdPoints.length,
        cutScore: scenario?.cutScore,
      });
    }
  });

  it('has no exercise of a name that was never shipped', async () => {
    expect(await fetchScenario('abandon-everything')).toBeUndefined();
    expect(await fetchScenario('../abandon-1in-tee-on-4in-main')).toBeUndefined();
  });

  it('puts each exercise under the heading that its name begins with', () => {
    expect(groupOf('abandon-1in-tee-on-4in-main')).toBe('abandon');
    expect(groupOf('reconnect-1in-tee-on-4in-main')).toBe('renew');
    expect(groupOf('drill-prove-a-chamber')).toBe('drill');
    expect(groupOf('constructor-of-nothing')).toBe('other');
  });

  it('shows abandonments by tee, then by main, from small to large', () => {
    const sizes = shippedExercises
      .filter(({ id }) => groupOf(id) === 'abandon')
      .map(({ teeSize, mainNps }) => `${teeSize} on ${mainNps}`);
    expect(sizes).toEqual([
      '3/4 on 1-1/4', '3/4 on 1-1/2', '3/4 on 3', '3/4 on 12',
      '1 on 2', '1 on 4', '1 on 6', '1 on 8', '1 on 10',
      '1-1/4 on 3', '1-1/4 on 4', '1-1/4 on 6',
    ]); // prettier-ignore
  });
});
