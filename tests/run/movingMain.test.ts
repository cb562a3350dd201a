import { isDeepStrictEqual } from 'node:util';
import { describe, expect, it } from 'vitest';
import { drive, steady } from '../../src/core/hands/index.ts';
import { rigWeightN, seating, withMainMoving } from '../../src/core/rig/index.ts';
import { advance, replay } from '../../src/core/run/index.ts';
import { relay } from '../../src/core/run/settle.ts';
import { parseScenario } from '../../src/core/scenario/index.ts';
import { psi, toPsi } from '../../src/core/units/index.ts';
import { apiKgPerS, absPa, circleM2, gasKg, PSI_PA } from '../consequences/handbook.ts';
import { atPsig, crewFor, type Job } from '../crew.ts';
import { exercise } from '../scenario/exercise.ts';

type Feed = NonNullable<Job['system']['main']>;

const feeds =
  (main: Feed) =>
  (job: Job): void => {
    job.system.main = main;
  };
const bySchedule = (...points: readonly (readonly [number, number])[]): ((job: Job) => void) =>
  feeds({ by: 'schedule', points: points.map(([atS, psig]) => ({ atS, gaugePa: psi(psig) })) });

/** Seat and discharge of a small regulator on a street (assumed); what it draws is a 6 mm opening. */
const SEAT_M2 = 4e-5;
const DRAWN_M2 = 0.61 * circleM2(0.006);
const regulated = (change: Partial<Extract<Feed, { by: 'regulator' }>> = {}): ((job: Job) => void) =>
  feeds({
    by: 'regulator',
    inletGaugePa: psi(100),
    setGaugePa: psi(36),
    droopPa: psi(4),
    wideOpenCdAM2: SEAT_M2,
    creepCdAM2: 0,
    drawnCdAM2: DRAWN_M2,
    volumeM3: 2,
    ...change,
  });

const read = (crew: ReturnType<typeof crewFor>, gauge: 'main' | 'second'): number =>
  toPsi(crew.does({ kind: 'gauge.read', gauge }).last('gauge.read').trueGaugePa);

