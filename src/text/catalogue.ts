import type { PieceKind } from '../core/catalogue/index.ts';
import type {
  Action,
  ActionKind,
  Bubbles,
  CleanPlace,
  DetectorPlace,
  Ending,
  Fact,
  GaugeName,
  Hindrance,
  HoldPointId,
  LeakPlace,
  LookPlace,
  MarkPlace,
  Measure,
  RecordField,
  ReferReason,
  SiteTask,
  TroubleKind,
} from '../core/rig/index.ts';
import type { Defects } from '../core/rig/index.ts';
import type { SafeStateId, StageId } from '../core/procedure/index.ts';
import type { Heading } from '../core/scenario/index.ts';
import type {
  AbnormalConditionId,
  Assessment,
  Finding,
  FindingId,
  HoldPointOutcome,
} from '../core/judge/index.ts';
import type { Units } from './units.ts';

/** How pieces are called while a sentence is made: by id, as the kit of this job has them. */
export interface Speech {
  readonly units: Units;
  /** `seat ring 1`, `chain no. 2`: name and stamp, without article. */
  readonly piece: (id: string) => string;
  /** The same with the definite article. */
  readonly thePiece: (id: string) => string;
}

export type ActionOf<K extends ActionKind> = Extract<Action, { kind: K }>;
export type FactKind = Fact['fact'];
export type FactOf<K extends FactKind> = Extract<Fact, { fact: K }>;

/** What a hand feels, in words that facts and the twin share. */
export interface FeltWords {
  /** A torque as a hand tells it, N·m. */
  readonly grip: (torqueNm: number, speech: Speech) => string;
  /** The push on the rod as the hand feels it, N upward. */
  readonly push: (feltN: number, speech: Speech) => string;
  /** Where the handle of the isolation valve stands. */
  readonly valveAt: (openRad: number) => string;
  /** What the rod can have hold of. */
  readonly loads: Readonly<Record<string, string>>;
}

/** Facts of which the sentence in practice tells more than a crew could know: figures of the model, and what it judged. */
export type SensedKind =
  | 'blow.began'
  | 'blow.ended'
  | 'branch.cut'
  | 'chain.released'
  | 'chain.tapped'
  | 'gas.alarm'
  | 'gas.ignited'
  | 'gaugeRing.tried'
  | 'listened'
  | 'piece.rejected'
  | 'piece.removed'
  | 'plug.free'
  | 'pumped'
  | 'relief.lifted'
  | 'relief.shut'
  | 'rod.still'
  | 'rod.thrown'
  | 'saddle.lifted'
  | 'stopper.drawn'
  | 'stopper.torn'
  | 'tee.free'
  | 'testSet.pumped';

/** A task or place as a thing to do and as a thing done. */
export interface DoneAndDue {
  readonly button: string;
  readonly done: string;
}

export interface HoldPointWords {
  readonly title: string;
  /** The work that must not start before it is signed. */
  readonly guards: string;
  /** What must have been read, seen and done. */
  readonly evidence: readonly string[];
}

export interface StageWords {
  readonly title: string;
  readonly aim: string;
}

export interface FindingWords {
  readonly title: string;
  /** What happened, with its numbers. */
  readonly happened: (finding: Finding, speech: Speech) => string;
  /** The hazard. */
  readonly why: string;
  readonly next: string;
}

/** All that can be said in one language. A language is complete when it is of this type. */
export interface Catalogue {
  readonly pieces: Readonly<Record<PieceKind, { readonly name: string; readonly what: string }>>;
  /** The piece of a kind with its definite article: `the seat ring 1`. */
  readonly the: (kind: PieceKind, name: string) => string;
  /** Tells pieces apart that are alike: `no. 2`. */
  readonly numbered: (no: number) => string;
  readonly felt: FeltWords;
  /** What looking a piece over can bring to light. */
  readonly defects: Readonly<Record<keyof Defects | 'sizeNotAsStamped', string>>;
  readonly siteTasks: Readonly<Record<SiteTask, DoneAndDue>>;
  readonly lookPlaces: Readonly<Record<LookPlace, string>>;
  readonly leakPlaces: Readonly<Record<LeakPlace, string>>;
  readonly cleanPlaces: Readonly<Record<CleanPlace, string>>;
  readonly markPlaces: Readonly<Record<MarkPlace, string>>;
  readonly measures: Readonly<Record<Measure, string>>;
  readonly gauges: Readonly<Record<GaugeName, string>>;
  readonly detectorPlaces: Readonly<Record<DetectorPlace, string>>;
  readonly recordFields: Readonly<Record<RecordField, string>>;
  readonly bubbles: Readonly<Record<Bubbles, string>>;
  readonly referReasons: Readonly<Record<ReferReason, string>>;
  readonly hindrances: Readonly<Record<Hindrance, string>>;
  readonly actions: {
    readonly [K in ActionKind]: {
      readonly button: (action: ActionOf<K>, speech: Speech) => string;
      readonly done: (action: ActionOf<K>, speech: Speech) => string;
    };
  };
  readonly facts: { readonly [K in FactKind]: (fact: FactOf<K>, speech: Speech) => string };
  /** The same facts as a crew has them: seen, felt, heard. */
  readonly sensed: { readonly [K in SensedKind]: (fact: FactOf<K>, speech: Speech) => string };
  readonly stages: Readonly<Record<StageId, StageWords>>;
  /** What to stop means, at each stage. */
  readonly safeStates: Readonly<Record<SafeStateId, string>>;
  readonly holdPoints: Readonly<Record<HoldPointId, HoldPointWords>>;
  readonly outcomes: Readonly<Record<HoldPointOutcome, { readonly word: string; readonly means: string }>>;
  readonly headings: Readonly<Record<Heading, string>>;
  readonly verdicts: Readonly<Record<Assessment['verdict'], string>>;
  readonly endings: Readonly<
    Record<Ending['kind'] | 'none', { readonly title: string; readonly says: string }>
  >;
  readonly findings: Readonly<Record<FindingId, FindingWords>>;
  /** What a hold point rests on, as something that may be wanting. */
  readonly evidenceItems: Readonly<Record<HoldPointId, Readonly<Record<string, string>>>>;
  readonly conditions: Readonly<Record<AbnormalConditionId, string>>;
  /** What is amiss beyond the pieces, as a crew finds it. */
  readonly troubles: Readonly<Record<TroubleKind, string>>;
  /** What is wrong with a document, from how the core says it. */
  readonly problem: (says: string) => string;
  readonly plain: Readonly<Record<string, string>>;
}
