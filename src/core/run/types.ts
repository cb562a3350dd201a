import type { Network } from '../physics/index.ts';
import type { Action, Fact, Hindrance, RigState } from '../rig/index.ts';
import type { ProcedureValue } from '../procedure/index.ts';
import type { Scenario } from '../scenario/index.ts';

/** Gas in the cells at the last natural step (or action), mol, in the order of the network's cells. */
export interface GasMesh {
  readonly atS: number;
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
  /** Gas of the release now going on, mol; back to zero once the hole is quiet. */
  readonly puffMol: number;
}

/** The mixing box that is the hole, and the detector in it. */
export interface HoleAir {
  readonly gasFraction: number;
  readonly detectorLelShare: number;
  readonly overRange: boolean;
  readonly peakLelShare: number;
  readonly overAlarmS: readonly [number, number];
  readonly alarm: 0 | 1 | 2;
  /** How long somebody has been down in air that does not keep a person awake, s. */
  readonly lowOxygenS: number;
}

/** What the ear follows. */
export interface EarState {
  /** When the bleed began to be heard, or null while it is quiet. */
  readonly hissSinceS: number | null;
  /** What blows into the hole, since when, and how much it has let out, mol. */
  readonly blowing: { readonly from: string; readonly sinceS: number; readonly mol: number } | null;
  readonly reliefLifted: boolean;
  readonly saddleLifted: boolean;
  /** Said once: the air of the hole, or the jet in it, can burn. */
  readonly flammable: boolean;
}

/** A planted fault that has struck: which of the exercise's faults, and when. */
export interface Struck {
  readonly index: number;
  readonly atS: number;
}

/** One run: all that is true now. Plain data; a function of scenario and actions alone. */
export interface RunState {
  readonly scenario: Scenario;
  readonly rig: RigState;
  /** In the order they struck. The rig's job is the exercise's own with these in it. */
  readonly struck: readonly Struck[];
  /** Cells and links as the rig stood at the last action or mark. */
  readonly network: Network;
  readonly gas: GasMesh;
  /** Last action that touched the gas, and the next mark of time at which seals are looked at again, s. */
  readonly sinceS: number;
  /** Until when slow things (bedding links, a creeping stopper) have been aged, s. */
  readonly agedS: number;
  readonly markS: number;
  readonly ledger: Ledger;
  readonly air: HoleAir;
  readonly ear: EarState;
  readonly procedure: ProcedureValue;
  readonly facts: readonly Fact[];
  readonly clockS: number;
  /** Hands are at work until then. */
  readonly busyUntilS: number;
  readonly actions: number;
  /** Moles that moved through links so far, and the worst mass-closure error of any step as a share of them. */
  readonly throughputMol: number;
  readonly closure: number;
}

export type Attempted = { readonly run: RunState } | { readonly hindrance: Hindrance };

export interface RecordEntry {
  readonly atS: number;
  readonly action: Action;
}

/** Who performed a run, by their own word. */
export interface Performer {
  readonly person: string;
  /** Counted from 1 for this person and exercise. */
  readonly attempt: number;
  /** Wall clock, ISO 8601 in UTC; null where it is not known. */
  readonly begunAt: string | null;
}

/** What a record may say beside what the hands did: who it was, and how its maker judged it. Bound by the chain. */
export interface SaidOfRun {
  readonly by?: Performer;
  /** How it was sat: practised or assessed, and how often the coach was asked. */
  readonly sitting?: { readonly mode: 'practice' | 'assessment'; readonly asked: number };
  /** Shown where the run cannot be judged again; never believed. */
  readonly said?: {
    readonly verdict: 'pass' | 'fail' | 'critical';
    readonly ending: 'complete' | 'referred' | 'isolated' | 'hurt' | 'none';
    readonly score: number;
  };
}

/** A run as a file: canonical JSON, self-contained with its scenario. */
export interface RunRecord extends SaidOfRun {
  readonly format: 'stillmain-run';
  readonly version: 1 | 2;
  readonly engine: string;
  readonly scenario: Scenario;
  readonly entries: readonly RecordEntry[];
  /** Hash chain, hex: see `chainOf`. */
  readonly chain: readonly string[];
  /** Digest of the whole state at the end, hex. */
  readonly endDigest: string;
  readonly endS: number;
}
