import { describe, expect, it } from 'vitest';
import { cutDrill, drive, steady } from '../../src/core/hands/index.ts';
import { assess } from '../../src/core/judge/index.ts';
import { exercise } from '../judge/play.ts';

const asked = { from: 's9', to: 's12' } as const;

describe('a drill cut out of an exercise', () => {
  it('begins where it says and is passed by the steady hand from there', () => {
    const cut = cutDrill(exercise(), asked);
    if ('problems' in cut) throw new Error(cut.problems[0].says);
    const { drill } = cut;
    expect([drill.id, drill.kind, drill.drill]).toEqual([`drill-s9-${exercise().id}`, 'drill', asked]);
    expect(drill.holdPoints.map(({ id }) => id)).toEqual(['H8', 'H9', 'H10', 'H11', 'H12']);
    const { verdict, score } = assess(drive(drill, steady).run);
    expect([verdict, score]).toEqual(['pass', 100]);
  });

  it('is refused where the work ends before, or has no such stage', () => {
    const unsound = exercise((s) => (s.job.workpiece.wallSound = false));
    expect(cutDrill(unsound, asked)).toEqual({
      problems: [{ where: 'drill.from', says: 'A steady crew ends this work before stage s9.' }],
    });
    expect(cutDrill(exercise(), { from: 'r1', to: 's12' })).toEqual({
      problems: [{ where: 'drill', says: 'This work has no stage r1.' }],
    });
  });
});
