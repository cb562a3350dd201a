import type { Defects, Job, KitEntry, TroubleKind } from '../rig/index.ts';
import type { Found } from './fault.ts';

/** The job with one piece of its kit changed. */
export function withPieceOf(job: Job, on: string | null, change: (entry: KitEntry) => KitEntry): Job {
  return { ...job, kit: job.kit.map((entry) => (entry.id === on ? change(entry) : entry)) };
}

/** The job with a flaw on one piece. */
export function withFlaw(job: Job, on: string | null, flaw: Partial<Defects>): Job {
  return withPieceOf(job, on, (entry) => ({ ...entry, defects: { ...entry.defects, ...flaw } }));
}

/** The job with something amiss beyond its pieces since a time. */
export function withTrouble(job: Job, what: TroubleKind, size: number, sinceS: number): Job {
  const others = (job.troubles ?? []).filter((one) => one.what !== what);
  return { ...job, troubles: [...others, { what, sinceS, size }] };
}

/** Where a job has that trouble already. */
export function troubleIn(job: Job, what: TroubleKind, is: (size: number) => boolean): readonly Found[] {
  return (job.troubles ?? []).flatMap((one) =>
    one.what === what && is(one.size) ? [{ on: null, severity: one.size }] : [],
  );
}

/** The job with something else about its workpiece. */
export function withWorkpiece(job: Job, change: Partial<Job['workpiece']>): Job {
  return { ...job, workpiece: { ...job.workpiece, ...change } };
}

/** The job with something else about its service. */
export function withService(job: Job, change: Partial<Job['system']['service']>): Job {
  return { ...job, system: { ...job.system, service: { ...job.system.service, ...change } } };
}

/** One place where it is, or none. */
export function inJob(is: boolean, severity = 1): readonly Found[] {
  return is ? [{ on: null, severity }] : [];
}

/** The job with its main at another pressure from the start. */
export function withMainAt(job: Job, mainPressureGaugePa: number): Job {
  return { ...job, system: { ...job.system, mainPressureGaugePa } };
}
