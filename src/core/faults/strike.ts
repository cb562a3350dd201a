import type { Defects, Fact, Job, KitPiece, RigState } from '../rig/index.ts';
import type { Fault } from './fault.ts';
import type { FaultPlanted, TriggerCondition } from './planted.ts';
import { faults } from './registry.ts';

/** The piece a fault sits on: the one named, or the first of its kinds that this job needs; null where it sits on none. */
export function targetOf(fault: Fault, job: Job, on: string | undefined): string | null {
  if (fault.targets.length === 0) return null;
  if (on !== undefined) return on;
  const { teeSize } = job.workpiece;
  const ofKind = job.kit.filter((k) => fault.targets.includes(k.kind));
  return (ofKind.find((k) => k.stamped === undefined || k.stamped === teeSize) ?? ofKind.at(0))?.id ?? null;
}

/** The job with a planted fault in it from a time on. */
export function plantIn(job: Job, planted: FaultPlanted, atS: number): Job {
  const fault = faults[planted.fault];
  const severity = planted.severity ?? fault.severity?.usual ?? 1;
  return fault.plant(job, severity, targetOf(fault, job, planted.on), atS);
}

/** The job as the crew finds it: with everything in it that is there from the start. */
export function jobAtStart(job: Job, planted: readonly FaultPlanted[]): Job {
  return planted.reduce((now, one) => (one.when.trigger === 'start' ? plantIn(now, one, 0) : now), job);
}

/** A fault strikes: the rig's job changes, and the pieces of its kit that the fault touches. */
export function strike(rig: RigState, planted: FaultPlanted, atS: number): RigState {
  const job = plantIn(rig.job, planted, atS);
  const kit: Record<string, KitPiece> = { ...rig.kit };
  job.kit.forEach((entry, i) => {
    const was = rig.job.kit[i];
    if (entry === was) return;
    const piece = rig.kit[entry.id];
    const flaws: Defects = { ...piece.defects, ...entry.defects };
    kit[entry.id] = { ...piece, trueSize: entry.trueSize ?? piece.trueSize, defects: flaws };
  });
  return { ...rig, job, kit };
}

const moments: Readonly<Record<TriggerCondition, (fact: Fact, rig: RigState) => boolean>> = {
  plugFree: (f) => f.fact === 'plug.free',
  boreStopped: (f) => f.fact === 'stopper.left',
  keeperIn: (f) => f.fact === 'keeper.turned' && f.torqueNm > 20,
  serviceCut: (f) => f.fact === 'branch.cut' && f.part === 'through',
  biteBroken: (f) => f.fact === 'tee.turned' && f.turnsBack > 0,
  saddleOnCoupling: (f, rig) => f.fact === 'piece.placed' && rig.saddle.on === 'coupling' && rig.saddle.piece === f.piece, // prettier-ignore
  headAtMain: (f, rig) => f.fact === 'pumped' && f.headGaugePa >= rig.job.system.mainPressureGaugePa,
  teeFree: (f) => f.fact === 'tee.free',
  couplingClosed: (f) => f.fact === 'closing.turned' && f.torqueNm > 20 && !f.crossed,
};

/**
 * Whether a planted fault strikes with one of these facts, the newest of a run. `done` is how often each kind of
 * action was done before them.
 */
export function strikesWith(
  { when }: FaultPlanted,
  fresh: readonly Fact[],
  rig: RigState,
  facts: readonly Fact[],
): boolean {
  switch (when.trigger) {
    case 'start':
    case 'time':
      return false;
    case 'condition':
      return fresh.some((fact) => moments[when.condition](fact, rig));
    case 'action': {
      if (!fresh.some((fact) => fact.fact === 'done' && fact.action.kind === when.action)) return false;
      let nth = 0;
      for (const fact of facts) if (fact.fact === 'done' && fact.action.kind === when.action) nth += 1;
      return nth >= when.nth;
    }
  }
}
