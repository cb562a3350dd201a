import type { Fact, Job } from '../rig/index.ts';
import type { Limits } from './settings.ts';
import { standings, type Standing } from './standing.ts';

/** A job as its facts tell it up to one moment: what evidence is judged on. */
export interface Told {
  readonly facts: readonly Fact[];
  /** How the rig stood after each fact, same order. */
  readonly stood: readonly Standing[];
  readonly limits: Limits;
  readonly job: Job;
  /** Time of the last fact, s: the moment of judging. */
  readonly nowS: number;
}

/** Joins facts to how the rig stood at each. */
export function tell(facts: readonly Fact[], limits: Limits, job: Job): Told {
  return { facts, stood: standings(facts, job), limits, job, nowS: facts[facts.length - 1]?.atS ?? 0 };
}

/** One requirement of a hold point. */
export interface EvidenceItem {
  readonly id: string;
  readonly met: boolean;
  /** What it rests on, SI, named with units. */
  readonly numbers: Readonly<Record<string, number>>;
}

/** Builds one requirement. */
export function item(id: string, met: boolean, numbers: Readonly<Record<string, number>> = {}): EvidenceItem {
  return { id, met, numbers };
}
