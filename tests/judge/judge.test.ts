import { describe, expect, it } from 'vitest';
import { constants } from '../../src/core/catalogue/index.ts';
import {
  AIR_KG_PER_MOL,
  assess,
  findingIds,
  GAS_KG_PER_MOL,
  judge,
  type JudgedRun,
} from '../../src/core/judge/index.ts';
import { exercise, found, hastyRun, outcomeOf, steadyRun } from './play.ts';

const steadyAssessment = () => assess(steadyRun().run);

describe('a steady crew on a sound job', () => {
  it('passes with every hold point held and hardly a point lost', () => {
    const assessment = steadyAssessment();
    expect(assessment.verdict).toBe('pass');
    expect(assessment.score).toBeGreaterThanOrEqual(95);
    expect(assessment.holdPoints.map((hold) => `${hold.id} ${hold.outcome}`)).toEqual(
      exercise().holdPoints.map(({ id }) => `${id} held`),
    );
    expect(assessment.ending).toBe('complete');
  });

  it('brings no more gas into the hole than its own parts leave, and says how much', () => {
    const { ledger, peakLelFraction } = steadyAssessment();
    expect(ledger.toExcavationKg).toBeGreaterThan(0.003);
    expect(ledger.toExcavationKg).toBeLessThan(0.012);
    expect(peakLelFraction).toBeLessThan(0.1);
  });
});

describe('a hasty crew', () => {
  it('fails critically, and the list says when and for what', () => {
    const assessment = assess(hastyRun().run);
    expect(assessment.verdict).toBe('critical');
    expect(found(assessment)).toEqual(
      expect.arrayContaining([
        'holdFalse',
        'holdMissed',
        'cutStopUnproved',
        'openedUnderPressure',
        'bledIntoHole',
        'highAlarm',
      ]),
    );
    for (const finding of assessment.findings) {
      expect(finding.atS).toBeGreaterThan(0);
      expect(finding.atS).toBeLessThanOrEqual(assessment.simulatedS);
    }
  });

  it('loses no heading more than it has, and every point lost has its finding', () => {
    const { headings, findings } = assess(hastyRun().run);
    for (const [heading, { got, of }] of Object.entries(headings)) {
      const lost = findings.filter((f) => f.heading === heading).reduce((sum, f) => sum + f.points, 0);
      expect(got).toBeGreaterThanOrEqual(0);
      expect(got + lost).toBeCloseTo(of, 6);
    }
  });
});

describe('the judge', () => {
  it('replays a record and believes no number written in it', () => {
    const driven = hastyRun();
    const replayed = judge(exercise(), { entries: driven.entries, endS: driven.run.clockS });
    const told = assess(driven.run);
    expect({ ...replayed, digest: '', engine: '' }).toEqual({ ...told, digest: '', engine: '' });
    expect(replayed.findings.length).toBeGreaterThan(10);
    replayed.findings.forEach((finding, i) => {
      for (const [name, value] of Object.entries(finding.numbers)) {
        expect(told.findings[i].numbers[name], `${finding.id} ${name}`).toBe(value);
        expect(Number.isFinite(value), `${finding.id} ${name}`).toBe(true);
        expect(Object.is(value, -0), `${finding.id} ${name}`).toBe(false);
      }
    });
  });

  it('never scores a run higher for more gas lost', () => {
    const { run } = steadyRun();
    let last = Infinity;
    for (const factor of [1, 2, 3, 5, 10, 30, 100]) {
      const worse: JudgedRun = {
        ...run,
        ledger: {
          ...run.ledger,
          toHoleMol: run.ledger.toHoleMol * factor,
          largestPuffMol: run.ledger.largestPuffMol * factor,
        },
        air: { ...run.air, peakLelShare: run.air.peakLelShare * factor },
      };
      const { score } = assess(worse);
      expect(score).toBeLessThanOrEqual(last);
      last = score;
    }
    expect(last).toBeLessThan(90);
  });

  it('scores a run lower for each hold point left unsigned', () => {
    const whole = steadyAssessment().score;
    for (const { id } of exercise().holdPoints) {
      const { run } = steadyRun();
      const facts = run.facts.filter((fact) => fact.fact !== 'signed' || fact.holdPoint !== id);
      const assessment = assess({ ...run, facts });
      expect(assessment.score, id).toBeLessThan(whole);
      expect(outcomeOf(assessment, id)).toBe('missed');
    }
  });

  it('holds its molar masses equal to the catalogue', () => {
    expect(GAS_KG_PER_MOL).toBe(constants.gasMolarMassKgPerMol.value);
    expect(AIR_KG_PER_MOL).toBe(constants.airMolarMassKgPerMol.value);
  });

  it('finds nothing that its catalogue does not name', () => {
    const named = new Set(Object.keys(findingIds));
    for (const { run } of [steadyRun(), hastyRun()]) {
      for (const id of found(assess(run))) expect(named.has(id), id).toBe(true);
    }
  });

  it('scales each heading with the weight the exercise gives it', () => {
    const { run } = hastyRun();
    const weights = { holdPoints: 20, gasControl: 20, technique: 20, kit: 20, abnormal: 20 };
    const { headings } = assess({ ...run, scenario: { ...run.scenario, weights } });
    for (const { of } of Object.values(headings)) expect(of).toBe(20);
    expect(headings.holdPoints.got).toBeLessThan(0.1);
  });
});
