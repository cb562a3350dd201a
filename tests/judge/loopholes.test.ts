import { describe, expect, it } from 'vitest';
import { assess, type RunAssessment } from '../../src/core/judge/index.ts';
import { evidence, PILOT_DRILLED_S } from '../../src/core/procedure/index.ts';
import { handS, serviceVolumeM3, type Action, type Fact } from '../../src/core/rig/index.ts';
import { before, changing, deviate, found, indexOf, outcomeOf, signs, steadyRun, without, type Matches, type Step } from './play.ts'; // prettier-ignore

/** Each is one edit to a whole and safe job that a crew could once make and still have every point. */

type Edit = (steps: readonly Step[]) => readonly Step[];

const wanting = (assessment: RunAssessment, holdPoint: string): readonly string[] =>
  assessment.findings.find((finding) => finding.holdPoint === holdPoint)?.items ?? [];
const opensBleed: Matches = (a) => a.kind === 'bleed.turn' && a.angleRad > 0;
const fluidAt = (a: Action, ...places: readonly string[]): boolean =>
  a.kind === 'leakFluid.apply' && places.includes(a.at);
const chamberJoints = ['seat', 'valveJoint', 'spoolJoint', 'topJoint'] as const;

/** Between two signatures: from after the one to the other. */
const between =
  (from: string, to: string): Matches =>
  (_, i) =>
    i > indexOf(signs(from)) && i < indexOf(signs(to));
const both =
  (...all: readonly Matches[]): Matches =>
  (action, i) =>
    all.every((matches) => matches(action, i));

/** Steps that match come straight after the one before. */
const atOnce =
  (matches: Matches): Edit =>
  (steps) =>
    steps.map((step, i) => (matches(step.action, i) ? { ...step, gapS: 0 } : step));
const glanced = (matches: Matches): Edit =>
  changing(
    both(matches, (a) => a.kind === 'leakFluid.apply'),
    (a) => (a.kind === 'leakFluid.apply' ? { ...a, watchS: 1 } : a),
  );
const writing = (field: string, value: string): Edit =>
  changing(
    (a) => a.kind === 'record.write' && a.field === field,
    (a) => (a.kind === 'record.write' ? { ...a, value } : a),
  );

describe('a service full of gas', () => {
  const unpurged = without((a) => a.kind === 'service.purge');

  it('is not made small by writing that it is', () => {
    const { assessment } = deviate((steps) =>
      writing('purged', 'Small service, not purged')(unpurged(steps)),
    );
    expect(outcomeOf(assessment, 'H12')).toBe('false');
    expect(wanting(assessment, 'H12')).toEqual(['purged', 'record']);
    expect(assessment.verdict).toBe('critical');
  });

  it('need not be purged where it is small by its own pipe, whatever the words', () => {
    const { run } = steadyRun();
    const { job, limits } = run.scenario;
    const kept = run.facts.filter((f) => f.fact !== 'service.purged');
    const at = kept.findIndex((f) => f.fact === 'signed' && f.holdPoint === 'H12');
    const facts = kept.slice(0, at + 1);
    const ofLength = (lengthM: number) => ({
      ...job,
      system: { ...job.system, service: { ...job.system.service, lengthM } },
    });
    // NPS 1, schedule 40: bore 26.64 mm (ASME B36.10M), 0.5575 L a metre; the limit of 2 L is reached at 3.59 m
    expect(serviceVolumeM3(ofLength(1))).toBeCloseTo(0.0005575, 6);
    expect(evidence('H12', facts, limits, ofLength(3.5)).met).toBe(true);
    expect(evidence('H12', facts, limits, ofLength(3.7)).items.filter((one) => !one.met)).toHaveLength(2);
  });
});

describe('the test medium', () => {
  it.each(['Aire con bomba de mano', 'Luft', 'N2'])('may be written in any tongue: %s', (value) => {
    expect(deviate(writing('testMedium', value)).assessment.findings).toEqual([]);
  });

  it('is not left blank', () => {
    expect(wanting(deviate(writing('testMedium', ' ')).assessment, 'H12')).toEqual(['record']);
  });
});

