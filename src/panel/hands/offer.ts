import type { Action } from '../../core/rig/index.ts';
import type { RunState } from '../../core/run/index.ts';
import type { Catalogue, Units, Voice } from '../../text/index.ts';

/** One thing a hand can be asked to do: a button. */
export interface Offer {
  readonly name: string;
  readonly action: Action;
  /** Already so: done before, or standing that way. Doing it again is allowed. */
  readonly done?: boolean;
  /** Ends the run: asked once more before it is done. */
  readonly sure?: string;
}

/** Buttons that belong together. `feels` is what the hand felt there last, in words. */
export interface Row {
  readonly name: string;
  readonly offers: readonly Offer[];
  readonly feels?: string;
  /** The row's work is done with or without a second wrench, or watched for so long. */
  readonly asks?: 'holdBack' | 'watch';
}

/** What a row needs to know to be made. */
export interface Grip {
  readonly run: RunState;
  readonly words: Catalogue;
  readonly voice: Voice;
  readonly units: Units;
  readonly holdBack: boolean;
  /** How long leak fluid is watched, s. */
  readonly watchS: number;
}

export type Rows = (grip: Grip) => readonly Row[];
