import { describe, expect, it } from 'vitest';
import { drive, felt, steady, type Driven } from '../../src/core/hands/index.ts';
import { judge, type Assessment } from '../../src/core/judge/index.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import { exercise } from '../scenario/exercise.ts';
import { atPsig, variant } from './variants.ts';

const judged = (scenario: Scenario, { entries, run }: Driven): Assessment =>
  judge(scenario, { entries, endS: run.clockS });
const driven = (scenario: Scenario) => {
  const result = drive(scenario, steady);
  return { ...result, assessment: judged(scenario, result) };
};

describe('the steady crew on the shipped exercise', () => {
  const { entries, run, assessment } = driven(exercise());

  it('hands the job back complete, with every hold point held and no finding against it', () => {
    expect(assessment.verdict).toBe('pass');
    expect(assessment.ending).toBe('complete');
    expect(assessment.findings).toEqual([]);
    expect(assessment.score).toBeGreaterThanOrEqual(95);
    expect(assessment.holdPoints.map((h) => [h.id, h.outcome])).toEqual(
      exercise().holdPoints.map(({ id }) => [id, 'held']),
    );
  });

  it('takes its time and its hands for it', () => {
    expect(entries.length).toBeGreaterThanOrEqual(120);
    expect(run.clockS).toBeGreaterThanOrEqual(40 * 60);
  });

  it('lets into the hole only what the parts hold at zero gauge, and bleeds the rest away', () => {
    // Expected amounts: the project's own reckoning for 76 mm parts (about 6 g, and about 30 g through the bleed).
    const { toExcavationKg, throughBleedKg } = assessment.ledger;
    expect(toExcavationKg).toBeGreaterThan(0.003);
    expect(toExcavationKg).toBeLessThan(0.012);
    expect(throughBleedKg).toBeGreaterThan(0.02);
    expect(throughBleedKg).toBeLessThan(0.045);
    expect(assessment.peakLelFraction).toBeLessThan(0.1);
  });

  it('signs for nothing that its evidence did not show at that moment', () => {
    const signed = run.facts.filter((f) => f.fact === 'signed').map((f) => f.holdPoint);
    expect(signed).toEqual(exercise().holdPoints.map(({ id }) => id));
  });
});

describe('the same crew, unchanged, on other jobs', () => {
  it.each([
    ['a main at 20 psig', atPsig(20)],
    ['a main at 55 psig', atPsig(55)],
    ['a main of NPS 3, which needs cradle blocks', variant((d) => void (d.job.workpiece.mainNps = '3'))],
    ['200 ft of service', variant((d) => void (d.job.system.service.lengthM = 60.96))],
    ['a boss that is pitted but fit', variant((d) => void (d.job.workpiece.boss = 'pitted'))],
    ['scale in the bore', variant((d) => void (d.job.workpiece.boreScale = true))],
  ])('completes and passes on %s', (_, scenario) => {
    const { assessment } = driven(scenario);
    expect(assessment.findings.map((f) => f.id)).toEqual([]);
    expect([assessment.verdict, assessment.ending]).toEqual(['pass', 'complete']);
    expect(assessment.score).toBeGreaterThanOrEqual(95);
  });

  it('puts a cradle block under each chain of a small main and none under a large one', () => {
    const blocks = (scenario: Scenario) =>
      drive(scenario, steady).entries.filter(
        ({ action }) => action.kind === 'piece.place' && action.piece.startsWith('cradleBlock'),
      ).length;
    expect(blocks(variant((d) => void (d.job.workpiece.mainNps = '3')))).toBe(2);
    expect(blocks(exercise())).toBe(0);
  });

  const referred = (change: (draft: Scenario) => void) =>
    variant((draft) => {
      change(draft);
      draft.intendedEnding = 'referred';
    });
  it.each([
    ['a main at 61 psig, above the rating', atPsig(61, 'referred'), 'pressureAboveRating'],
    ['a boss beyond use', referred((d) => void (d.job.workpiece.boss = 'beyondUse')), 'bossBeyondUse'],
    ['a thin wall', referred((d) => void (d.job.workpiece.wallSound = false)), 'wallUnsound'],
    ['suspect wrap', referred((d) => void (d.job.workpiece.wrap = 'suspect')), 'suspectWrap'],
    [
      'a top plug that takes 350 N·m to break',
      referred((d) => void (d.job.workpiece.plugBreakNm = 350)),
      'plugSeized',
    ],
    ['a top plug that passes', referred((d) => void (d.job.workpiece.plugLeakCdAM2 = 1e-8)), 'proofFails'],
  ])('stops and refers back on %s', (_, scenario, reason) => {
    const { run, assessment } = driven(scenario);
    expect(run.rig.ending).toEqual({ kind: 'referred', reason });
    expect(assessment.ending).toBe('referred');
    expect(assessment.verdict).toBe('pass');
  });

  it('sets a doubtful piece aside and takes the other of its kind', () => {
    const scenario = variant((draft) => {
      const sound = draft.job.kit.find((k) => k.id === 'boreStopper-1');
      if (!sound) throw new Error('the kit lacks its stopper');
      sound.defects = { rubberWornCdAM2: 5e-8 };
      draft.job.kit.push({ id: 'boreStopper-1-new', kind: 'boreStopper', stamped: '1' });
    });
    const { run, assessment } = driven(scenario);
    expect(run.rig.kit['boreStopper-1'].rejected).toBe(true);
    expect(run.rig.stopper.piece).toBe('boreStopper-1-new');
    expect(assessment.verdict).toBe('pass');
  });
});

describe('what a crew is given', () => {
  it('is a reading or a feeling, never the truth beside it', () => {
    const { run } = drive(exercise(), steady);
    const names = new Set(felt(run.facts).flatMap((fact) => Object.keys(fact)));
    for (const name of names) expect(name).not.toMatch(/^true|gasMol|legForce|thrust|belowPort|gapM|kg/i);
    expect(run.facts.some((fact) => 'trueGaugePa' in fact)).toBe(true);
  });

  it('leads to the same acts where every number that was taken away is another', () => {
    const { run } = drive(exercise(), steady);
    const scrambled = run.facts.map((fact) =>
      fact.fact === 'gauge.read'
        ? { ...fact, trueGaugePa: -1 }
        : fact.fact === 'stopper.left'
          ? { ...fact, belowPortM: -1 }
          : fact,
    );
    expect(felt(scrambled)).toEqual(felt(run.facts));
  });
});
