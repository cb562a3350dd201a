/** One pound-force per square inch, in pascals (NIST SP 811 value, rounded as our reference tables round it). */
export const PSI_PA = 6894.757;
/** One standard atmosphere, in pascals. Every gauge pressure in the product is above this. */
export const ATM_PA = 101325;
/** Molar gas constant, J/(mol·K) (2019 SI value, rounded to seven digits). */
export const GAS_CONSTANT = 8.314463;
/** Standard gravity, m/s². */
export const GRAVITY_M_PER_S2 = 9.80665;
/** One inch, in metres (exact). */
export const INCH_M = 0.0254;
/** One foot, in metres (exact). */
export const FOOT_M = 0.3048;
/** One pound-force, in newtons. */
export const POUND_FORCE_N = 4.448222;
/** One pound-force foot, in newton metres. */
export const POUND_FOOT_NM = 1.355818;
/** One inch of water column, in pascals. */
export const INCH_WATER_PA = 249.089;
/** One cubic foot, in cubic metres. */
export const CUBIC_FOOT_M3 = 0.028316847;
/** Ice point, in kelvins. */
const ICE_POINT_K = 273.15;

declare const gaugeBrand: unique symbol;
declare const absBrand: unique symbol;

/** A pressure above the atmosphere, Pa. */
export type GaugePa = number & { readonly [gaugeBrand]: true };
/** A pressure above vacuum, Pa. */
export type AbsPa = number & { readonly [absBrand]: true };

/** Names a plain number as a gauge pressure, Pa. */
export function gaugePa(valuePa: number): GaugePa {
  return valuePa as GaugePa;
}

/** Names a plain number as an absolute pressure, Pa. */
export function absPa(valuePa: number): AbsPa {
  return valuePa as AbsPa;
}

/** Gauge to absolute pressure, Pa. */
export function toAbs(gauge: GaugePa): AbsPa {
  return (gauge + ATM_PA) as AbsPa;
}

/** Absolute to gauge pressure, Pa. */
export function toGauge(abs: AbsPa): GaugePa {
  return (abs - ATM_PA) as GaugePa;
}

/** Pounds per square inch to pascals. Says nothing of gauge or absolute. */
export function psi(valuePsi: number): number {
  return valuePsi * PSI_PA;
}

/** Pascals to pounds per square inch. */
export function toPsi(valuePa: number): number {
  return valuePa / PSI_PA;
}

/** So many psig, as a gauge pressure in Pa. */
export function psig(valuePsig: number): GaugePa {
  return gaugePa(valuePsig * PSI_PA);
}

/** Degrees Fahrenheit to kelvins. */
export function fahrenheitK(degreesF: number): number {
  return ((degreesF - 32) * 5) / 9 + ICE_POINT_K;
}
