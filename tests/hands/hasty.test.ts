import { describe, expect, it } from 'vitest';
import { drive, hasty } from '../../src/core/hands/index.ts';
import { judge } from '../../src/core/judge/index.ts';
import { exercise } from '../scenario/exercise.ts';
import { atPsig } from './variants.ts';

const judged = (scenario: ReturnType<typeof exercise>) => {
  const { entries, run } = drive(scenario, hasty);
  return { run, assessment: judge(scenario, { entries, endS: run.clockS }) };
};

describe('the hasty crew', () => {
  const { run, assessment } = judged(exercise());

  it('ends where somebody would have been hurt, and fails critically', () => {
    expect(assessment.verdict).toBe('critical');
    expect(run.rig.ending).toEqual({ kind: 'hurt', cause: 'stackThrown' });
    expect(assessment.score).toBeLessThan(50);
  });

  it('is found out in each thing it leaves out, with the time of each', () => {
    const found = new Map(assessment.findings.map((f) => [f.id, f]));
    for (const id of [
      'holdFalse',
      'holdMissed',
      'noHoldBack',
      'facesNotCleaned',
      'usedUninspected',
      'plugNotMarked',
      'plugNotSnugged',
      'newJointUnchecked',
      'bledIntoHole',
      'depthNotMeasured',
      'cutStopUnproved',
      'pipeUnsupported',
      'edgesNotFiled',
      'openedUnderPressure',
      'thrown',
    ] as const) {
      expect(found.get(id)?.atS, id).toBeGreaterThan(0);
    }
    expect(assessment.holdPoints.some((h) => h.outcome === 'held')).toBe(false);
  });

  it('signs H1 and is past it within two minutes', () => {
    const signed = run.facts.find((f) => f.fact === 'signed');
    expect(signed?.atS).toBeLessThan(120);
  });

  it('is not hurt by the stack on a main at 5 psig, and is told critical all the same', () => {
    const low = judged(atPsig(5));
    expect(low.run.rig.ending?.kind).not.toBe('hurt');
    expect(low.assessment.verdict).toBe('critical');
  });
});
