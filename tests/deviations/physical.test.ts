import { describe, expect, it } from 'vitest';
import type { Action } from '../../src/core/rig/index.ts';
import type { Heading } from '../../src/core/scenario/index.ts';
import {
  before, changing, deviate, exercise, found, outcomeOf, signs, steadyRun, without, type Matches, type Mutable, type Step,
} from '../judge/play.ts'; // prettier-ignore

interface Deviation {
  readonly says: string;
  readonly change?: (steps: readonly Step[]) => readonly Step[];
  readonly job?: (scenario: Mutable) => void;
  /** Played no further than this; the rest of the job adds nothing to what is asked. */
  readonly until?: Matches;
  readonly finds?: readonly string[];
  readonly hold?: readonly [string, string];
  readonly critical?: boolean;
  readonly heading?: readonly [Heading, number];
}

const QUARTER_RAD = Math.PI / 2;
const kind =
  (name: Action['kind']): Matches =>
  (a) =>
    a.kind === name;
const removes =
  (piece: string): Matches =>
  (a) =>
    a.kind === 'piece.remove' && a.piece === piece;
const places =
  (piece: string): Matches =>
  (a) =>
    a.kind === 'piece.place' && a.piece === piece;
const cut: Matches = (a) => a.kind === 'branch.cut' && a.part === 'through';
const headReads = steadyRun().entries.flatMap((e, i) => (e.action.kind === 'gauge.read' && e.action.gauge === 'head' ? [i] : [])); // prettier-ignore
const at =
  (index: number): Matches =>
  (_, i) =>
    i === index;
const between =
  (from: number, to: number, matches: Matches): Matches =>
  (a, i) =>
    i > from && i < to && matches(a, i);
const signedAt = (id: string): number => steadyRun().entries.findIndex((e, i) => signs(id)(e.action, i));
const afterSign =
  (id: string, matches: Matches): Matches =>
  (a, i) =>
    i > signedAt(id) && matches(a, i);
const opensTo =
  (openRad: number): Matches =>
  (a) =>
    a.kind === 'bleed.turn' && a.angleRad * openRad > 0;