describe('a main whose pressure runs by a schedule', () => {
  it('stands at every time where the straight line between its points does, on every gauge', () => {
    const crew = crewFor(bySchedule([600, 47], [1200, 47], [1800, 17]));
    const line = (atS: number): number =>
      atS <= 600 ? 35 + (12 * atS) / 600 : atS <= 1200 ? 47 : Math.max(17, 47 - (30 * (atS - 1200)) / 600);
    for (const atS of [0, 137, 599, 600, 900, 1250, 1799, 1800, 2400]) {
      crew.waits(Math.max(0, atS - crew.clockS));
      const at = crew.clockS;
      expect(read(crew, 'main')).toBeCloseTo(line(at), 5);
      expect(toPsi(crew.gaugePa('main'))).toBeCloseTo(line(crew.clockS), 5);
    }
  });

  it('fills the tee and the service with it, and empties them back into itself', () => {
    const crew = crewFor(bySchedule([300, 60], [600, 10])).waits(300);
    expect(toPsi(crew.gaugePa('barrel'))).toBeCloseTo(60, 1);
    const filledKg = crew.lostKg('fromMain');
    // the service, 60 ft of NPS 1 (ASME B36.10M), takes what the gas law says; barrel and port are small beside it
    const serviceM3 = circleM2(1.049 * 0.0254) * 60 * 0.3048;
    expect(filledKg).toBeGreaterThan(gasKg(serviceM3, 25 * PSI_PA));
    expect(filledKg).toBeLessThan(1.05 * gasKg(serviceM3, 25 * PSI_PA));
    crew.waits(300);
    expect(toPsi(crew.gaugePa('service3'))).toBeCloseTo(10, 1);
    expect(crew.lostKg('fromMain')).toBeLessThan(0);
  });

  it('turns at its points to the last bit, however time is cut', () => {
    const run = crewFor(bySchedule([100.5, 50], [100.75, 20], [4000, 45])).upTo('plugDrawn').run;
    const whole = advance(run, run.clockS + 900);
    let cut = run;
    for (const part of [0.01, 0.2, 0.37, 0.5, 0.99, 1]) cut = advance(cut, run.clockS + part * 900);
    expect(isDeepStrictEqual(cut, whole)).toBe(true);
    expect(whole.closure).toBeLessThan(1e-9);
  });

  it('risen past the rating after the stop, slips a stopper that held, and the crew reads it before the tee', () => {
    const still = crewFor(atPsig(55)).upTo('stopProved').waits(1200);
    expect(still.told('stopper.slipped')).toHaveLength(0);
    const oily = (job: Job): void => {
      for (const piece of job.kit) if (piece.kind === 'boreStopper') piece.defects = { oily: true };
    };
    const crew = crewFor(atPsig(35), oily).upTo('stopProved');
    const stopS = crew.clockS;
    const rising = crewFor(atPsig(35), oily, bySchedule([stopS + 1, 35], [stopS + 600, 130]));
    rising.upTo('stopProved').waits(900);
    // the rod still holds it; the thrust it is held against is the main's own by then
    expect(read(rising, 'main')).toBeCloseTo(130, 3);
    const slipped = rising.letsGoOfRod().waits(30).told('stopper.slipped');
    expect(slipped.length).toBeGreaterThan(0);
    expect(slipped[0].thrustN).toBeGreaterThan(0.95 * 130 * PSI_PA * circleM2(1.049 * 0.0254));
    expect(crew.letsGoOfRod().waits(30).told('stopper.slipped')).toHaveLength(0);
  });

  it('risen past the rating before the coupling is opened, is read so, and the steady crew stops there', () => {
    const still = drive(exercise(), steady).run;
    const reads = still.facts.filter((f) => f.fact === 'gauge.read' && f.gauge === 'main');
    const [proofS, openS] = [reads[2].atS, reads[3].atS];
    const scenario = exercise();
    scenario.job.system.main = {
      by: 'schedule',
      points: [
        { atS: openS - 200, gaugePa: psi(35) },
        { atS: openS - 100, gaugePa: psi(61.5) },
      ],
    };
    const { entries, run } = drive(scenario, steady);
    const last = run.facts.filter((f) => f.fact === 'gauge.read' && f.gauge === 'main').at(-1);
    expect(openS).toBeGreaterThan(proofS + 600);
    expect(last).toMatchObject({ atS: openS, trueGaugePa: psi(61.5) });
    expect(entries.at(-1)?.action).toEqual({ kind: 'refer', reason: 'pressureAboveRating' });
    expect(run.facts.some((f) => f.fact === 'tee.free')).toBe(false);
  });

  it('lifts the test head’s relief at 66 psig as it rises under a plug that is out', () => {
    const still = crewFor().upTo('plugDrawn').underTest();
    const risesS = still.clockS;
    const crew = crewFor(bySchedule([risesS + 1, 35], [risesS + 601, 140]))
      .upTo('plugDrawn')
      .underTest();
    crew.waits(620);
    const [lifted] = crew.told('relief.lifted');
    expect(toPsi(lifted.headGaugePa)).toBeCloseTo(66, 1);
    // the straight line is there at that time: 105 psi in 600 s
    expect(lifted.atS).toBeGreaterThan(risesS + 1 + ((66 - 35) / 105) * 600 - 5);
    expect(lifted.atS).toBeLessThan(risesS + 1 + ((66 - 35) / 105) * 600 + 20);
    expect(still.waits(620).told('relief.lifted')).toHaveLength(0);
  });

  it('lifts the saddle off its second seat where it outgrows what chains and weight hold', () => {
    const drawnS = crewFor().upTo('teeDrawn').clockS;
    const crew = crewFor(bySchedule([drawnS + 1, 35], [drawnS + 601, 140])).upTo('teeDrawn');
    expect(crew.waits(60).told('saddle.lifted')).toHaveLength(0);
    const [lifted] = crew.waits(600).told('saddle.lifted');
    // gas lifts on the middle of the gasket's flange, with the pressure the line has by then
    const psig = 35 + (105 * (lifted.atS - drawnS - 1)) / 600;
    expect(toPsi(lifted.chamberGaugePa)).toBeCloseTo(psig, 0);
    expect(lifted.forceN / (psig * PSI_PA * circleM2(0.0836))).toBeCloseTo(1, 2);
    const { rig } = crew.run;
    expect(lifted.forceN / (seating(rig).clampN + rigWeightN(rig))).toBeCloseTo(1, 2);
  });

  it('falling under a plug that is out draws gas back from the chamber through the open bore', () => {
    const before = crewFor().upTo('plugDrawn');
    const fallsS = before.clockS;
    const crew = crewFor(bySchedule([fallsS + 1, 35], [fallsS + 301, 5]))
      .upTo('plugDrawn')
      .waits(400);
    expect(read(crew, 'main')).toBeCloseTo(5, 6);
    expect(toPsi(crew.gaugePa('chamber'))).toBeCloseTo(5, 1);
    expect(crew.lostKg('fromMain')).toBeLessThan(before.lostKg('fromMain'));
  });
});

