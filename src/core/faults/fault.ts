import type { Fact, HoldPointId, Job, KitKind, ReferReason } from '../rig/index.ts';
import type { FaultFamily, FaultId } from './ids.ts';
import type { TriggerKind } from './planted.ts';

/** Where a fault comes from. */
export const faultCauses = [
  'mislabelled', 'wear', 'corrosion', 'debris', 'handling', 'making', 'age', 'records', 'network', 'weather', 'people',
] as const; // prettier-ignore
export type FaultCause = (typeof faultCauses)[number];

/** Units a severity is counted in; `m2` is an effective opening. */
export type SeverityUnit = 'm2' | 'm' | 'm3' | 'Nm' | 'Pa' | 'K' | 'V' | 'share' | 'turns' | 'molPerS';

/** How bad a fault can be, in its own unit. */
export interface Severity {
  readonly low: number;
  readonly high: number;
  readonly usual: number;
  readonly unit: SeverityUnit;
}

/** Limits of the exercise that tell a reading from a fault; a scenario's own limits have them all. */
export interface FaultLimits {
  readonly orderShare: number;
  readonly dropPa: number;
  readonly risePa: number;
  readonly riseS: number;
  readonly puffPa: number;
  readonly hissShare: number;
  readonly expectedHissS: number;
  readonly workLelShare: number;
  readonly closingPastHandTurns: readonly [number, number];
  readonly closingNm: readonly [number, number];
}

/** One fault of one run, as it is looked back on. */
export interface Story {
  readonly facts: readonly Fact[];
  readonly job: Job;
  /** The piece it sits on, or null. */
  readonly on: string | null;
  readonly severity: number;
  readonly struckAtS: number;
  readonly limits: FaultLimits;
  readonly held: (id: HoldPointId) => boolean;
}

/** Whether the fault showed itself with this fact, the one at that index of the story. */
export type Felt = (fact: Fact, story: Story, at: number) => boolean;

/** The work it makes dangerous: what a hold point guards, or work of its own; whichever begins first. */
export interface Endangers {
  readonly holdPoints?: readonly HoldPointId[];
  readonly work?: Felt;
}

/**
 * Whether what was done from the fact at that index on was the right answer. The story then ends with the fact with which
 * the work it endangers began, where it did.
 */
export type Reaction = (story: Story, noticedAt: number) => boolean;

/** Where a job already has the fault. */
export interface Found {
  readonly on: string | null;
  readonly severity: number;
}

/** What a fault costs an exercise in figures; `meaning` works it out. */
export type Cost =
  | 'firstChamber' | 'secondChamber' | 'bothChambers' | 'jointFlaw' | 'looseJoint' | 'plugPasses' | 'ballPasses'
  | 'gasLost' | 'holeLel' | 'drift' | 'hiss' | 'asPlanted'; // prettier-ignore

/** One thing that can be wrong: what it does to a job, how it shows, what it endangers, and what answers it. */
export interface Fault {
  readonly id: FaultId;
  readonly family: FaultFamily;
  readonly cause: FaultCause;
  /** Null where there is only one way to be wrong. */
  readonly severity: Severity | null;
  /** Kinds of piece it can sit on; none where it sits on no piece. */
  readonly targets: readonly KitKind[];
  readonly triggers: readonly TriggerKind[];
  /** The job with the fault in it from `atS` on. It changes conditions of pieces, workpiece, system and site, no pressure. */
  readonly plant: (job: Job, severity: number, on: string | null, atS: number) => Job;
  readonly foundIn: (job: Job) => readonly Found[];
  readonly feltBy: Felt;
  readonly endangers: Endangers;
  readonly rightReaction: Reaction;
  /** What the work does anyway that leaves nothing of it. */
  readonly goneWith?: Felt;
  /** Reasons to refer back that name it truly. */
  readonly refer: readonly ReferReason[];
  /** Causes it shares with what else a judge charges. */
  readonly shares: readonly string[];
  readonly costs: Cost;
}
