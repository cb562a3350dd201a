import { ln } from '../units/index.ts';
import { type FlowAt, type Mixture, setStill } from './flowAt.ts';
import { type FrictionCurve, frictionCurve, reynoldsAt } from './friction.ts';

/** A pipe as the solver takes it. */
export interface PipeSize {
  diameterM: number;
  lengthM: number;
  lossK: number;
  friction: FrictionCurve;
}

/** Prepares a pipe. */
export function pipeSize(diameterM: number, lengthM: number, roughnessM: number, lossK: number): PipeSize {
  return { diameterM, lengthM, lossK, friction: frictionCurve(roughnessM / diameterM) };
}

/** Drop, as a share of the pressure, within which slopes are calmed. */
const CALM_BAND = 3e-4;

/** Newton steps to the choke ratio; it starts above the root and gains two digits a step and more. */
const CHOKE_STEPS = 8;

/**
 * Isothermal flow of a gas through a pipe with friction, from a higher to a lower pressure:
 * G²·(f·L/D + K + 2·ln(p1/p2)) = (p1² − p2²)·M/(R·T), G in kg/(s·m²), with f by Colebrook taken at the whole drop
 * (exact for a long pipe; a few tenths of a per cent of flow where fittings or acceleration take a third of it).
 * Once the outlet would fall below the choke pressure (Mach 1/√k at the end) the flow depends on p1 alone.
 */
export function pipeFlow(
  pipe: PipeSize,
  absPa: Float64Array,
  from: number,
  to: number,
  mixture: Mixture,
  out: FlowAt,
): void {
  const highAbsPa = absPa[from];
  const low = Math.max(absPa[to], 1e-3 * highAbsPa);
  if (!(highAbsPa > 0) || highAbsPa < low) {
    setStill(out);
    return;
  }
  const d = pipe.diameterM;
  const slender = d / pipe.lengthM;
  const m = mixture.molarMassKgPerMol / mixture.rt;
  const perPa2 = ((d * d) / (mixture.viscosityPaS * mixture.viscosityPaS)) * m * slender;
  const u = perPa2 * (highAbsPa - low) * (highAbsPa + low);
  const q = quotient(pipe, u);
  const w = (highAbsPa * highAbsPa) / (low * low);
  const lnW = w === 1 ? 0 : ln(w);
  if ((w - 1 - lnW - pipe.lossK) * slender * q.q > 1) {
    chokedFlow(pipe, highAbsPa, w, perPa2, mixture, out);
    return;
  }
  // G = Gf/√B with Gf the flow with friction alone and B what acceleration and fittings add.
  const z = pipe.lossK + lnW;
  const b = 1 + q.q * slender * z;
  const rootB = Math.sqrt(b);
  const perRe = mixture.viscosityPaS / d;
  const gf = q.reynolds * perRe;
  const g = gf / rootB;
  const byU = (perRe * q.reByU) / rootB - ((0.5 * g) / b) * slender * z * q.qByU;
  const byZ = ((-0.5 * g) / b) * slender * q.q;
  const areaPerMass = (0.25 * Math.PI * d * d) / mixture.molarMassKgPerMol;
  out.molPerS = areaPerMass * g;
  out.byFrom = areaPerMass * (byU * 2 * perPa2 * highAbsPa + (byZ * 2) / highAbsPa);
  out.byTo = -areaPerMass * (byU * 2 * perPa2 * low + (byZ * 2) / low);
  calmSlopes(highAbsPa, low, out);
  const massShare = mixture.molarMassSlope / mixture.molarMassKgPerMol;
  const viscosityShare = mixture.viscositySlope / mixture.viscosityPaS;
  out.byFraction =
    areaPerMass * (byU * u * (massShare - 2 * viscosityShare) + g * viscosityShare) - out.molPerS * massShare;
}

/**
 * Newton's method on a square root jumps from one side of zero to the other for ever, and so would the solver between
 * two ends of a pipe at almost the same pressure (it cost 9,000 steps in one action). Within CALM_BAND of no drop the
 * slopes handed to the solver pass over to those of the chord, which lands on zero; the flow itself is untouched.
 */
