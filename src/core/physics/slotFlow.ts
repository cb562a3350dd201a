import { type FlowAt, type Mixture } from './flowAt.ts';
import { type CurvePair, orificeFlow } from './orificeFlow.ts';

/** A crack as the solver takes it: cube-law factor and the nozzle it can never exceed. */
export interface SlotSize {
  /** perimeter·gap³/(24·length), m³. */
  cubeM3: number;
  /** cd·perimeter·gap, m². */
  cdAM2: number;
}

/** Lays a crack's dimensions into the two numbers the law needs. */
export function slotSize(perimeterM: number, gapM: number, lengthM: number, cd: number): SlotSize {
  const areaM2 = perimeterM * gapM;
  return { cubeM3: (areaM2 * gapM * gapM) / (24 * lengthM), cdAM2: cd * areaM2 };
}

/**
 * Molar flow of a crack from a higher to a lower pressure. Laminar between plates: w·h³·(p1² − p2²)/(24·μ·l·R·T);
 * joined to the nozzle of the same open area as 1/n² = 1/n_laminar² + 1/n_nozzle², so it never passes more than that.
 */
export function slotFlow(
  size: SlotSize,
  absPa: Float64Array,
  high: number,
  low: number,
  mixture: Mixture,
  curves: CurvePair,
  slopes: boolean,
  out: FlowAt,
): void {
  orificeFlow(size, absPa, high, low, mixture, curves, slopes, out);
  const highAbsPa = absPa[high];
  const lowAbsPa = absPa[low];
  if (!(out.molPerS > 0)) {
    if (slopes) stillSlopes(size, highAbsPa, mixture, out);
    return;
  }
  const conductance = size.cubeM3 / (mixture.viscosityPaS * mixture.rt);
  const laminar = conductance * (highAbsPa - lowAbsPa) * (highAbsPa + lowAbsPa);
  const ratio = laminar / out.molPerS;
  const joined = 1 / Math.sqrt(1 + ratio * ratio);
  out.molPerS = laminar * joined;
  if (!slopes) return;
  const laminarShare = joined * joined * joined;
  const nozzleShare = laminarShare * ratio * ratio * ratio;
  out.byFrom = laminarShare * conductance * 2 * highAbsPa + nozzleShare * out.byFrom;
  out.byTo = -laminarShare * conductance * 2 * lowAbsPa + nozzleShare * out.byTo;
  out.byFraction =
    (-laminarShare * laminar * mixture.viscositySlope) / mixture.viscosityPaS + nozzleShare * out.byFraction;
}

/** At no drop the flow is nothing and its slope is that of the two laws joined. */
function stillSlopes(size: SlotSize, absPa: number, mixture: Mixture, out: FlowAt): void {
  const laminarSlope = (size.cubeM3 * 2 * absPa) / (mixture.viscosityPaS * mixture.rt);
  const nozzleSlope = -out.byTo;
  if (!(nozzleSlope > 0) || !(laminarSlope > 0)) return;
  const ratio = laminarSlope / nozzleSlope;
  const slope = laminarSlope / Math.sqrt(1 + ratio * ratio);
  out.byFrom = slope;
  out.byTo = -slope;
  out.byFraction = 0;
}
