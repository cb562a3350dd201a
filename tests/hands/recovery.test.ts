import { describe, expect, it } from 'vitest';
import type { KitKind } from '../../src/core/rig/index.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import { meets, spoils, type Strike } from './struck.ts';

type Change = (scenario: Scenario) => void;

const spare =
  (id: string, kind: KitKind, stamped?: '1'): Change =>
  ({ job }) =>
    void job.kit.push(stamped === undefined ? { id, kind } : { id, kind, stamped });
const asItWas: Strike = (rig) => rig;
const plugOf =
  (breakNm: number): Change =>
  ({ job }) =>
    void (job.workpiece.plugBreakNm = breakNm);
const passingPlug: Strike = (rig) => ({
  ...rig,
  job: { ...rig.job, workpiece: { ...rig.job.workpiece, plugLeakCdAM2: 1e-8 } },
});

describe('what can be mended the steady crew finds, mends and proves again', () => {
  it.each<[string, 's2' | 's3' | 's4' | 's6' | 's10', 's3' | 's5' | 's7' | 's12', Strike, Change, string]>([
    ['grit on the seat ring', 's2', 's3', spoils('seatRing-1', { gritCdAM2: 1e-7 }), () => {}, 'piece.clean'],
    [
      'a passing isolation valve, with another on the board',
      's2',
      's3',
      spoils('isolationValve', { seatPassingCdAM2: 1e-7 }),
      spare('isolationValve-2', 'isolationValve'),
      'piece.reject',
    ],
    [
      'a nicked O-ring under the valve, with another valve',
      's2',
      's3',
      spoils('isolationValve', { oRingNickCdAM2: 2e-8 }),
      spare('isolationValve-2', 'isolationValve'),
      'piece.reject',
    ],
    [
      'a pump whose check leaks back, with another head',
      's3',
      's3',
      spoils('testHead', { pumpCheckLeakCdAM2: 2e-8 }),
      spare('testHead-2', 'testHead'),
      'piece.reject',
    ],
    [
      'a nicked O-ring on the rod barrel, with another barrel',
      's4',
      's5',
      spoils('rodBarrel', { oRingNickCdAM2: 2e-8 }),
      spare('rodBarrel-2', 'rodBarrel'),
      'piece.reject',
    ],
    ['a blocked bleed', 's4', 's7', spoils('rodBarrel', { bleedBlocked: 1 }), () => {}, 'bleed.clear'],
    [
      'worn stopper rubber, with another stopper',
      's6',
      's7',
      spoils('boreStopper-1', { rubberWornCdAM2: 5e-8 }),
      spare('boreStopper-1-new', 'boreStopper', '1'),
      'piece.reject',
    ],
  ])('%s, struck at %s', (_, from, to, strike, change, by) => {
    const { assessment, did } = meets(from, to, strike, change);
    expect(did).toContain(by);
    expect(assessment.findings.filter((f) => f.points > 0 || f.critical).map((f) => f.id)).toEqual([]);
    expect([assessment.verdict, assessment.ending]).toEqual(['pass', 'complete']);
  });

  it('a plug that no wrench moves, by oil and half an hour', () => {
    const { driven, did } = meets('s2', 's3', asItWas, plugOf(450));
    expect(did).toContain('oil.apply');
    expect(driven.run.rig.ending?.kind).toBe('complete');
    const pulls = driven.run.facts.flatMap((f) => (f.fact === 'plug.turned' ? [f.torqueNm] : []));
    expect(pulls[0]).toBe(420);
    expect(pulls[1]).toBeLessThan(300);
  });

  it('a wrong thread on the closing plug, by the spare: from there is no way back', () => {
    const { driven, assessment } = meets('s10', 's12', spoils('closingPlug-1', { wrongThread: true }));
    expect(assessment.ending).toBe('complete');
    expect(driven.run.rig.closing.piece).toBe('closingPlug-1-spare');
  });

  it('a hole that does not clear by itself, by a blower', () => {
    const { assessment, did } = meets(
      's8',
      's12',
      asItWas,
      ({ job }) => void (job.site.freshAirM3PerS = 0.0005),
    );
    expect(did).toContain('site.do');
    expect(assessment.ending).toBe('complete');
  });
});

describe('what cannot be mended is referred back for what was seen, from a safe state', () => {
  it.each<[string, 's2' | 's3' | 's4' | 's6', 's3' | 's5' | 's7', Strike, Change, string]>([
    [
      'a passing valve with no other',
      's2',
      's3',
      spoils('isolationValve', { seatPassingCdAM2: 1e-7 }),
      () => {},
      'valvePassing',
    ],
    [
      'a nicked O-ring with no other valve',
      's2',
      's3',
      spoils('isolationValve', { oRingNickCdAM2: 2e-8 }),
      () => {},
      'proofFails',
    ],
    [
      'a vent that does not shut',
      's3',
      's3',
      spoils('testHead', { ventNotShuttingCdAM2: 2e-8 }),
      () => {},
      'proofFails',
    ],
    ['a plug that passes', 's3', 's3', passingPlug, () => {}, 'proofFails'],
    [
      'worn rubber with no other stopper',
      's6',
      's7',
      spoils('boreStopper-1', { rubberWornCdAM2: 5e-8 }),
      () => {},
      'stopFails',
    ],
    ['a plug that oil does not free', 's2', 's3', asItWas, plugOf(550), 'plugSeized'],
  ])('%s', (_, from, to, strike, change, reason) => {
    const { driven, assessment } = meets(from, to, strike, (scenario) => {
      change(scenario);
      scenario.intendedEnding = 'referred';
    });
    expect(driven.run.rig.ending).toEqual({ kind: 'referred', reason });
    expect(assessment.findings.map((f) => f.id)).not.toContain('stoppedUnsafe');
    expect(assessment.findings.map((f) => f.id)).not.toContain('needlessStop');
    expect(assessment.verdict).toBe('pass');
  });

  it('takes the rig off again where the plug was never out, and leaves it shut in where it could not', () => {
    const early = meets('s3', 's3', spoils('testHead', { ventNotShuttingCdAM2: 2e-8 })).driven.run.rig;
    expect([early.saddle.on, early.stack.length, early.plug.at]).toEqual(['board', 0, 'tee']);
    const late = meets('s6', 's7', spoils('boreStopper-1', { rubberWornCdAM2: 5e-8 })).driven.run.rig;
    expect(late.plug.at).toBe('tee');
    expect(late.plug.turnsBack).toBeLessThan(0.02);
  });
});

describe('a stopper that drops', () => {
  const weak = spoils('stopperHolder', { weakDetent: true });

  it('is kept by short moves of the rod, which a steady crew makes anyway', () => {
    const { assessment } = meets('s6', 's7', weak);
    expect([assessment.verdict, assessment.ending]).toEqual(['pass', 'complete']);
  });

  const hanging: Strike = (rig) => ({
    ...rig,
    stopper: { ...rig.stopper, piece: 'boreStopper-1', at: 'fallen', belowPortM: 0 },
  });

  it('is fetched by the magnet where somebody dropped it before', () => {
    const { driven } = meets('s6', 's7', hanging);
    expect(driven.run.rig.ending?.kind).toBe('complete');
    expect(driven.entries.some(({ action }) => action.kind === 'rod.fit' && action.tip === 'magnet')).toBe(
      true,
    );
  });
});
