import type { Action, Fact, Hindrance, RigState } from '../rig/index.ts';
import type { ProcedureValue } from '../procedure/index.ts';
import type { Scenario } from '../scenario/index.ts';

/** Gas in the cells at the last natural step (or action), mol, in the order of `cells`. */
export interface GasMesh {
  readonly atS: number;
  readonly cells: readonly string[];
  readonly airMol: readonly number[];
  readonly gasMol: readonly number[];
  /** Size of the next natural step, s. */
  readonly stepS: number;
}

/** Where gas went since the start, mol of fuel gas (air where said). Kilograms are these times the molar mass. */
export interface Ledger {
  readonly toHoleMol: number;
  readonly throughBleedMol: number;
  readonly toServiceMol: number;
  readonly airIntoMainMol: number;
  readonly fromMainMol: number;
  /** Largest single release into the hole between two quiet moments, mol. */
  readonly largestPuffMol: number;
}

/** The mixing box that is the hole, and the detector in it. */
export interface HoleAir {
  readonly gasFraction: number;
  readonly detectorLelShare: number;
  readonly overRange: boolean;
  readonly peakLelShare: number;
  readonly overAlarmS: readonly [number, number];
  readonly alarm: 0 | 1 | 2;
}

/** What the ear follows. */
export interface EarState {
  /** When the bleed began to be heard, or null while it is quiet. */
  readonly hissSinceS: number | null;
  readonly blowSinceS: number | null;
  readonly blowMol: number;
}

/** One run: all that is true now. Plain data; a function of scenario and actions alone. */
export interface RunState {
  readonly scenario: Scenario;
  readonly rig: RigState;
  readonly gas: GasMesh;
  readonly ledger: Ledger;
  readonly air: HoleAir;
  readonly ear: EarState;
  readonly procedure: ProcedureValue;
  readonly facts: readonly Fact[];
  readonly clockS: number;
  /** Hands are at work until then. */
  readonly busyUntilS: number;
  readonly actions: number;
  /** Worst mass-closure error so far, share of throughput. */
  readonly closure: number;
}

export type Attempted = { readonly run: RunState } | { readonly hindrance: Hindrance };

export interface RecordEntry {
  readonly atS: number;
  readonly action: Action;
}

/** A run as a file: canonical JSON, self-contained with its scenario. */
export interface RunRecord {
  readonly format: 'stillmain-run';
  readonly version: 1;
  readonly engine: string;
  readonly scenario: Scenario;
  readonly entries: readonly RecordEntry[];
  /** Hash chain, one link an action, hex. */
  readonly chain: readonly string[];
  /** Digest of the whole state at the end, hex. */
  readonly endDigest: string;
  readonly endS: number;
}
