import { log10 } from '../units/index.ts';

/**
 * Leak of a seal that energises itself, m²: contact stress is what it was fitted with plus the gas pressure, so that
 * a flaw leaks most at low pressure. The flaw's area is given as it would be at a reference gauge pressure.
 */
export function selfEnergisedLeakCdAM2(
  flawCdAM2: number,
  fittedStressPa: number,
  gaugePa: number,
  referenceGaugePa: number,
): number {
  return (flawCdAM2 * (fittedStressPa + referenceGaugePa)) / (fittedStressPa + Math.max(0, gaugePa));
}

/**
 * Pressure up to which a cup gasket stays seated, Pa gauge: the clamp is then the margin over the gas's end load.
 * What leans the saddle takes from the clamp that counts. Past it the legs stretch and the collar lifts.
 */
export function cupGasketHoldsPa(clampN: number, leanN: number, endLoadM2: number, margin: number): number {
  return Math.max(0, clampN / margin - leanN) / endLoadM2;
}

/** Stress left in rubber after a time, as a share: 1 − r·log10(t/t0) past t0, never below zero. */
export function relaxationShare(elapsedS: number, perDecade: number, fromS: number): number {
  return elapsedS <= fromS ? 1 : Math.max(0, 1 - perDecade * log10(elapsedS / fromS));
}
