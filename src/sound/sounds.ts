import type { Readings, RunState } from '../core/run/index.ts';

/** A moment of a run as the ear meets it: what is read there, and how the rig stands. */
export interface Moment {
  readonly readings: Readings;
  readonly rig: RunState['rig'];
}

export type LastingSound = 'hiss.bleed' | 'hiss.vent' | 'hiss.hole' | 'alarm.low' | 'alarm.high';
export type PassingSound =
  | 'ratchet'
  | 'ratchet.hard'
  | 'knock'
  | 'detent'
  | 'thread'
  | 'skip'
  | 'free'
  | 'handle'
  | 'pump'
  | 'touch'
  | 'slide'
  | 'bang'
  | 'saw'
  | 'tear';

/** Where a sound comes from, as seen by who stands before the rig. */
export type Side = 'left' | 'middle' | 'right' | 'below';
export type Strength = 'faint' | 'soft' | 'clear' | 'loud';

interface Heard {
  readonly from: Side;
  /** Loudness as a share of the loudest that is played, above 0 and at most 1. */
  readonly share: number;
}

/** Goes on for as long as what causes it does. */
export interface Lasting extends Heard {
  readonly kind: LastingSound;
  readonly lasts: true;
  /** Middle of the hiss's band, or the pitch of the alarm, Hz. */
  readonly pitchHz: number;
}

/** Is over by itself; `strokes` of it, one after the other. */
export interface Passing extends Heard {
  readonly kind: PassingSound;
  readonly lasts: false;
  readonly strokes: number;
}

export type Sound = Lasting | Passing;

/** How strong a caption calls it. Even steps of the share that is played. */
export function strengthOf({ share }: Pick<Heard, 'share'>): Strength {
  if (share < 0.15) return 'faint';
  if (share < 0.4) return 'soft';
  return share < 0.7 ? 'clear' : 'loud';
}

/** Beeps of the alarm in a second; what flashes with it keeps to the same. */
export const alarmHz = { 'alarm.low': 1, 'alarm.high': 2 } as const;
