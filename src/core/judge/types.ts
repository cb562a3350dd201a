import type { Heading } from '../scenario/index.ts';
import type { HoldPointId } from '../rig/index.ts';
import type { FindingId } from './catalogue.ts';

export type HoldPointOutcome = 'held' | 'missed' | 'false' | 'misled' | 'notReached';

/** One thing noticed. `numbers` hold what the finding rests on, SI, named with their units. */
export interface Finding {
  readonly id: FindingId;
  readonly heading: Heading;
  readonly atS: number;
  /** What it costs under its heading; 0 where another finding already paid for the same cause. */
  readonly points: number;
  readonly critical: boolean;
  readonly holdPoint: HoldPointId | null;
  readonly numbers: Readonly<Record<string, number>>;
  /** Names of what was wanting: evidence items of the hold point, kit ids, or abnormal conditions. */
  readonly items: readonly string[];
}

export interface HoldPointResult {
  readonly id: HoldPointId;
  readonly outcome: HoldPointOutcome;
  /** When it was decided: the signature, or else the guarded work, s. */
  readonly atS: number | null;
}

export interface Assessment {
  readonly verdict: 'pass' | 'fail' | 'critical';
  readonly ending: 'complete' | 'referred' | 'isolated' | 'hurt' | 'none';
  readonly intendedEnding: 'complete' | 'referred' | 'isolated';
  /** Ended as intended, and a stop for a reason that was seen. */
  readonly endedAsIntended: boolean;
  readonly score: number;
  readonly headings: Readonly<Record<Heading, { readonly got: number; readonly of: number }>>;
  readonly findings: readonly Finding[];
  readonly holdPoints: readonly HoldPointResult[];
  readonly ledger: {
    readonly toExcavationKg: number;
    readonly throughBleedKg: number;
    readonly toServiceKg: number;
    readonly airIntoMainKg: number;
  };
  readonly peakLelFraction: number;
  readonly actions: number;
  readonly digest: string;
  readonly engine: string;
  readonly simulatedS: number;
}
