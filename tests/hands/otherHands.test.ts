import { describe, expect, it } from 'vitest';
import { drive, heavy, light, muddledBy, trusting, type Hand } from '../../src/core/hands/index.ts';
import { judge } from '../../src/core/judge/index.ts';
import { shipped } from '../scenarios/shipped.ts';

const judged = (name: string, hand: Hand) => {
  const scenario = shipped(name);
  const { entries, run } = drive(scenario, hand);
  const assessment = judge(scenario, { entries, endS: run.clockS });
  const wanting = (id: string) =>
    assessment.findings.flatMap((f) => (f.holdPoint === id && f.id === 'holdFalse' ? [f.items] : [])).flat();
  return { run, assessment, wanting, found: assessment.findings.map((f) => f.id) };
};

const sound = 'abandon-1in-tee-on-4in-main';
const sizes = [sound, 'abandon-34in-tee-on-12in-main', 'abandon-114in-tee-on-3in-main'] as const;

describe('the trusting crew', () => {
  const { run, assessment, wanting, found } = judged(sound, trusting);

  it('makes every move to the end, and no signature of it stands', () => {
    expect(run.rig.ending).toEqual({ kind: 'complete' });
    expect(assessment.verdict).toBe('critical');
    expect(assessment.holdPoints.filter((h) => h.outcome === 'held')).toEqual([]);
    expect(found).not.toContain('wrongSize');
  });

  it('is told at each signature what it did not look at', () => {
    expect(wanting('H1')).toContain('mainPressure');
    expect(wanting('H2')).toContain('held');
    expect(wanting('H4')).toContain('shutIn');
    expect(wanting('H5')).toContain('looked');
    expect(wanting('H7')).toContain('noFlow');
    expect(wanting('H11')).toContain('square');
    expect(wanting('H12')).toContain('fluid.closingPlug');
    expect(found).toContain('usedUninspected');
    expect(found).toContain('cutStopUnproved');
  });

  it('puts a mislabelled ring on and takes a main above the rating for what the tag says', () => {
    expect(judged('abandon-114in-tee-on-3in-main', trusting).found).toContain('unfitUsed');
    expect(judged('abandon-114in-tee-on-4in-main', trusting).found).toContain('wentOnAboveRating');
    expect(judged('abandon-34in-tee-on-3in-main', trusting).found).toContain('wentOnBossBeyondUse');
  });
});

describe.each(sizes)('on %s', (name) => {
  it('the heavy crew squeezes the rubber past firm and drives the keeper onto the stopper', () => {
    const { assessment, wanting, found } = judged(name, heavy);
    expect(assessment.verdict).toBe('critical');
    expect(found).toContain('stopperTorque');
    expect(wanting('H6')).toContain('gap');
    const stopper = assessment.findings.find((f) => f.id === 'stopperTorque')?.numbers;
    expect(stopper?.torqueNm).toBeGreaterThan(stopper?.highNm ?? Infinity);
  });

  it('the light crew leaves rubber and keeper short of what holds', () => {
    const { assessment, wanting, found } = judged(name, light);
    expect(assessment.verdict).toBe('critical');
    expect(found).toContain('stopperTorque');
    expect(wanting('H6')).toContain('torque');
    const stopper = assessment.findings.find((f) => f.id === 'stopperTorque')?.numbers;
    expect(stopper?.torqueNm).toBeLessThan(stopper?.lowNm ?? 0);
  });
});

describe('the muddled crew', () => {
  const seeds = [1, 2, 3, 4, 5, 6] as const;

  it('does the same twice by one seed, and something else by another', () => {
    const work = (seed: number) => drive(shipped(sound), muddledBy(seed)).entries.map((e) => e.action);
    expect(work(2)).toEqual(work(2));
    expect(work(2)).not.toEqual(work(3));
  });

  const runs = seeds.map((seed) => judged(sound, muddledBy(seed)));

  it('is never passed: it signs too early, does steps out of turn, or comes to a stop by them', () => {
    for (const { assessment } of runs) {
      expect(assessment.verdict).not.toBe('pass');
      expect(assessment.findings.length > 0 || assessment.ending === 'referred').toBe(true);
    }
    const signedEarly = runs.filter(({ found }) => found.includes('holdFalse'));
    expect(signedEarly.length).toBeGreaterThanOrEqual(2);
  });
});
