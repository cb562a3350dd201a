import type { Assessment } from '../judge/index.ts';
import type { Explored } from './abstract/index.ts';

/** What a reviewer would write beside a field of the exercise. Words belong to the catalogue. */
export interface Note {
  /** Path of the field it concerns, as in the document. */
  readonly field: string;
  readonly id: NoteId;
  readonly numbers: Readonly<Record<string, number>>;
  /** What it is about where one name says it: a hold point, a finding, a hand, a reason. */
  readonly about: string | null;
  /** An exercise with a grave note cannot be called proved. */
  readonly grave: boolean;
}

export const noteIds = [
  'stopsForReason',
  'endsOtherwise',
  'failsSteady',
  'deadEnd',
  'searchOpen',
  'renewalUnsearched',
  'handPasses',
  'goodWorkCosts',
  'holdPointNotReached',
  'holdPointLeftOut',
  'holdPointHeavy',
  'weightsAddUp',
  'weightWithoutCause',
  'headingHeavy',
  'cutAboveSteady',
  'cutBelowHasty',
  'timeShort',
  'faultHidden',
  'faultUncaught',
  'fewNoticed',
  'harmlessPunished',
] as const;
export type NoteId = (typeof noteIds)[number];

/** How one scripted hand fared. */
export interface HandResult {
  readonly verdict: Assessment['verdict'];
  readonly ending: Assessment['ending'];
  readonly score: number;
  readonly simulatedS: number;
  readonly reason: string | null;
}

/** One planted fault: whether a crew that does what is asked meets it in time, and what catches a crew that goes on. */
export interface FaultResult {
  readonly id: string;
  readonly felt: boolean;
  readonly caughtBy: readonly string[];
}

/** The sensitivity of the judging over single deviations from the model run. */
export interface Noticing {
  readonly tried: number;
  /** How many there are that a rule is written for: all of them, or as many as were tried of them, spread evenly. */
  readonly of: number;
  readonly noticed: number;
  readonly share: number;
  readonly harmless: number;
  readonly punished: number;
  /** Some of those that matter and cost too little, and of those that are harmless and cost something: act, and how it went. */
  readonly missed: readonly string[];
  readonly unfair: readonly string[];
}

/** Everything a proof of an exercise found. */
export interface Proof {
  readonly finishable: boolean;
  /** Not begun, and so neither closed nor with any state, where a steady crew does not pass. */
  readonly explored: Explored;
  readonly faults: readonly FaultResult[];
  /** Null where it was not asked for, was stopped, or a steady crew does not pass: there is no model run then. */
  readonly noticing: Noticing | null;
  readonly hands: Readonly<Record<string, HandResult>>;
  readonly notes: readonly Note[];
  /** No grave note: fit for class. */
  readonly proved: boolean;
}

/** Told between pieces of work; answering false stops the proof, which is then not closed. */
export type GoOn = (part: 'hands' | 'search' | 'faults' | 'noticing', share: number) => boolean;
