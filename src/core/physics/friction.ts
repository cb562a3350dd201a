import { LN_10, log10 } from '../units/index.ts';

/*
 * Friction without iteration. Driven by a pressure drop, what is known is s = Re·√f, and Colebrook's formula gives f
 * from s outright. So everything here runs on s, or on u = s².
 */

/** Reynolds number up to which flow is laminar (Re = s²/64). */
const LAMINAR_REYNOLDS = 2000;
/** s at that Reynolds number, and s from which flow is fully turbulent (Re about 2970). Between: a smooth bridge. */
const S_LAMINAR = Math.sqrt(64 * LAMINAR_REYNOLDS);
const S_TURBULENT = 620;

/** The bridge between laminar and turbulent for one relative roughness, worked out once a pipe. */
export interface FrictionCurve {
  relativeRoughness: number;
  reynoldsTurbulent: number;
  slopeTurbulent: number;
}

/** Prepares a friction curve. Relative roughness ε/D up to 0.005 keeps the bridge rising. */
export function frictionCurve(relativeRoughness: number): FrictionCurve {
  const end = colebrookReynolds(relativeRoughness, S_TURBULENT);
  return { relativeRoughness, reynoldsTurbulent: end.reynolds, slopeTurbulent: end.slope };
}

/** Colebrook-White solved for Re: Re = −2·s·log10(ε/(3.7·D) + 2.51/s), with its slope by s. */
function colebrookReynolds(relativeRoughness: number, s: number): { reynolds: number; slope: number } {
  const argument = relativeRoughness / 3.7 + 2.51 / s;
  const overRootF = -2 * log10(argument);
  return { reynolds: s * overRootF, slope: overRootF + 5.02 / (s * argument * LN_10) };
}

/** Re and its slope by u = s², laminar, bridge or turbulent, laid into `out`. */
export function reynoldsAt(curve: FrictionCurve, u: number, out: { reynolds: number; byU: number }): void {
  if (u <= S_LAMINAR * S_LAMINAR) {
    out.reynolds = u / 64;
    out.byU = 1 / 64;
    return;
  }
  const s = Math.sqrt(u);
  if (s >= S_TURBULENT) {
    const argument = curve.relativeRoughness / 3.7 + 2.51 / s;
    const overRootF = -2 * log10(argument);
    out.reynolds = s * overRootF;
    out.byU = (overRootF + 5.02 / (s * argument * LN_10)) / (2 * s);
    return;
  }
  const span = S_TURBULENT - S_LAMINAR;
  const t = (s - S_LAMINAR) / span;
  const startSlope = (S_LAMINAR / 32) * span;
  const endSlope = curve.slopeTurbulent * span;
  const rise = curve.reynoldsTurbulent - LAMINAR_REYNOLDS;
  const quadratic = 3 * rise - 2 * startSlope - endSlope;
  const cubic = startSlope + endSlope - 2 * rise;
  out.reynolds = LAMINAR_REYNOLDS + t * (startSlope + t * (quadratic + t * cubic));
  out.byU = (startSlope + t * (2 * quadratic + 3 * t * cubic)) / span / (2 * s);
}

/**
 * Darcy friction factor at a Reynolds number, by Colebrook-White (64/Re up to 2000, a smooth bridge to about 2970).
 * Solved by bisection on u, so for tables and tests; the solver never needs it.
 */
export function darcyFrictionFactor(reynolds: number, relativeRoughness: number): number {
  if (reynolds <= LAMINAR_REYNOLDS) return 64 / reynolds;
  const curve = frictionCurve(relativeRoughness);
  const at = { reynolds: 0, byU: 0 };
  let low = 0;
  let high = 1;
  while (at.reynolds < reynolds) {
    high *= 4;
    reynoldsAt(curve, high, at);
  }
  for (let i = 0; i < 100; i += 1) {
    const middle = (low + high) / 2;
    reynoldsAt(curve, middle, at);
    if (at.reynolds < reynolds) low = middle;
    else high = middle;
  }
  return (low + high) / 2 / (reynolds * reynolds);
}
