import { describe, expect, it } from 'vitest';
import { parseScenario, SCENARIO_TEXT_MOST, type Problem } from '../../src/core/scenario/index.ts';
import { exercise, exerciseText } from './exercise.ts';

type Loose = Record<string, unknown> & { job: Record<string, Record<string, unknown>> };
const changed = (change: (draft: Loose) => void): unknown => {
  const draft = JSON.parse(exerciseText) as Loose;
  change(draft);
  return draft;
};
const problemsOf = (input: unknown): readonly Problem[] => {
  const parsed = parseScenario(input);
  return 'problems' in parsed ? parsed.problems : [];
};
const kitOf = (draft: Loose) => draft.job.kit as unknown as Record<string, unknown>[];

describe('reading an exercise', () => {
  it('takes the shipped exercise word for word', () => {
    expect(parseScenario(exerciseText)).toEqual({ scenario: exercise() });
  });

  it('names six planted faults by place, each in a plain sentence', () => {
    const problems = problemsOf(
      changed((d) => {
        d.seed = -1;
        d.brif = 'typing slip';
        delete d.title;
        d.job.system.temperatureK = 'cold';
        d.job.workpiece.boss = 'shiny';
        kitOf(d)[3].defects = { gritCdAM2: 5 };
      }),
    );
    expect(problems.map((p) => p.where).sort((a, b) => (a < b ? -1 : 1))).toEqual([
      'brif',
      'job.kit[3].defects.gritCdAM2',
      'job.system.temperatureK',
      'job.workpiece.boss',
      'seed',
      'title',
    ]);
    for (const { says } of problems) expect(says).toMatch(/^[A-Z].*\.$/);
    expect(problems.find((p) => p.where === 'brif')?.says).toBe('This entry is not known here.');
    expect(problems.find((p) => p.where === 'title')?.says).toBe('This entry is missing.');
  });

  it('refuses text that is too long before it is taken apart', () => {
    expect(problemsOf('['.repeat(SCENARIO_TEXT_MOST + 1))[0].says).toContain('longer');
  });

  it.each([
    ['not JSON', '{"format":'],
    ['a bare word', '"hello"'],
    ['nothing', null],
    ['a list', []],
  ])('refuses %s with one sentence', (_, input) => {
    expect(problemsOf(input).length).toBeGreaterThan(0);
  });

  it('refuses minus zero, which would not read back as itself', () => {
    const text = exerciseText.replace('"curbPassingCdAM2": 0', '"curbPassingCdAM2": -0');
    expect(problemsOf(text)[0].where).toBe('job.system.service.curbPassingCdAM2');
  });
});

describe('what only the whole exercise shows', () => {
  const one = (change: (draft: Loose) => void) => {
    const problems = problemsOf(changed(change));
    expect(problems).toHaveLength(1);
    return problems[0];
  };

  it.each([
    ['1-1/4', '1', false],
    ['1-1/4', '1-1/4', false],
    ['1-1/4', '3/4', true],
    ['1-1/2', '1-1/4', false],
    ['1-1/2', '1', true],
    ['2', '1-1/4', true],
    ['12', '1-1/4', true],
  ])('on an NPS %s main an NPS %s tee is possible: %s', (mainNps, teeSize, possible) => {
    const spare = { id: 'closingPlug-spare', kind: 'closingPlug', stamped: teeSize };
    const problems = problemsOf(
      changed((d) => {
        Object.assign(d.job.workpiece, { mainNps, teeSize });
        kitOf(d).push(spare);
      }),
    );
    expect(problems.some((p) => p.where === 'job.workpiece.teeSize')).toBe(!possible);
  });

  it('asks for both chains', () => {
    const { where, says } = one((d) => kitOf(d).splice(13, 1));
    expect([where, says]).toEqual(['job.kit', 'The job needs 2 chain; the kit has 1.']);
  });

  it('asks for two cradle blocks of a small main, and none of a large one', () => {
    const drop = (d: Loose) => {
      const kit = kitOf(d);
      kit.splice(
        kit.findIndex((k) => k.id === 'cradleBlock-3-a'),
        1,
      );
    };
    expect(problemsOf(changed(drop))).toEqual([]);
    const { says } = one((d) => {
      drop(d);
      d.job.workpiece.mainNps = '3';
    });
    expect(says).toContain('2 cradleBlock of size 3');
  });

  it('counts a piece by its real size, not by a stamp that lies', () => {
    const { says } = one((d) => {
      const ring = kitOf(d).find((k) => k.id === 'seatRing-1');
      if (ring) ring.trueSize = '3/4';
    });
    expect(says).toBe('The job needs 1 seatRing of size 1; the kit has 0.');
  });

  it('asks for a spare closing plug beside the one to be used', () => {
    const { says } = one((d) => {
      const kit = kitOf(d);
      kit.splice(
        kit.findIndex((k) => k.id === 'closingPlug-1-spare'),
        1,
      );
    });
    expect(says).toContain('2 closingPlug');
  });

  it('wants weights that sum to a hundred', () => {
    expect(one((d) => Object.assign(d.weights as object, { kit: 16 })).where).toBe('weights');
  });

  it('wants each hold point once', () => {
    const { where, says } = one((d) => {
      (d.holdPoints as { id: string }[])[4].id = 'H2';
    });
    expect([where, says]).toEqual(['holdPoints[4].id', 'Hold point H2 is listed twice.']);
  });

  it('wants ranges the right way round', () => {
    expect(one((d) => Object.assign(d.limits as object, { closingNm: [100, 60] })).where).toBe(
      'limits.closingNm',
    );
  });

  it('wants what was done before the trainee takes over in order of time', () => {
    const done = (atS: number) => ({ atS, action: { kind: 'listen' } });
    expect(problemsOf(changed((d) => (d.prelude = [done(0), done(9)])))).toEqual([]);
    const { where, says } = one((d) => (d.prelude = [done(9), done(8)]));
    expect([where, says]).toEqual(['prelude[1].atS', 'The action is earlier than the one before it.']);
  });

  it('wants every piece by its own name and a stamp where the piece carries one', () => {
    const problems = problemsOf(
      changed((d) => {
        const kit = kitOf(d);
        kit[1].id = 'seatRing-34';
        kit[2].stamped = '4';
        kit[3].stamped = '1';
        delete kit[0].stamped;
      }),
    );
    expect(problems.map((p) => p.where)).toEqual([
      'job.kit[0].stamped',
      'job.kit[1].id',
      'job.kit[2].stamped',
      'job.kit[3].stamped',
    ]);
  });
});
