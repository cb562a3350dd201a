import { describe, expect, it } from 'vitest';
import { drive, steady } from '../../src/core/hands/index.ts';
import { assess } from '../../src/core/judge/index.ts';
import type { Action, Fact } from '../../src/core/rig/index.ts';
import { before, changing, deviate, exercise, found, indexOf, outcomeOf, play, signs, stepsOf, steadyRun, type Step, without } from './play.ts'; // prettier-ignore

/** A deviation that a good crew may make must cost nothing. */
function costsNothing(change: (steps: readonly Step[]) => readonly Step[]): void {
  const { assessment, dropped } = deviate(change);
  expect(dropped.filter((action) => action.kind !== 'sign')).toEqual([]);
  expect(assessment.findings).toEqual([]);
  expect(assessment.verdict).toBe('pass');
}

const headReads = (): number[] =>
  steadyRun().entries.flatMap((e, i) =>
    e.action.kind === 'gauge.read' && e.action.gauge === 'head' ? [i] : [],
  );

describe('a good crew is not punished for', () => {
  it('topping up in the settling minute', () => {
    const lastPump = headReads()[1] - 1;
    expect(steadyRun().entries[lastPump].action.kind).toBe('pump.stroke');
    const toppedUp = (steps: readonly Step[]): readonly Step[] => [
      ...steps.slice(0, lastPump + 1),
      { action: { kind: 'pump.stroke', strokes: 1 }, gapS: 2 },
      ...steps.slice(lastPump + 1),
    ];
    const { run } = deviate(toppedUp);
    const held = run.facts.flatMap((f) =>
      f.fact === 'gauge.read' && f.gauge === 'head' ? [f.readingGaugePa] : [],
    )[2];
    const value = `${(held / 6894.757).toFixed(1)} psig`;
    const writes = (a: Action): boolean => a.kind === 'record.write' && a.field === 'proof1';
    costsNothing((steps) =>
      changing(writes, () => ({ kind: 'record.write', field: 'proof1', value }))(toppedUp(steps)),
    );
  });

  it('turns that were uneven on the way and even at the end', () => {
    costsNothing((steps) => {
      const from = steps.findIndex((s) => s.action.kind === 'tensioner.turn');
      let to = from;
      while (steps[to].action.kind === 'tensioner.turn') to += 1;
      const side = (step: Step): number =>
        step.action.kind === 'tensioner.turn' && step.action.side === 'left' ? 0 : 1;
      const block = [...steps.slice(from, to)].sort((a, b) => side(a) - side(b));
      expect(block.length).toBeGreaterThan(8);
      return [...steps.slice(0, from), ...block, ...steps.slice(to)];
    });
  });

  it('throwing out a sound piece it did not trust', () => {
    costsNothing(before(signs('H1'), { kind: 'piece.reject', piece: 'seatRing-34' }));
  });

  it('bleeding twice before the barrel comes off', () => {
    const off = (a: Action): boolean => a.kind === 'piece.remove' && a.piece === 'rodBarrel';
    costsNothing(
      before(
        off,
        { kind: 'bleed.turn', angleRad: -Math.PI / 2 },
        { kind: 'bleed.turn', angleRad: Math.PI / 2 },
      ),
    );
  });

  it('reading the gauge once more during the hold', () => {
    const end = headReads()[2];
    costsNothing((steps) => [
      ...steps.slice(0, end),
      { action: { kind: 'gauge.read', gauge: 'head' }, gapS: 150 },
      { ...steps[end], gapS: steps[end].gapS - 150 },
      ...steps.slice(end + 1),
    ]);
  });

  it('being slow and careful', () => {
    costsNothing((steps) => steps.map((step) => ({ ...step, gapS: step.gapS * 1.25 })));
  });

  it('a harmless look, anywhere', () => {
    const looks: readonly Action[] = [
      { kind: 'look', at: 'wall' },
      { kind: 'listen' },
      { kind: 'detector.read', where: 'breathing' },
    ];
    for (const id of ['H2', 'H5', 'H9', 'H12']) costsNothing(before(signs(id), ...looks));
  });

  it('doing in another order what may be done in any', () => {
    costsNothing((steps) => {
      const wall = steps.findIndex((s) => s.action.kind === 'look' && s.action.at === 'wall');
      const boss = steps.findIndex((s) => s.action.kind === 'look' && s.action.at === 'boss');
      const order = [...steps];
      [order[wall], order[boss]] = [steps[boss], steps[wall]];
      return order;
    });
    const bonds = (a: Action): boolean => a.kind === 'bond.clamp' && a.end === 'tee' && a.clamped;
    costsNothing((steps) =>
      before(signs('H6'), { kind: 'bond.clamp', end: 'tee', clamped: true })(without(bonds)(steps)),
    );
  });

  it('a signature by mistake, withdrawn before the work it guards', () => {
    const { assessment } = deviate(
      before(signs('H2'), { kind: 'sign', holdPoint: 'H6' }, { kind: 'withdraw', holdPoint: 'H6' }),
    );
    expect(assessment.findings).toEqual([]);
  });

  it('a gauge that lied where no required check could show it: misled, and no blame', () => {
    const { run } = steadyRun();
    const signed = run.facts.findIndex((f) => f.fact === 'signed' && f.holdPoint === 'H2');
    const facts = run.facts.map((fact, i): Fact => {
      if (i > signed || fact.fact !== 'gauge.read' || fact.gauge !== 'head') return fact;
      return { ...fact, trueGaugePa: fact.trueGaugePa * 0.5 };
    });
    const assessment = assess({ ...run, facts });
    expect(outcomeOf(assessment, 'H2')).toBe('misled');
    expect(assessment.score).toBe(assess(run).score);
    expect(assessment.verdict).toBe('pass');
  });

  it('one cause twice: a keeper pulled without hold-back costs its hold point, not the technique as well', () => {
    const { assessment } = deviate(
      changing(
        (a) => a.kind === 'keeper.pull',
        (a) => (a.kind === 'keeper.pull' ? { ...a, holdBack: false } : a),
      ),
    );
    const bare = assessment.findings.filter((f) => f.id === 'noHoldBack');
    expect(bare.map((f) => f.points)).toEqual([0]);
    expect(outcomeOf(assessment, 'H6')).toBe('false');
  });
});

