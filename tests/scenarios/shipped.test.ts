import { describe, expect, it } from 'vitest';
import { drive, hasty, steady } from '../../src/core/hands/index.ts';
import { assess, judge } from '../../src/core/judge/index.ts';
import { due } from '../../src/core/procedure/index.ts';
import { advance, attempt, begin, could, read, type RunState } from '../../src/core/run/index.ts';
import { holdPointIds } from '../../src/core/rig/index.ts';
import { PSI_PA } from '../../src/core/units/index.ts';
import { blowDownS } from './blowDown.ts';
import { notesOf, shipped, shippedNames } from './shipped.ts';

const all = shippedNames.map((name) => ({ name, scenario: shipped(name) }));
const sound = all.filter(({ scenario }) => scenario.intendedEnding === 'complete');
const toRefuse = all.filter(({ scenario }) => scenario.intendedEnding === 'referred');

/** The handbook's figures by tee size (assumed, the kit's card): keeper least, stopper firm. */
const card = {
  '3/4': { keeperNm: 100, firmNm: [1.2, 1.6] },
  '1': { keeperNm: 135, firmNm: [2, 2.5] },
  '1-1/4': { keeperNm: 180, firmNm: [4, 5] },
} as const;

describe('the shipped exercises', () => {
  it('are in folders of their own name, each with its notes, in the yard of Harrow Vale Gas', () => {
    for (const { name, scenario } of all) {
      expect(scenario.id).toBe(name);
      expect(scenario.workOrder.operator).toBe('Harrow Vale Gas, training yard');
    }
    for (const { name } of all) {
      const notes = notesOf(name);
      for (const part of ['What it teaches', 'What should happen', 'Where the idea comes from'])
        expect(notes, name).toContain(`## ${part}`);
      expect(notes, name).toMatch(/[Cc]ommon practice, no source|CFR/);
      expect(notes, name).toContain('it does not qualify');
    }
  });

  it('have each an order, an address, a title and a seed of their own', () => {
    for (const of of ['number', 'address'] as const)
      expect(new Set(all.map(({ scenario }) => scenario.workOrder[of])).size).toBe(all.length);
    expect(new Set(all.map(({ scenario }) => scenario.title)).size).toBe(all.length);
    expect(new Set(all.map(({ scenario }) => scenario.seed)).size).toBe(all.length);
  });

  it('cover every tee, small and large mains, and 20 to 55 psig', () => {
    const jobs = sound.map(({ scenario }) => scenario.job);
    expect(new Set(jobs.map((job) => job.workpiece.teeSize))).toEqual(new Set(['3/4', '1', '1-1/4']));
    const mains = new Set(jobs.map((job) => job.workpiece.mainNps));
    for (const main of ['1-1/4', '1-1/2', '2', '3', '4', '6', '8', '10', '12'] as const)
      expect(mains, main).toContain(main);
    const psig = jobs.map((job) => job.system.mainPressureGaugePa / PSI_PA);
    expect(Math.min(...psig)).toBeLessThanOrEqual(20.01);
    expect(Math.max(...psig)).toBeGreaterThanOrEqual(54.99);
    expect(toRefuse.length).toBeGreaterThanOrEqual(3);
  });

  it('do not give away by their titles what has to be found', () => {
    for (const { scenario } of all.filter(({ scenario: { kind } }) => kind === 'job'))
      expect(scenario.title).not.toMatch(/refuse|refer|stop|worn|above|suspect|beyond|mislabel/i);
  });

  it.each(all.map(({ name, scenario }) => [name, scenario] as const))(
    '%s asks for the torques of its own tee, and the hiss of its own service',
    (_, { job, limits, workOrder }) => {
      const { teeSize } = job.workpiece;
      expect(limits.keeperNm).toBe(card[teeSize].keeperNm);
      expect(limits.stopperFirmNm).toEqual(card[teeSize].firmNm);
      expect(workOrder.says.join(' ')).toContain(`${card[teeSize].keeperNm} N·m`);
      const { service, orderPressureGaugePa } = job.system;
      const expected = blowDownS(service.nps, orderPressureGaugePa / PSI_PA, service.lengthM);
      expect(Math.abs(limits.expectedHissS - expected)).toBeLessThan(0.1);
    },
  );
});

