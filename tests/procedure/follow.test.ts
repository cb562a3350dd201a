import { describe, expect, it } from 'vitest';
import {
  follow,
  guards,
  procedureAtStart,
  safeStates,
  stages,
  stagesOf,
  type ProcedureValue,
} from '../../src/core/procedure/index.ts';
import { holdPointIds, type Fact, type FactBody, type HoldPointId } from '../../src/core/rig/index.ts';
import { steadyRun } from '../judge/play.ts';

const { run } = steadyRun();
const { limits } = run.scenario;
const tieIn = { id: 'tieIn-1', kind: 'tieIn', stamped: '1' } as const;
const job = { ...run.scenario.job, kit: [...run.scenario.job.kit, tieIn] };

function told(...bodies: readonly FactBody[]): ProcedureValue {
  const facts: Fact[] = bodies.map((body, i) => ({ atS: i, ...body }));
  return facts.reduce(
    (value, fact, i) => follow(value, fact, { job, limits, facts: facts.slice(0, i + 1) }),
    procedureAtStart(),
  );
}

const newTee: FactBody = {
  fact: 'renewal.turned',
  engagedTurns: 6.2,
  torqueNm: 40,
  crossed: false,
  offHeadingRad: 0,
  trueOffHeadingRad: 0,
  backward: false,
};

const begins: Readonly<Record<HoldPointId, readonly FactBody[]>> = {
  H1: [{ fact: 'plug.turned', turnsBack: 0.05, torqueNm: 180, sinceMark: 0.05 }],
  H2: [{ fact: 'plug.turned', turnsBack: 0.2, torqueNm: 20, sinceMark: 0.2 }],
  H3: [
    { fact: 'done', action: { kind: 'rod.load', piece: 'boreStopper-1' } },
    { fact: 'rod.moved', travelM: 0.2, feltN: 30 },
  ],
  H4: [{ fact: 'stopper.left', belowPortM: 0.004, torqueNm: 2.3 }],
  H5: [{ fact: 'keeper.turned', engagedTurns: 1, torqueNm: 3, heldBack: true, gapM: 0.02 }],
  H6: [{ fact: 'branch.cut', part: 'pilot', pressureGaugePa: 0, bonded: true }],
  H7: [{ fact: 'branch.cut', part: 'through', pressureGaugePa: 0, bonded: true }],
  H8: [
    { fact: 'done', action: { kind: 'tee.turn', turns: -0.08, holdBack: true } },
    { fact: 'tee.turned', turnsBack: 0.08, torqueNm: 220, heldBack: true },
  ],
  H9: [
    { fact: 'branch.cut', part: 'through', pressureGaugePa: 0, bonded: true },
    { fact: 'tee.turned', turnsBack: 0.3, torqueNm: 20, heldBack: true },
  ],
  H10: [{ fact: 'tee.turned', turnsBack: 3.2, torqueNm: 20, heldBack: true }],
  H11: [
    { fact: 'tee.free', chamberClosed: true, thrustN: 0 },
    { fact: 'piece.removed', piece: 'isolationValve', pressureGaugePa: 0, thrustN: 0, gasMol: 0 },
  ],
  R1: [newTee],
  R2: [newTee, { fact: 'chain.released', forceN: 0, chamberGaugePa: 0 }],
  R3: [{ fact: 'piece.placed', piece: 'tieIn-1', fits: true }],
  R4: [
    newTee,
    { fact: 'done', action: { kind: 'keeper.turn', turns: -0.3, holdBack: true } },
    { fact: 'keeper.turned', engagedTurns: 6.7, torqueNm: 30, heldBack: true, gapM: 0.003 },
  ],
  R5: [
    { fact: 'newPlug.turned', engagedTurns: 6.2, torqueNm: 70, crossed: false },
    { fact: 'chain.released', forceN: 0, chamberGaugePa: 0 },
  ],
  R6: [{ fact: 'site.done', task: 'relight' }],
  H12: [{ fact: 'site.done', task: 'cover' }],
};

describe('a hold point', () => {
  it.each(holdPointIds.map((id) => [id]))('%s is missed when its guarded work begins unsigned', (id) => {
    expect(told(...begins[id]).holds[id]).toBe('missed');
  });

  it.each(holdPointIds.map((id) => [id]))(
    '%s is passed when its guarded work begins under a signature',
    (id) => {
      expect(told({ fact: 'signed', holdPoint: id }, ...begins[id]).holds[id]).toBe('passed');
    },
  );

  it.each(holdPointIds.map((id) => [id]))('%s takes a signature back only until then', (id) => {
    const sign: FactBody = { fact: 'signed', holdPoint: id };
    const withdraw: FactBody = { fact: 'withdrawn', holdPoint: id };
    expect(told(sign, withdraw).holds[id]).toBe('open');
    expect(told(sign, withdraw, ...begins[id]).holds[id]).toBe('missed');
    expect(told(sign, ...begins[id], withdraw).holds[id]).toBe('passed');
    expect(told(...begins[id], sign).holds[id]).toBe('missed');
  });

  it('H2 lets the plug’s bite be broken by an eighth of a turn', () => {
    const eighth: FactBody = { fact: 'plug.turned', turnsBack: 0.125, torqueNm: 180, sinceMark: 0.125 };
    expect(told(eighth).holds.H2).toBe('open');
  });

  it('H8 is not begun by a tee that turned because nobody held back on the plug', () => {
    expect(told({ fact: 'tee.turned', turnsBack: 0.05, torqueNm: 180, heldBack: false }).holds.H8).toBe(
      'open',
    );
  });

  it('listens only to the kinds of fact that can begin its work', () => {
    for (const id of holdPointIds) expect(guards[id].kinds.length).toBeLessThanOrEqual(3);
  });
});

describe('the stages', () => {
  it('go forward through a whole job and never back', () => {
    let value = procedureAtStart();
    const seen = [value.stage];
    run.facts.forEach((fact, i) => {
      value = follow(value, fact, { job, limits, facts: run.facts.slice(0, i + 1) });
      if (value.stage !== seen[seen.length - 1]) seen.push(value.stage);
    });
    expect(seen).toEqual(stagesOf(run.scenario.job));
    expect(value).toEqual(run.procedure);
  });

  it('each have a nearest safe state, and past the last thread only forward', () => {
    for (const stage of stages) expect(safeStates[stage].id.length).toBeGreaterThan(0);
    expect(safeStates.s10.forwardOnly).toBe(true);
    expect(safeStates.s9.forwardOnly).toBe(false);
  });

  it('cost a full job less than a hundredth of a second of one core to follow', () => {
    const once = (): number => {
      const start = process.cpuUsage();
      let value = procedureAtStart();
      for (const fact of run.facts) value = follow(value, fact, { job, limits, facts: run.facts });
      return process.cpuUsage(start).user / 1000;
    };
    const times = Array.from({ length: 7 }, once).sort((a, b) => a - b);
    const perFactUs = (times[0] / run.facts.length) * 1000;
    console.log(`follow: ${perFactUs.toFixed(2)} µs a fact, ${times[0].toFixed(2)} ms a job`);
    expect(times[0]).toBeLessThan(10);
  });
});