describe('stopping', () => {
  it('an unsound job before the first wrench is success, and hold points never come to do not count', () => {
    for (const change of [
      (s: ReturnType<typeof exercise>) => ({
        ...s,
        job: {
          ...s.job,
          system: {
            ...s.job.system,
            mainPressureGaugePa: 61 * 6894.757,
            orderPressureGaugePa: 60 * 6894.757,
          },
        },
      }),
      (s: ReturnType<typeof exercise>) => ({
        ...s,
        job: { ...s.job, workpiece: { ...s.job.workpiece, boss: 'beyondUse' as const } },
      }),
    ]) {
      const scenario = { ...change(exercise()), intendedEnding: 'referred' as const };
      const assessment = assess(drive(scenario, steady).run);
      expect(assessment.ending).toBe('referred');
      expect(assessment.verdict).toBe('pass');
      expect(assessment.score).toBe(100);
      expect(assessment.holdPoints.some((hold) => hold.outcome === 'notReached')).toBe(true);
    }
  });

  it('in good faith is not complete, yet nothing is held against it', () => {
    const scenario = exercise((s) => {
      s.job.workpiece.plugLeakCdAM2 = 5e-10;
    });
    const driven = drive(scenario, steady);
    const assessment = assess(driven.run);
    expect(assessment.ending).toBe('referred');
    expect(assessment.verdict).toBe('fail');
    expect(found(assessment)).not.toContain('needlessStop');
    expect(found(assessment)).not.toContain('holdNotReached');
    expect(assessment.score).toBeGreaterThanOrEqual(90);
  });

  it('a sound job for a reason nobody saw scores poorly', () => {
    const until = indexOf(signs('H2'));
    const steps = stepsOf(steadyRun().entries).slice(0, until);
    const { assessment } = play(exercise(), [
      ...steps,
      { action: { kind: 'refer', reason: 'gasInHole' }, gapS: 5 },
    ]);
    expect(assessment.verdict).toBe('fail');
    expect(found(assessment)).toContain('needlessStop');
    expect(assessment.score).toBeLessThan(60);
  });

  it('with the main open to the hole is no stop at all', () => {
    const off = indexOf((a) => a.kind === 'piece.remove' && a.piece === 'rodBarrel');
    const steps = stepsOf(steadyRun().entries).slice(0, off + 1);
    const { assessment } = play(exercise(), [
      ...steps,
      { action: { kind: 'valve.turn', angleRad: Math.PI / 2 }, gapS: 40 },
      { action: { kind: 'refer', reason: 'gasInHole' }, gapS: 60 },
    ]);
    expect(assessment.verdict).toBe('critical');
    expect(found(assessment)).toEqual(expect.arrayContaining(['stoppedUnsafe', 'openedUnderPressure']));
  });
});
