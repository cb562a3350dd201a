import { describe, expect, it } from 'vitest';
import { exerciseGroups, fetchScenario, groupOf, shippedExercises } from '../../src/practice/scenarios.ts';
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
        family: scenario?.family,
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

  it('stands under a heading each, and none gives away where stopping is right', () => {
    for (const card of shippedExercises) expect(exerciseGroups).toContain(groupOf(card));
    const stops = shippedExercises.filter(({ family }) => family === 'stop').map(groupOf);
    const faults = shippedExercises.filter(({ family }) => family === 'fault').map(groupOf);
    expect(stops.length).toBeGreaterThan(0);
    expect(new Set(stops)).toEqual(new Set(faults));
  });

  it('shows the exercises of a heading by tee, then by main, from small to large', () => {
    const inches = (nps: string): number =>
      ({ '3/4': 0.75, '1-1/4': 1.25, '1-1/2': 1.5 })[nps] ?? Number(nps);
    const sound = shippedExercises.filter((card) => groupOf(card) === 'abandon');
    const ranks = sound.map(({ teeSize, mainNps }) => inches(teeSize) * 100 + inches(mainNps));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(ranks.length).toBeGreaterThanOrEqual(7);
  });
});