const deviations: readonly Deviation[] = [
  {
    says: 'a proof pumped up above the shut valve proves the section above it, and the signature is false',
    change: without(between(signedAt('H1'), headReads[0], (a) => a.kind === 'valve.turn' && a.angleRad > 0)),
    until: signs('H2'),
    hold: ['H2', 'false'],
    critical: true,
  },
  {
    says: 'a passing plug has masked the proof: signed in spite of the rise',
    job: (s) => {
      s.job.workpiece.plugLeakCdAM2 = 2e-9;
    },
    until: afterSign('H2', kind('rod.turn')),
    finds: ['holdFalse', 'abnormalWrongReaction'],
    hold: ['H2', 'false'],
    critical: true,
  },
  {
    says: 'a stroke of the pump inside the hold',
    change: before(at(headReads[2]), { kind: 'pump.stroke', strokes: 1 }),
    until: signs('H2'),
    hold: ['H2', 'false'],
    critical: true,
  },
  {
    says: 'a hold hurried to a hundred seconds',
    change: (steps) => steps.map((s, i) => (i === headReads[2] ? { ...s, gapS: 20 } : s)),
    until: signs('H2'),
    hold: ['H2', 'false'],
    critical: true,
  },
  {
    says: 'a tensioner touched after the proof takes the proof away',
    change: before(removes('testHead'), { kind: 'tensioner.turn', chain: 0, side: 'left', turns: 1 / 12 }),
    until: afterSign('H2', kind('rod.turn')),
    finds: ['holdVoided'],
    hold: ['H2', 'missed'],
    critical: true,
  },
  {
    says: 'chains left uneven by more than a quarter turn',
    change: changing(
      (a) => a.kind === 'tensioner.turn' && a.side === 'left' && a.chain === 0 && a.turns > 0,
      (a) => (a.kind === 'tensioner.turn' ? { ...a, turns: a.turns * 1.9 } : a),
    ),
    until: afterSign('H2', kind('rod.turn')),
    finds: ['tensionUneven'],
    heading: ['technique', 2],
  },
  {
    says: 'links never tapped',
    change: without(kind('chain.tap')),
    until: signs('H3'),
    finds: ['notTapped'],
    heading: ['technique', 1],
  },
  {
    says: 'a seat ring of the wrong size never pumps up, and is a wrong choice',
    change: changing(places('seatRing-1'), (a) =>
      a.kind === 'piece.place' ? { ...a, piece: 'seatRing-114' } : a,
    ),
    until: signs('H2'),
    finds: ['wrongSize'],
    hold: ['H2', 'false'],
    critical: true,
    heading: ['kit', 4],
  },
  {
    says: 'the bleed hose left in the hole',
    change: without(kind('hose.lead')),
    until: signs('H3'),
    finds: ['bledIntoHole'],
    heading: ['gasControl', 4],
  },
  {
    says: 'the rod not in hand as the valve opens a live chamber to it',
    change: without(afterSign('H3', kind('rod.hold'))),
    until: signs('H4'),
    finds: ['rodNotHeld'],
    hold: ['H4', 'false'],
    critical: true,
  },
  {
    says: 'the valve opened with the bleed open',
    change: (steps) => {
      const open = { kind: 'bleed.turn', angleRad: QUARTER_RAD } as const;
      const shut = { kind: 'bleed.turn', angleRad: -QUARTER_RAD } as const;
      const eased = steps.findIndex(
        (s, i) => i > signedAt('H3') && s.action.kind === 'valve.turn' && s.action.angleRad === 0.1,
      );
      return [
        ...steps.slice(0, eased),
        { action: open, gapS: 1 },
        steps[eased],
        { action: shut, gapS: 2 },
        ...steps.slice(eased + 1),
      ];
    },
    until: signs('H4'),
    finds: ['valveOpenedBleedOpen'],
    heading: ['technique', 1.5],
  },
  {
    says: 'the barrel lifted off before it was bled',
    change: without(between(signedAt('H2'), signedAt('H3'), kind('bleed.turn'))),
    until: signs('H3'),
    finds: ['openedUnderPressure'],
    critical: true,
  },
  {
    says: 'the top plug taken out with nothing over it',
    change: (steps) => [
      ...steps.slice(
        0,
        steps.findIndex((s) => places('seatRing-1')(s.action, 0)),
      ),
      ...Array.from({ length: 9 }, () => ({
        action: { kind: 'plug.turn', turns: -1, holdBack: true } as const,
        gapS: 6,
      })),
    ],
    finds: ['plugOutOpen'],
    critical: true,
  },
  {
    says: 'listening only: the bleed never shut in and cracked',
    change: without(
      (a, i) => i > signedAt('H3') && i < signedAt('H4') && a.kind === 'bleed.turn' && a.angleRad < 0,
    ),
    until: afterSign('H4', kind('rod.load')),
    hold: ['H4', 'false'],
    critical: true,
  },
  {
    says: 'a bleed blocked with debris is silent, not quiet: the barrel comes off full of gas',
    job: (s) => {
      const barrel = s.job.kit.find((k) => k.kind === 'rodBarrel');
      if (barrel) barrel.defects = { bleedBlocked: 1 };
    },
    until: signs('H3'),
    finds: ['unfitUsed', 'openedUnderPressure'],
    critical: true,
  },
  {
    says: 'worn rubber weeps: shut in, it puffs, and it was signed',
    job: (s) => {
      const stopper = s.job.kit.find((k) => k.id === 'boreStopper-1');
      if (stopper) stopper.defects = { rubberWornCdAM2: 5e-8 };
    },
    until: afterSign('H4', kind('rod.load')),
    finds: ['unfitUsed'],
    hold: ['H4', 'false'],
    critical: true,
  },
  {
    says: 'the stopper set too shallow',
    change: changing(
      (a) => a.kind === 'collar.set' && a.travelM !== null,
      (a) => (a.kind === 'collar.set' && a.travelM !== null ? { ...a, travelM: a.travelM - 0.015 } : a),
    ),
    until: afterSign('H5', kind('rod.load')),
    hold: ['H4', 'false'],
    critical: true,
  },
  {
    says: 'the keeper left out: a firm stopper still holds, and the hold point catches it',
    change: without((a) => a.kind === 'keeper.pull' || (a.kind === 'rod.load' && a.piece === 'keeperPlug-1')),
    until: cut,
    hold: ['H6', 'false'],
    critical: true,
  },
  {
    says: 'the branch cut before the stop is proved',
    change: before((a) => a.kind === 'piece.place' && a.piece === 'seatRing-1', {
      kind: 'branch.cut',
      part: 'through',
    }),
    until: signs('H2'),
    finds: ['cutStopUnproved', 'pipeUnsupported'],
    critical: true,
  },
  {
    says: 'the tee drawn untrimmed: the gauge ring says it will not pass',
    change: without(kind('tee.trim')),
    until: (a) => a.kind === 'tee.turn',
    hold: ['H8', 'false'],
    heading: ['holdPoints', 1],
  },
  {
    says: 'no sealant on the closing plug: it weeps, puffs, and was signed',
    change: without(kind('sealant.apply')),
    finds: ['noSealant'],
    hold: ['H11', 'false'],
    critical: true,
    heading: ['kit', 3],
  },
  {
    says: 'the closing plug driven without finding its thread: crossed',
    change: without((a, i) => i > signedAt('H10') && a.kind === 'rod.turn' && a.turns === -0.25),
    finds: ['threadNotFound'],
    hold: ['H11', 'false'],
    critical: true,
  },
  {
    says: 'the rig taken off before the closing plug was shown quiet',
    change: without(
      between(signedAt('H10'), signedAt('H11'), (a) => opensTo(-1)(a, 0) && a.kind === 'bleed.turn'),
    ),
    hold: ['H11', 'false'],
    critical: true,
  },
];

describe('one deviation from the model run, played on open loop', () => {
  it.each(deviations.map((deviation) => [deviation.says, deviation] as const))('%s', (_, deviation) => {
    const change = deviation.change ?? ((steps: readonly Step[]) => steps);
    const { until } = deviation;
    const stop = until ? steadyRun().entries.findIndex((e, i) => until(e.action, i)) : -1;
    const cutShort = (steps: readonly Step[]): readonly Step[] => {
      if (stop < 0) return change(steps);
      const last = steps[stop];
      const changed = change(steps);
      const end = changed.findIndex((s) => s === last || s.action === last.action);
      return changed.slice(0, end < 0 ? changed.length : end + 1);
    };
    const { assessment } = deviate(cutShort, exercise(deviation.job));
    expect(found(assessment)).toEqual(expect.arrayContaining([...(deviation.finds ?? [])]));
    if (deviation.hold) expect(outcomeOf(assessment, deviation.hold[0])).toBe(deviation.hold[1]);
    expect(assessment.verdict === 'critical').toBe(deviation.critical ?? false);
    if (deviation.heading) {
      const [heading, least] = deviation.heading;
      const lost = assessment.findings.filter((f) => f.heading === heading && f.id !== 'holdNotReached');
      expect(lost.reduce((sum, f) => sum + f.points, 0)).toBeGreaterThanOrEqual(least);
    }
  });
});