function calmSlopes(highAbsPa: number, lowAbsPa: number, out: FlowAt): void {
  const drop = highAbsPa - lowAbsPa;
  if (!(drop > 0)) return;
  const band = CALM_BAND * highAbsPa;
  const share = (band * band) / (band * band + drop * drop);
  const chord = out.molPerS / drop;
  out.byFrom += share * (chord - out.byFrom);
  out.byTo += share * (-chord - out.byTo);
}

/** Flow of a choked pipe: w = (p1/p*)² solves w − 1 − ln w = K + f·L/D, and G = p*·√(M/(R·T)). */
function chokedFlow(
  pipe: PipeSize,
  highAbsPa: number,
  wideW: number,
  perPa2: number,
  mixture: Mixture,
  out: FlowAt,
): void {
  const slender = pipe.diameterM / pipe.lengthM;
  const whole = perPa2 * highAbsPa * highAbsPa;
  let w = wideW;
  let slopeW = 1;
  let slopeU = 0;
  let u = whole;
  for (let i = 0; i < CHOKE_STEPS; i += 1) {
    u = whole * (1 - 1 / w);
    const q = quotient(pipe, u);
    slopeU = q.qByU / (slender * q.q * q.q);
    slopeW = 1 - 1 / w + (slopeU * whole) / (w * w);
    w -= (w - 1 - ln(w) - pipe.lossK - 1 / (slender * q.q)) / slopeW;
  }
  const m = mixture.molarMassKgPerMol / mixture.rt;
  const g = highAbsPa * Math.sqrt(m / w);
  const areaPerMass = (0.25 * Math.PI * pipe.diameterM * pipe.diameterM) / mixture.molarMassKgPerMol;
  const wByU = -slopeU / slopeW;
  const massShare = mixture.molarMassSlope / mixture.molarMassKgPerMol;
  const viscosityShare = mixture.viscositySlope / mixture.viscosityPaS;
  out.molPerS = areaPerMass * g;
  out.byFrom = areaPerMass * (g / highAbsPa - ((0.5 * g) / w) * wByU * ((2 * u) / highAbsPa));
  out.byTo = 0;
  out.byFraction =
    areaPerMass * g * (0.5 * massShare - (0.5 / w) * wByU * u * (massShare - 2 * viscosityShare)) -
    out.molPerS * massShare;
}

/**
 * Lowest outlet pressure of isothermal pipe flow, Pa: what is left of the inlet pressure once the end chokes, for
 * friction and fittings f·L/D + K held fixed. Solves (p1/p2)² − 1 − 2·ln(p1/p2) = f·L/D + K.
 */
export function isothermalChokeAbsPa(inletAbsPa: number, frictionAndFittings: number): number {
  let w = 1 + frictionAndFittings + Math.sqrt(2 * frictionAndFittings);
  for (let i = 0; i < 40; i += 1) w -= (w - 1 - ln(w) - frictionAndFittings) / (1 - 1 / w);
  return inletAbsPa / Math.sqrt(w);
}

/** Re, Re²/u = 1/f and their slopes by u; reused, never kept. */
const quotientAt = { reynolds: 0, byU: 0 };
const quotientOut = { reynolds: 0, reByU: 0, q: 0, qByU: 0 };

function quotient(pipe: PipeSize, u: number): typeof quotientOut {
  reynoldsAt(pipe.friction, u, quotientAt);
  const { reynolds, byU } = quotientAt;
  quotientOut.reynolds = reynolds;
  quotientOut.reByU = byU;
  if (u > 0) {
    quotientOut.q = (reynolds * reynolds) / u;
    quotientOut.qByU = (2 * reynolds * byU - quotientOut.q) / u;
  } else {
    quotientOut.q = 0;
    quotientOut.qByU = 1 / 4096;
  }
  return quotientOut;
}

/** Mass flow of a pipe, kg/s, from a higher to a lower pressure, for tables and tests. */
export function pipeMassFlowKgPerS(
  pipe: PipeSize,
  highAbsPa: number,
  lowAbsPa: number,
  gas: { molarMassKgPerMol: number; viscosityPaS: number; rt: number },
): number {
  const out: FlowAt = { molPerS: 0, byFrom: 0, byTo: 0, byFraction: 0 };
  const ends = Float64Array.of(highAbsPa, lowAbsPa);
  pipeFlow(pipe, ends, 0, 1, { ...gas, fraction: 1, molarMassSlope: 0, viscositySlope: 0 }, out);
  return out.molPerS * gas.molarMassKgPerMol;
}
