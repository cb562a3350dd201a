import type { Heading } from '../scenario/index.ts';
import type { HoldPointId } from '../rig/index.ts';

export type HoldPointOutcome = 'held' | 'missed' | 'false' | 'misled' | 'notReached';

/** One thing noticed. `numbers` hold what the finding rests on, SI, named with their units. */
export interface Finding {
  readonly id: string;
  readonly heading: Heading;
  readonly atS: number;
  readonly points: number;
  readonly critical: boolean;
  readonly holdPoint: HoldPointId | null;
  readonly numbers: Readonly<Record<string, number>>;
}

export interface Assessment {
  readonly verdict: 'pass' | 'fail' | 'critical';
  readonly ending: 'complete' | 'referred' | 'isolated' | 'hurt' | 'none';
  readonly intendedEnding: 'complete' | 'referred' | 'isolated';
  readonly score: number;
  readonly headings: Readonly<Record<Heading, { readonly got: number; readonly of: number }>>;
  readonly findings: readonly Finding[];
  readonly holdPoints: readonly { readonly id: HoldPointId; readonly outcome: HoldPointOutcome; readonly atS: number | null }[];
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
