import { describe, expect, it } from 'vitest';
import { drive, hasty, steady } from '../../src/core/hands/index.ts';
import { judge } from '../../src/core/judge/index.ts';
import { perform } from '../../src/desk/run/perform.ts';
import { besideOf, evidenceOf, watchedS } from '../../src/desk/run/readOf.ts';
import { alignedS, pairStages, stagesOf } from '../../src/desk/run/stages.ts';
import { momentAt } from '../../src/session/index.ts';
import { yardScenario } from '../session/yard.ts';

const scenario = yardScenario();
const good = drive(scenario, steady);
const poor = drive(scenario, hasty);
const goodRun = perform(scenario, good.entries, good.run.clockS);
const poorRun = perform(scenario, poor.entries, poor.run.clockS);

describe('a run under review', () => {
  it('is performed to the very state it ended in, and any moment of it is a short way from one that is kept', () => {
    expect(goodRun.refused).toBeNull();
    expect(goodRun.end).toEqual(good.run);
    const { moments } = goodRun;
    const widestS = Math.max(...moments.slice(1).map((moment, i) => moment.clockS - moments[i].clockS));
    expect(widestS).toBeLessThanOrEqual(64);
    expect(momentAt(goodRun, 1234.5).clockS).toBe(1234.5);
  });

  it('stops where the rig refuses, and says at which action', () => {
    const without = good.entries.filter(({ action }) => action.kind !== 'rod.load');
    const broken = perform(scenario, without, good.run.clockS);
    expect(broken.refused?.entry).toBeGreaterThan(0);
    expect(broken.end.clockS).toBeLessThan(good.run.clockS);
  });

  it('has beside each hold point what was read since the one before it, and what was true', () => {
    const { holdPoints } = judge(scenario, { entries: good.entries, endS: good.run.clockS });
    const holds = evidenceOf(goodRun.end, holdPoints);
    expect(holds.map(({ id }) => id)).toEqual(scenario.holdPoints.map(({ id }) => id));
    const second = holds[1];
    expect(second.items.every(({ met }) => met)).toBe(true);
    const gauges = second.read.filter(({ fact }) => fact === 'gauge.read');
    expect(gauges.length).toBeGreaterThan(2);
    for (const fact of second.read) expect(fact.atS).toBeGreaterThanOrEqual(holds[0].signedS ?? 0);
    const beside = besideOf(gauges[gauges.length - 1]);
    expect(Math.abs((beside?.read ?? 0) - (beside?.truth ?? 1e6))).toBeLessThan(10_000);
    const held = Math.max(...second.read.map((fact, i) => watchedS(fact, second.read.slice(0, i)) ?? 0));
    expect(held).toBeGreaterThanOrEqual(scenario.limits.holdS);
  });

  it('shows a signature without its evidence as what was wanting', () => {
    const { holdPoints } = judge(scenario, { entries: poor.entries, endS: poor.run.clockS });
    const bad = evidenceOf(poorRun.end, holdPoints).filter(
      ({ outcome }) => outcome === 'false' || outcome === 'missed',
    );
    expect(bad.length).toBeGreaterThan(0);
    for (const hold of bad) expect(hold.items.some(({ met }) => !met)).toBe(true);
  });

  it('is laid on another stage by stage, whatever each took', () => {
    const pairs = pairStages(
      stagesOf(poorRun.end),
      poorRun.end.clockS,
      stagesOf(goodRun.end),
      goodRun.end.clockS,
    );
    const both = pairs.filter(({ one, other }) => one !== null && other !== null);
    expect(both.length).toBeGreaterThan(3);
    for (const { one, other } of both) {
      if (one === null || other === null) continue;
      expect(alignedS(pairs, other.atS)).toBeCloseTo(one.atS, 6);
      expect(alignedS(pairs, other.atS + other.tookS / 2)).toBeCloseTo(one.atS + one.tookS / 2, 6);
    }
    const own = pairStages(
      stagesOf(goodRun.end),
      goodRun.end.clockS,
      stagesOf(goodRun.end),
      goodRun.end.clockS,
    );
    expect(alignedS(own, 1000)).toBeCloseTo(1000, 6);
  });
});