describe('the no-flow minute', () => {
  it('does not begin while the pilot is still being drilled', () => {
    const { assessment } = deviate(
      atOnce(both(between('H6', 'H7'), (a) => a.kind === 'listen' || a.kind === 'detector.read')),
    );
    expect(outcomeOf(assessment, 'H7')).toBe('false');
    expect(wanting(assessment, 'H7')).toEqual(['noFlow']);
  });

  it('begins when the rig’s own hands have drilled it', () => {
    expect(PILOT_DRILLED_S).toBe(handS({ kind: 'branch.cut', part: 'pilot' }));
  });
});

describe('leak fluid', () => {
  it.each([['H2', 'H1'] as const, ['H9', 'H8'] as const])('proves nothing for %s at a glance', (id, last) => {
    const { assessment } = deviate(glanced(both(between(last, id), (a) => fluidAt(a, ...chamberJoints))));
    expect(outcomeOf(assessment, id)).toBe('false');
    expect(wanting(assessment, id).every((item) => item.startsWith('fluid.'))).toBe(true);
    expect(wanting(assessment, id)).toContain('fluid.seat');
  });

  it.each([['H2', 'H1'] as const, ['H9', 'H8'] as const])(
    'proves nothing for %s at the low stage alone',
    (id, last) => {
      const looks = steadyRun().entries.flatMap(({ action }, i) =>
        between(last, id)(action, i) && fluidAt(action, ...chamberJoints) ? [i] : [],
      );
      const later = looks.slice(looks.length / 2);
      const { assessment } = deviate(without((_, i) => later.includes(i)));
      expect(outcomeOf(assessment, id)).toBe('false');
      expect(wanting(assessment, id)).toHaveLength(later.length);
    },
  );

  it('is good practice at the low stage, and no more than that', () => {
    const looks = steadyRun().entries.flatMap(({ action }, i) =>
      between('H1', 'H2')(action, i) && fluidAt(action, ...chamberJoints) ? [i] : [],
    );
    const earlier = looks.slice(0, looks.length / 2);
    expect(deviate(without((_, i) => earlier.includes(i))).assessment.findings).toEqual([]);
  });

  it('on the keeper is watched', () => {
    const { assessment } = deviate(glanced((a) => fluidAt(a, 'keeper')));
    expect(wanting(assessment, 'H6')).toEqual(['fluid']);
  });

  it('on each new joint of the barrel is watched', () => {
    const glances = glanced(
      (a, i) => fluidAt(a, 'topJoint') && !between('H8', 'H9')(a, i) && !between('H1', 'H2')(a, i),
    );
    expect(found(deviate(glances).assessment)).toEqual(['newJointUnchecked']);
  });

  it('that bubbled at the low stage is not made good by a glance', () => {
    const { run } = steadyRun();
    const { job, limits } = run.scenario;
    const at = run.facts.findIndex((f) => f.fact === 'signed' && f.holdPoint === 'H2');
    const facts = run.facts
      .slice(0, at + 1)
      .map((f): Fact =>
        f.fact === 'leak.looked' && f.at === 'seat'
          ? f.pressureGaugePa < 1e5
            ? { ...f, bubbles: 'steady' }
            : { ...f, watchS: 2 }
          : f,
      );
    const lost = evidence('H2', facts, limits, job).items.filter((one) => !one.met);
    expect(lost.map((one) => one.id)).toEqual(['fluid.seat']);
  });
});

