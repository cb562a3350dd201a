import { exp, ln } from '../units/index.ts';

/** A gas detector: what its sensor has come to, and whether it has gone over range since it was last reset. */
export interface DetectorState {
  /** Sensor, as a share of LEL. */
  sensedLel: number;
  overRange: boolean;
}

/** A detector in clean air. */
export const CLEAN_DETECTOR: DetectorState = { sensedLel: 0, overRange: false };

/**
 * The sensor follows with one time constant lagS: exact for a steady concentration, given as a share of LEL.
 * Past 100 % LEL it latches, because a catalytic sensor may read low above its range.
 */
export function advanceDetector(
  state: DetectorState,
  presentLel: number,
  durationS: number,
  lagS: number,
): DetectorState {
  const sensedLel = presentLel + (state.sensedLel - presentLel) * exp(-durationS / lagS);
  return { sensedLel, overRange: state.overRange || sensedLel > 1 };
}

/** What its display shows, as a share of LEL in steps of stepLel; null is "over range". */
export function readDetector(state: DetectorState, stepLel: number): number | null {
  if (state.overRange) return null;
  const steps = Math.floor(state.sensedLel / stepLel + 0.5);
  return Math.max(0, steps) * stepLel;
}

/**
 * When a sensor that follows a steady concentration passes a threshold, s from now; null if it never does.
 * Both concentrations are shares of LEL.
 */
export function detectorCrossingS(
  state: DetectorState,
  presentLel: number,
  thresholdLel: number,
  lagS: number,
): number | null {
  const from = state.sensedLel - presentLel;
  const to = thresholdLel - presentLel;
  if (from === 0 || to / from <= 0 || to / from > 1) return null;
  return -lagS * ln(to / from);
}