describe('a main behind a regulator', () => {
  it('droops under what the street draws until the regulator passes as much', () => {
    const crew = crewFor(regulated()).waits(1800);
    const main = toPsi(crew.gaugePa('main'));
    // smooth-step opening of the drop below the setting; both openings by API 520-1
    const call = (36 - main) / 4;
    const passed = call * call * (3 - 2 * call) * apiKgPerS(SEAT_M2, absPa(100), absPa(main));
    const drawn = apiKgPerS(DRAWN_M2, absPa(main));
    expect(main).toBeGreaterThan(32);
    expect(main).toBeLessThan(35);
    expect(passed / drawn).toBeCloseTo(1, 2);
    expect(read(crew, 'main')).toBeCloseTo(main, 6);
  });

  it('creeps up past its setting once nothing is drawn, as fast as the seat passes', () => {
    const crew = crewFor(regulated({ drawnCdAM2: 0, creepCdAM2: 2e-7 })).waits(600);
    const [fromS, from] = [crew.clockS, crew.gaugePa('main')];
    crew.waits(600);
    const perS = (crew.gaugePa('main') - from) / (crew.clockS - fromS);
    // the service and tee fill with it: 2 m³ and 10.3 L
    const middle = toPsi((from + crew.gaugePa('main')) / 2);
    const kgPerS = apiKgPerS(2e-7, absPa(100), absPa(middle));
    expect(perS / (kgPerS / gasKg(2.0103, 1))).toBeCloseTo(1, 2);
    expect(toPsi(crew.gaugePa('main'))).toBeGreaterThan(36);
  });

  it('gives way when the bore stands open, where a main that stands still does not', () => {
    const open = (crew: ReturnType<typeof crewFor>): number => {
      crew.does(
        { kind: 'plug.turn', turns: -4, holdBack: true },
        { kind: 'plug.turn', turns: -4, holdBack: true },
      );
      return toPsi(crew.waits(60).gaugePa('main'));
    };
    expect(open(crewFor(atPsig(6)))).toBeCloseTo(6, 6);
    const weak = regulated({ setGaugePa: psi(6), droopPa: psi(2), drawnCdAM2: 0, wideOpenCdAM2: 1e-5 });
    expect(open(crewFor(atPsig(6), weak))).toBeLessThan(1);
  });
});

describe('a main made to move in the middle of a run', () => {
  it('goes on from what it is, straight to where it is sent, and an exercise without a feed stays word for word', () => {
    const crew = crewFor().upTo('sealedOnTee');
    const { rig } = crew.run;
    const atS = crew.clockS;
    expect(rig.job.system.main).toBeUndefined();
    crew.run = relay(crew.run, { ...rig, job: withMainMoving(rig.job, atS, psi(50), 300) }, atS);
    expect(toPsi(crew.waits(100).gaugePa('main'))).toBeCloseTo(40, 6);
    expect(toPsi(crew.waits(400).gaugePa('main'))).toBeCloseTo(50, 6);
    const againS = crew.clockS;
    const job = withMainMoving(crew.run.rig.job, againS, psi(20), 60);
    crew.run = relay(crew.run, { ...crew.run.rig, job }, againS);
    expect(toPsi(crew.waits(30).gaugePa('main'))).toBeCloseTo(35, 6);
    expect(toPsi(crew.waits(60).gaugePa('main'))).toBeCloseTo(20, 6);
  });

  it('takes a regulator on full of gas and leaves it without a puff in the hole', () => {
    const crew = crewFor().upTo('sealedOnTee');
    const { rig } = crew.run;
    const withFeed: Job = structuredClone(rig.job);
    regulated()(withFeed);
    crew.run = relay(crew.run, { ...rig, job: withFeed }, crew.clockS);
    expect(toPsi(crew.gaugePa('main'))).toBeCloseTo(35, 5);
    const lost = crew.lostKg('toHole');
    crew.run = relay(crew.run, { ...crew.run.rig, job: rig.job }, crew.clockS);
    expect(crew.lostKg('toHole') - lost).toBeLessThan(1e-9);
    expect(toPsi(crew.gaugePa('main'))).toBeCloseTo(35, 5);
  });
});

describe('an exercise that says how its main is fed', () => {
  it('is refused with a sentence and a place where its schedule runs back or its regulator would have to pump', () => {
    const problems = (main: Feed): readonly (readonly [string, string])[] => {
      const draft = exercise();
      draft.job.system.main = main;
      const parsed = parseScenario(draft);
      return 'problems' in parsed ? parsed.problems.map(({ where, says }) => [where, says]) : [];
    };
    const point = (atS: number) => ({ atS, gaugePa: psi(35) });
    expect(problems({ by: 'fixed' })).toEqual([]);
    expect(problems({ by: 'schedule', points: [point(10), point(20)] })).toEqual([]);
    expect(problems({ by: 'schedule', points: [point(10), point(10)] })).toEqual([
      [
        'job.system.main.points[1].atS',
        'The points of a schedule follow one another in time: 10 s is not after 10 s.',
      ],
    ]);
    expect(problems({ by: 'schedule', points: [point(0)] })[0][0]).toBe('job.system.main.points[0].atS');
    const backwards = exercise();
    regulated({ inletGaugePa: psi(30) })(backwards.job);
    expect(problems(backwards.job.system.main as Feed)[0][0]).toBe('job.system.main.inletGaugePa');
  });

  it('replays from its record to the same run', () => {
    const crew = crewFor(regulated()).upTo('plugDrawn');
    expect(replay(crew.scenario, crew.entries, undefined, crew.clockS)).toEqual(crew.run);
  });
});