describe('opening the bleed again', () => {
  it('over the shut valve says nothing when it was shut for a moment only', () => {
    const shutIns: Matches = (a, i) =>
      opensBleed(a, i) && steadyRun().entries[i - 1].action.kind === 'bleed.turn';
    const offs = steadyRun().entries.flatMap(({ action }, i) =>
      action.kind === 'piece.remove' && action.piece === 'rodBarrel' ? [i] : [],
    );
    const { assessment } = deviate(
      atOnce((a, i) => shutIns(a, i) && offs.includes(i + 1) && !between('H5', 'H6')(a, i)),
    );
    expect(found(assessment)).toEqual(['noCrackCheck']);
  });

  it('over the keeper says nothing when it was shut for a moment only', () => {
    const { assessment } = deviate(
      atOnce(
        both(
          between('H5', 'H6'),
          (a, i) => opensBleed(a, i) && steadyRun().entries[i - 1].action.kind === 'bleed.turn',
        ),
      ),
    );
    expect(outcomeOf(assessment, 'H6')).toBe('false');
    expect(wanting(assessment, 'H6')).toEqual(['bled']);
  });
});

describe('the stopper', () => {
  const inner: Matches = (a) => a.kind === 'innerRod.turn';

  it('is not snugged again by slackening it', () => {
    const last = steadyRun().entries.reduce((at, { action }, i) => (inner(action, i) ? i : at), -1);
    const { assessment } = deviate(
      changing(
        (_, i) => i === last,
        () => ({ kind: 'innerRod.turn', turns: -1 / 24 }),
      ),
    );
    expect(wanting(assessment, 'H4')).toContain('snuggedAgain');
  });

  it('is not snugged again by slackening it far and taking up a little', () => {
    const last = steadyRun().entries.reduce((at, { action }, i) => (inner(action, i) ? i : at), -1);
    const slackens: Action = { kind: 'innerRod.turn', turns: -1 / 6 };
    const { assessment } = deviate((steps) =>
      steps.flatMap((step, i) =>
        i === last
          ? [
              { ...step, action: slackens },
              { ...step, gapS: 1 },
            ]
          : [step],
      ),
    );
    expect(wanting(assessment, 'H4')).toContain('snuggedAgain');
  });

  it('slackened after it was proved is not the stopper that was proved', () => {
    const unlatches = indexOf(signs('H4')) + 2;
    expect(steadyRun().entries[unlatches].action).toEqual({ kind: 'rod.turn', turns: 1 / 4 });
    const { assessment } = deviate(
      before((_, i) => i === unlatches, { kind: 'innerRod.turn', turns: -1 / 24 }),
    );
    expect(found(assessment)).toContain('holdVoided');
    expect(wanting(assessment, 'H4')).toEqual(['stayed']);
  });
});

describe('the bleed hose', () => {
  it('lies in the hole until it is led out of it', () => {
    const { assessment } = deviate(without((a) => a.kind === 'hose.lead'));
    expect(wanting(assessment, 'H1')).toEqual(['hose']);
  });
});

describe('the high alarm', () => {
  /** The model story with the alarm from the first cut on, and what is put in after it. */
  const alarmed = (...added: readonly Fact[]): RunAssessment => {
    const { run } = steadyRun();
    const at = run.facts.findIndex((f) => f.fact === 'branch.cut') - 1;
    const { atS } = run.facts[at];
    const rings: Fact = { atS: atS - 1, fact: 'gas.alarm', step: 2, lelShare: 0.25 };
    const facts = [
      ...run.facts.slice(0, at),
      rings,
      ...added.map((f) => ({ ...f, atS })),
      ...run.facts.slice(at),
    ];
    return assess({ ...run, facts });
  };
  const leaves: Fact = { atS: 0, fact: 'done', action: { kind: 'leaveHole' } };
  const silent: Fact = { atS: 0, fact: 'gas.alarm', step: 0, lelShare: 0.05 };
  const times = (assessment: RunAssessment): number =>
    assessment.findings.find((finding) => finding.id === 'workedInAlarm')?.numbers.times ?? 0;

  it('is not answered by leaving the hole and coming straight back to work', () => {
    expect(times(alarmed())).toBeGreaterThan(10);
    expect(times(alarmed(leaves))).toBe(times(alarmed()));
  });

  it('is over when it falls silent, not before', () => {
    expect(found(alarmed(leaves, silent))).toEqual([]);
  });
});
