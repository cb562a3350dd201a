import { cos, GAS_CONSTANT, pow } from '../units/index.ts';

/**
 * An isentropic nozzle for one ratio of heat capacities, without pow at run time. With y = 1 − p2/p1, the flow
 * function squared over y is a smooth curve from no drop to choking; five degrees of it are within 1e-6.
 */
export interface NozzleCurve {
  heatCapacityRatio: number;
  /** y at which it chokes: 1 − (2/(k+1))^(k/(k−1)). */
  chokeDrop: number;
  /** Coefficients of Ψ²/y in rising powers of y. */
  coefficients: readonly number[];
}

/**
 * The smooth band: √y is written y/(y² + δ²)^¼, so that the law crosses no flow with a finite slope. It takes 0.25 %
 * off at a 1 % drop and 2e-6 at choking. (A kinked band cost a million steps in one action.)
 */
export const SMOOTH_BAND = 1e-3;
const BAND_SQUARED = SMOOTH_BAND * SMOOTH_BAND;

/** Literal curves of the gases we carry; a test refits them. */
const KNOWN: readonly NozzleCurve[] = [
  {
    heatCapacityRatio: 1.3,
    chokeDrop: 0.45427226618593497,
    coefficients: [
      1.9999997756051497, -2.307656911189465, 0.09773259001652775, 0.07011765027109669, 0.006589870518541428,
      0.07222004736973549,
    ],
  },
  {
    heatCapacityRatio: 1.31,
    chokeDrop: 0.4560729624346779,
    coefficients: [
      1.9999997732189583, -2.290040705560589, 0.08651859664518731, 0.06663504895809608, 0.005346078155621691,
      0.07091636403647547,
    ],
  },
  {
    heatCapacityRatio: 1.4,
    chokeDrop: 0.47171821228282584,
    coefficients: [
      1.999999767080419, -2.142821774390387, -0.0008515016589683724, 0.03643942263625602,
      -0.00431625949292192, 0.056559860662022815,
    ],
  },
];

/** The curve for a ratio of heat capacities between 1.05 and 2: a literal one if we carry it, else fitted here. */
export function nozzleCurve(heatCapacityRatio: number): NozzleCurve {
  for (const curve of KNOWN) if (curve.heatCapacityRatio === heatCapacityRatio) return curve;
  return fitNozzleCurve(heatCapacityRatio);
}

/** Fits the curve through the exact law at six Chebyshev points. Throws RangeError outside 1.05 to 2. */
export function fitNozzleCurve(heatCapacityRatio: number): NozzleCurve {
  if (!(heatCapacityRatio >= 1.05 && heatCapacityRatio <= 2)) {
    throw new RangeError('A ratio of heat capacities lies between 1.05 and 2.');
  }
  const chokeDrop = 1 - criticalRatio(heatCapacityRatio);
  const count = 6;
  const at: number[] = [];
  const table: number[] = [];
  for (let i = 0; i < count; i += 1) {
    const y = (chokeDrop / 2) * (1 - cos(((2 * i + 1) * Math.PI) / (2 * count)));
    const psi = exactNozzlePsi(heatCapacityRatio, 1 - y);
    at.push(y);
    table.push((psi * psi) / y);
  }
  for (let order = 1; order < count; order += 1) {
    for (let i = count - 1; i >= order; i -= 1) {
      table[i] = (table[i] - table[i - 1]) / (at[i] - at[i - order]);
    }
  }
  let coefficients = [table[count - 1]];
  for (let i = count - 2; i >= 0; i -= 1) {
    const next = [table[i], ...coefficients];
    for (let j = 0; j < coefficients.length; j += 1) next[j] -= at[i] * coefficients[j];
    coefficients = next;
  }
  return { heatCapacityRatio, chokeDrop, coefficients };
}

/** Pressure ratio at and below which a nozzle chokes: (2/(k+1))^(k/(k−1)), API 520-1. */
export function criticalRatio(heatCapacityRatio: number): number {
  return pow(2 / (heatCapacityRatio + 1), heatCapacityRatio / (heatCapacityRatio - 1));
}

/**
 * The exact flow function Ψ: mass flow = CdA·p1·√(M/(RT))·Ψ, with pow. Ψ² = 2k/(k−1)·(r^(2/k) − r^((k+1)/k)), r not
 * below the critical ratio. For tests, tables and fits; the solver uses the curve.
 */
export function exactNozzlePsi(heatCapacityRatio: number, pressureRatio: number): number {
  const k = heatCapacityRatio;
  const r = Math.max(pressureRatio, criticalRatio(k));
  return Math.sqrt(((2 * k) / (k - 1)) * (pow(r, 2 / k) - pow(r, (k + 1) / k)));
}

/** Ψ by the curve, choked and unchoked, with the smooth band. */
export function nozzlePsi(curve: NozzleCurve, pressureRatio: number): number {
  const y = Math.min(1 - pressureRatio, curve.chokeDrop);
  return y * psiOverDrop(curve.coefficients, y);
}

/** Ψ/y at a drop y up to choking. */
export function psiOverDrop(c: readonly number[], y: number): number {
  const g = c[0] + y * (c[1] + y * (c[2] + y * (c[3] + y * (c[4] + y * c[5]))));
  return Math.sqrt(g / Math.sqrt(y * y + BAND_SQUARED));
}

/** dΨ/dy at a drop y short of choking, given Ψ/y there. */
export function psiSlope(c: readonly number[], y: number, overDrop: number): number {
  const g = c[0] + y * (c[1] + y * (c[2] + y * (c[3] + y * (c[4] + y * c[5]))));
  const slope = c[1] + y * (2 * c[2] + y * (3 * c[3] + y * (4 * c[4] + y * 5 * c[5])));
  return overDrop * (1 + 0.5 * y * (slope / g - y / (y * y + BAND_SQUARED)));
}

/** Mass flow through an opening, kg/s: CdA·p1·√(M/(RT))·Ψ, at a gas constant R per mole. Zero for no drop. */
export function nozzleMassFlowKgPerS(
  curve: NozzleCurve,
  opening: { cdAM2: number; upstreamAbsPa: number; downstreamAbsPa: number },
  gas: { molarMassKgPerMol: number; temperatureK: number },
): number {
  if (opening.downstreamAbsPa >= opening.upstreamAbsPa) return 0;
  const psi = nozzlePsi(curve, opening.downstreamAbsPa / opening.upstreamAbsPa);
  const root = Math.sqrt(gas.molarMassKgPerMol / (GAS_CONSTANT * gas.temperatureK));
  return opening.cdAM2 * opening.upstreamAbsPa * root * psi;
}