describe.each(sound.map(({ name, scenario }) => [name, scenario] as const))('%s', (_, scenario) => {
  const { entries, run } = drive(scenario, steady);
  const assessment = judge(scenario, { entries, endS: run.clockS });

  it('is handed back complete by the steady crew, every hold point held', () => {
    expect(assessment.findings).toEqual([]);
    expect([assessment.verdict, assessment.ending]).toEqual(['pass', 'complete']);
    expect(assessment.score).toBeGreaterThanOrEqual(95);
    expect(assessment.holdPoints.map((h) => [h.id, h.outcome])).toEqual(
      scenario.holdPoints.map(({ id }) => [id, 'held']),
    );
    const own = holdPointIds.filter((id) =>
      scenario.work === 'abandon' ? !id.startsWith('R') : id !== 'H11',
    );
    if (scenario.kind === 'job')
      expect(new Set(scenario.holdPoints.map(({ id }) => id))).toEqual(new Set(own));
  });

  it('lets its service out in the time the bleed should take, within 5 % and a second of watching', () => {
    if (!run.facts.some((f) => f.fact === 'stopper.squeezed')) return;
    const longest = Math.max(...run.facts.flatMap((f) => (f.fact === 'bleed.quiet' ? [f.hissedS] : [])));
    const { expectedHissS } = scenario.limits;
    expect(Math.abs(longest - expectedHissS)).toBeLessThan(0.05 * expectedHissS + 1);
  });

  it('is led to its end by the coach', () => {
    const led = assess(obey(scenario));
    expect([led.verdict, led.ending]).toEqual(['pass', 'complete']);
  });

  it('is not passed by the hasty crew', () => {
    const driven = drive(scenario, hasty);
    expect(judge(scenario, { entries: driven.entries, endS: driven.run.clockS }).verdict).not.toBe('pass');
  });
});

describe('an exercise in which stopping is right from the start', () => {
  it.each([
    ['abandon-114in-tee-on-4in-main', 'pressureAboveRating'],
    ['abandon-34in-tee-on-3in-main', 'bossBeyondUse'],
    ['abandon-1in-tee-on-6in-main', 'suspectWrap'],
  ])('%s is referred back for %s before a wrench is on the plug', (name, reason) => {
    const scenario = shipped(name);
    const { entries, run } = drive(scenario, steady);
    expect(run.rig.ending).toEqual({ kind: 'referred', reason });
    expect(run.facts.some((f) => f.fact === 'plug.turned')).toBe(false);
    const assessment = judge(scenario, { entries, endS: run.clockS });
    expect([assessment.verdict, assessment.score]).toEqual(['pass', 100]);
    expect(obey(scenario).rig.ending).toEqual({ kind: 'referred', reason });
  });

  it.each(toRefuse.map(({ name, scenario }) => [name, scenario] as const))(
    '%s fails whoever goes on with it',
    (_, scenario) => {
      const { entries, run } = drive(scenario, hasty);
      expect(judge(scenario, { entries, endS: run.clockS }).verdict).toBe('critical');
    },
  );
});

describe('bad pieces on the board', () => {
  it.each([
    ['abandon-1in-tee-on-8in-main', ['boreStopper-1', 'sightCap']],
    ['abandon-114in-tee-on-3in-main', ['closingPlug-114', 'seatRing-114']],
  ])('of %s are found, rejected and replaced by the spare', (name, bad) => {
    const { run } = drive(shipped(name), steady);
    const rejected = Object.values(run.rig.kit).filter((piece) => piece.rejected);
    expect(rejected.map((piece) => piece.id).sort((a, b) => (a < b ? -1 : 1))).toEqual(bad);
    for (const id of bad) {
      const inspected = run.facts.find((f) => f.fact === 'piece.inspected' && f.piece === id);
      expect(inspected?.fact === 'piece.inspected' && inspected.found.length).toBeGreaterThan(0);
      expect(run.facts.some((f) => f.fact === 'piece.placed' && f.piece === id)).toBe(false);
    }
  });
});

/** Does whatever the coach says is due until the run ends. */
function obey(scenario: ReturnType<typeof shipped>): RunState {
  let run = begin(scenario);
  for (let steps = 0; steps < 900 && run.rig.ending === null; steps += 1) {
    const next = due(run, (action) => could(run, action) === null, read(run));
    if (next === null) break;
    if (next.action === null) {
      run = advance(run, run.clockS + (next.waitS ?? 1));
      continue;
    }
    const attempted = attempt(run, next.action);
    if ('hindrance' in attempted) throw new Error(`${next.why}: ${attempted.hindrance}`);
    run = advance(attempted.run, attempted.run.busyUntilS);
  }
  return run;
}
