/** Molar flow of a link and its slopes: what a law hands the solver. Reused, never kept. */
export interface FlowAt {
  /** mol/s, positive from `from` to `to`. */
  molPerS: number;
  /** Slope by the pressure of `from`, mol/(s·Pa). */
  byFrom: number;
  /** Slope by the pressure of `to`, mol/(s·Pa). */
  byTo: number;
  /** Slope by the donor's gas fraction, mol/s. */
  byFraction: number;
}

/** The gas a law passes: the donor's mixture, at one temperature. */
export interface Mixture {
  /** Mole fraction of fuel gas. */
  fraction: number;
  molarMassKgPerMol: number;
  /** Slope of molar mass by fraction. */
  molarMassSlope: number;
  viscosityPaS: number;
  viscositySlope: number;
  /** R·T, J/mol. */
  rt: number;
}

/** Sets no flow and no slopes. */
export function setStill(out: FlowAt): void {
  out.molPerS = 0;
  out.byFrom = 0;
  out.byTo = 0;
  out.byFraction = 0;
}

/** Turns a flow computed from high to low pressure into one from `to` to `from`. */
export function turnRound(out: FlowAt): void {
  const byHigh = out.byFrom;
  out.molPerS = -out.molPerS;
  out.byFrom = -out.byTo;
  out.byTo = -byHigh;
  out.byFraction = -out.byFraction;
}

/**
 * Multiplies a flow by an opening between 0 and 1 that itself depends on the pressures.
 */
export function throttle(out: FlowAt, opening: number, byFrom: number, byTo: number): void {
  out.byFrom = out.byFrom * opening + out.molPerS * byFrom;
  out.byTo = out.byTo * opening + out.molPerS * byTo;
  out.byFraction *= opening;
  out.molPerS *= opening;
}
