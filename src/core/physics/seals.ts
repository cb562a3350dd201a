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
 * Gap under a cup gasket's saddle, m: none while the clamp is the margin over the gas's end load; short of that the
 * legs stretch and the collar lifts.
 */
export function cupGasketGapM(
  clampN: number,
  endLoadN: number,
  margin: number,
  legsStiffnessNPerM: number,
): number {
  return Math.max(0, margin * endLoadN - clampN) / legsStiffnessNPerM;
}

/** Stress left in rubber after a time, as a share: 1 − r·log10(t/t0) past t0, never below zero. */
export function relaxationShare(elapsedS: number, perDecade: number, fromS: number): number {
  return elapsedS <= fromS ? 1 : Math.max(0, 1 - perDecade * log10(elapsedS / fromS));
}
