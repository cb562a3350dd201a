/** Absolute pressure of a shut volume after its temperature changed, Pa: p2 = p1·T2/T1. */
export function heldPressureAbsPa(pressureAbsPa: number, fromK: number, toK: number): number {
  return (pressureAbsPa * toK) / fromK;
}

/** Drift of a shut volume, Pa/K: p/T. */
export function driftPaPerK(pressureAbsPa: number, temperatureK: number): number {
  return pressureAbsPa / temperatureK;
}

/** Pressure of a volume after it has been let into a larger one that was at the atmosphere, gauge Pa (Boyle). */
export function sharedGaugePa(gaugePa: number, volumeM3: number, addedM3: number): number {
  return (gaugePa * volumeM3) / (volumeM3 + addedM3);
}
