import type { Fact, HoldPointId, Job } from '../rig/index.ts';
import { criticalItems, evidence, guards, type Evidence, type Limits } from '../procedure/index.ts';
import { givenBy } from '../run/index.ts';
import { truthOf, widen } from './truth.ts';
import type { JudgedRun } from './case.ts';
import type { HoldPointOutcome } from './types.ts';

/** How one hold point went. */
export interface HoldJudgement {
  readonly id: HoldPointId;
  readonly weight: number;
  readonly outcome: HoldPointOutcome;
  /** Signed on good evidence that no longer stood when the guarded work began. */
  readonly voided: boolean;
  readonly critical: boolean;
  /** Its guarded work had begun before the trainee took over: not theirs to answer for. */
  readonly given: boolean;
  readonly atS: number | null;
  /** Index of the fact with which the guarded work began, or null. */
  readonly begunAt: number | null;
  /** Requirements that were wanting, with their numbers. */
  readonly wanting: Evidence['items'];
}

/**
 * Every hold point of the scenario. The signature is judged on the evidence at its own moment, then again when the
 * guarded work begins (age, voids). Work that went round a hold point misses it as much as work that began it.
 */
export function judgeHoldPoints(run: JudgedRun): readonly HoldJudgement[] {
  const { scenario, facts } = run;
  const { job, limits } = scenario;
  const taken = givenBy(scenario);
  const begun = scenario.holdPoints.map((setting) => firstBegun(setting.id, facts, limits, job));
  return scenario.holdPoints.map((setting, i) => {
    const begunAt = begun[i] ?? null;
    const passedBy = begun.slice(i + 1).find((index) => index !== null) ?? null;
    const until = begunAt ?? passedBy;
    const signedAt = standingSignature(setting.id, facts, until ?? facts.length);
    const given = until !== null && until < taken.facts;
    const base = { id: setting.id, weight: setting.weight, begunAt, given, voided: false };
    const wantingAt = (index: number): Evidence['items'] =>
      evidence(setting.id, facts.slice(0, index), limits, job).items.filter((one) => !one.met);
    if (signedAt === null) {
      if (until === null) return { ...base, outcome: 'notReached', critical: false, atS: null, wanting: [] };
      const wanting = wantingAt(until);
      const critical = setting.critical && gravelyMissed(setting.id, wanting);
      return { ...base, outcome: 'missed', critical, atS: facts[until].atS, wanting };
    }
    const atS = facts[signedAt].atS;
    const atSigning = wantingAt(signedAt + 1);
    if (atSigning.length > 0) {
      const critical = setting.critical && gravely(setting.id, atSigning);
      return { ...base, outcome: 'false', critical, atS, wanting: atSigning };
    }
    const lapsed = until === null ? [] : wantingAt(until);
    if (lapsed.length > 0) {
      const critical = setting.critical && gravely(setting.id, lapsed);
      const lapsedS = until === null ? atS : facts[until].atS;
      return { ...base, outcome: 'missed', voided: true, critical, atS: lapsedS, wanting: lapsed };
    }
    const outcome = trueToo(setting.id, facts.slice(0, signedAt + 1), limits, job) ? 'held' : 'misled';
    return { ...base, outcome, critical: false, atS, wanting: [] };
  });
}

/** Index of the first fact with which the guarded work begins, or null. */
function firstBegun(id: HoldPointId, facts: readonly Fact[], limits: Limits, job: Job): number | null {
  const guard = guards[id];
  for (let i = 0; i < facts.length; i += 1) {
    const fact = facts[i];
    if (!guard.kinds.includes(fact.fact)) continue;
    if (guard.begins(fact, { facts: facts.slice(0, i + 1), limits, job })) return i;
  }
  return null;
}

/** Index of the signature that stood when the work began (or at the end); a withdrawn one does not stand. */
function standingSignature(id: HoldPointId, facts: readonly Fact[], until: number): number | null {
  let standing: number | null = null;
  for (let i = 0; i < until; i += 1) {
    const fact = facts[i];
    if (fact.fact === 'signed' && fact.holdPoint === id) standing = i;
    if (fact.fact === 'withdrawn' && fact.holdPoint === id) standing = null;
  }
  return standing;
}

/** Whether what was wanting is of the kind that fails a run, where only some of a hold point's requirements are. */
function gravely(id: HoldPointId, wanting: Evidence['items']): boolean {
  const grave = criticalItems[id];
  return !grave || wanting.some((one) => grave.includes(one.id));
}

/** Work begun with no signature at all: grave unless everything grave was in order anyway. */
function gravelyMissed(id: HoldPointId, wanting: Evidence['items']): boolean {
  return criticalItems[id] ? gravely(id, wanting) : true;
}

/**
 * Whether the evidence holds for the truth behind the readings too; if not, the crew was misled. A written record is of
 * what was read, so there is no truth beside it.
 */
function trueToo(id: HoldPointId, facts: readonly Fact[], limits: Limits, job: Job): boolean {
  const truths = facts.map((fact) => truthOf(fact, limits));
  return evidence(id, truths, widen(limits), job).items.every((one) => one.met || one.id === 'record');
}
