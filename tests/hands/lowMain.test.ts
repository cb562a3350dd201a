import { describe, expect, it } from 'vitest';
import { drive, steady } from '../../src/core/hands/index.ts';
import { judge } from '../../src/core/judge/index.ts';
import { evidence } from '../../src/core/procedure/index.ts';
import type { Fact } from '../../src/core/rig/index.ts';
import type { RunState } from '../../src/core/run/index.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import { PSI_PA } from '../../src/core/units/index.ts';
import { crewFor, atPsig } from '../crew.ts';
import { paired } from '../scenarios/pairings.ts';

/** A tenth of an inch of water, Pa (1 in w.c. = 249.089 Pa). */
const TENTH_INCH_PA = 24.9089;

type ColumnRead = Extract<Fact, { fact: 'gauge.read' }>;
const columnReads = ({ facts }: RunState): ColumnRead[] =>
  facts.filter((f): f is ColumnRead => f.fact === 'gauge.read' && f.gauge === 'manometer');

/** The service fed from its far end past a curb valve that does not hold: the same to the column as a weeping stopper. */
const fedFromTheFarEnd = (scenario: Scenario, cdAM2: number): Scenario => {
  scenario.job.system.service.curbPassingCdAM2 = cdAM2;
  scenario.job.system.service.beyondCurbGaugePa = scenario.job.system.mainPressureGaugePa;
  return scenario;
};

describe('the manometer on the bleed', () => {
  it('shows what stands above the ball to a tenth of an inch of water, and no more than its 60 inches', () => {
    const crew = crewFor(atPsig(8)).upTo('sealedOnTee');
    expect(crew.tries({ kind: 'gauge.read', gauge: 'manometer' }), 'nothing to hang it on').toBe('notFitted');
    crew.barrelOn('socket', null).opensValve().rodDown().turnsRod(-8);
    crew.does({ kind: 'gauge.read', gauge: 'manometer' });
    expect(crew.last('gauge.read').trueGaugePa).toBeGreaterThan(7.9 * PSI_PA);
    expect(crew.last('gauge.read').readingGaugePa).toBeCloseTo(60 * 249.089, -2);
    crew.rodUp().shutsValve().bleedsDown().does({ kind: 'gauge.read', gauge: 'manometer' });
    const { readingGaugePa, trueGaugePa } = crew.last('gauge.read');
    expect(Math.abs(readingGaugePa - trueGaugePa)).toBeLessThanOrEqual(TENTH_INCH_PA / 2 + 0.1);
  });
});

describe('a service stopped on a main under 10 psig', () => {
  it.each([8, 9.5])('is shown dead by the manometer at %d psig, with every hold point held', (psig) => {
    const scenario = paired('4', '1', psig);
    const { entries, run } = drive(scenario, steady);
    const { verdict, findings, holdPoints } = judge(scenario, { entries, endS: run.clockS });
    expect([verdict, findings]).toEqual(['pass', []]);
    expect(holdPoints.filter(({ outcome }) => outcome !== 'held')).toEqual([]);
    expect(columnReads(run)).toHaveLength(2);
  });

  it('is read by the ear alone at 12 psig', () => {
    expect(columnReads(drive(paired('4', '1', 12), steady).run)).toHaveLength(0);
  });

  it('is not shown so by a column that rises more than a tenth of the main in two minutes', () => {
    // 0.02 mm² lets 6 mg/s into 11.6 L from 8 psig: about a psi in two minutes, with a bleed no ear would hear
    const leaking = drive(fedFromTheFarEnd(paired('4', '1', 8), 2e-8), steady).run;
    const [before, after] = columnReads(leaking);
    expect(after.readingGaugePa - before.readingGaugePa).toBeGreaterThan(0.1 * 8 * PSI_PA);
    expect(leaking.facts.at(-1)).toMatchObject({ fact: 'ended', ending: { kind: 'referred' } });
  });

  it('wants both readings, so far apart, over a shut bleed: an ear that heard nothing is no evidence there', () => {
    const scenario = paired('4', '1', 8);
    const { facts } = drive(scenario, steady).run;
    const signedAt = facts.findIndex((f) => f.fact === 'signed' && f.holdPoint === 'H4');
    const lacking = (kept: readonly Fact[]): string[] =>
      evidence('H4', kept, scenario.limits, scenario.job)
        .items.filter(({ met }) => !met)
        .map(({ id }) => id);
    const upTo = facts.slice(0, signedAt);
    expect(lacking(upTo)).toEqual([]);
    const isColumn = (f: Fact): boolean => f.fact === 'gauge.read' && f.gauge === 'manometer';
    expect(lacking(upTo.filter((f) => !isColumn(f)))).toEqual(['manometer']);
    const [, last] = upTo.filter(isColumn);
    expect(lacking(upTo.filter((f) => f !== last))).toEqual(['manometer']);
    const risen = upTo.map((f) =>
      f === last && f.fact === 'gauge.read' ? { ...f, readingGaugePa: 0.81 * PSI_PA } : f,
    );
    expect(lacking(risen)).toEqual(['manometer']);
  });
});
