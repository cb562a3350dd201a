import type { Scenario } from '../../core/scenario/index.ts';
import { expectedHissS } from '../parts/hiss.ts';
import { withPiecesOf } from '../parts/kit.ts';
import { breakNmOfTee, limitsOfTee, type LimitsOfTee } from '../parts/teeSizes.ts';

/**
 * What goes along with a change. Entries that stood as the old size or pressure asks follow to the new one; what
 * somebody has set otherwise stays as it was set.
 */
export function follow(before: Scenario, after: Scenario): Scenario {
  return withFamily(withHiss(before, withTee(before, after)));
}

function withTee(before: Scenario, after: Scenario): Scenario {
  const [old, now] = [before.job.workpiece.teeSize, after.job.workpiece.teeSize];
  if (old === now) return after;
  const { workpiece, system, kit } = after.job;
  const { plug, tee } = breakNmOfTee[old];
  return {
    ...after,
    limits: { ...after.limits, ...limitsFollowing(after.limits, limitsOfTee[old], limitsOfTee[now]) },
    job: {
      ...after.job,
      workpiece: {
        ...workpiece,
        plugBreakNm: workpiece.plugBreakNm === plug ? breakNmOfTee[now].plug : workpiece.plugBreakNm,
        teeBreakNm: workpiece.teeBreakNm === tee ? breakNmOfTee[now].tee : workpiece.teeBreakNm,
      },
      system: system.service.nps === old ? { ...system, service: { ...system.service, nps: now } } : system,
      kit: [...withPiecesOf(kit, now)],
    },
  };
}

function limitsFollowing(
  limits: Scenario['limits'],
  old: LimitsOfTee,
  now: LimitsOfTee,
): Partial<LimitsOfTee> {
  const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
  const names = ['stopperFirmNm', 'keeperNm', 'closingPastHandTurns', 'closingNm'] as const;
  return Object.fromEntries(
    names.filter((name) => same(limits[name], old[name])).map((name) => [name, now[name]]),
  );
}

/** A hiss within a fiftieth of what the model expects was set by it. */
const NEAR = 0.02;

function withHiss(before: Scenario, after: Scenario): Scenario {
  const set = before.limits.expectedHissS;
  if (after.limits.expectedHissS !== set || before.job === after.job) return after;
  if (Math.abs(set / expectedHissS(before.job) - 1) > NEAR) return after;
  const expected = expectedHissS(after.job);
  if (Math.abs(set / expected - 1) <= NEAR) return after;
  return { ...after, limits: { ...after.limits, expectedHissS: expected } };
}

/** The heading an exercise stands under on the start page follows from what it holds. */
function withFamily(after: Scenario): Scenario {
  const family = familyOf(after);
  return family === after.family ? after : { ...after, family };
}

function familyOf({ kind, work, intendedEnding, faults, job }: Scenario): Scenario['family'] {
  const flawed = job.kit.filter((one) => one.trueSize !== undefined || one.defects !== undefined);
  const amiss = faults.length + flawed.length;
  if (kind === 'drill') return 'drill';
  if (intendedEnding !== 'complete') return 'stop';
  if (work !== 'abandon') return 'renewal';
  if (amiss === 0) return 'sound';
  return amiss === 1 ? 'fault' : 'manyFaults';
}
