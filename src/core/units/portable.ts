import stdCos from '@stdlib/math-base-special-cos';
import stdExp from '@stdlib/math-base-special-exp';
import stdLn from '@stdlib/math-base-special-ln';
import stdPow from '@stdlib/math-base-special-pow';
import stdSin from '@stdlib/math-base-special-sin';
import stdTanh from '@stdlib/math-base-special-tanh';

/*
 * The platform's own pow, exp, log and sin differ in the last bit between engines; these are written in plain
 * arithmetic and do not. Everything in the core that needs one takes it from here.
 */

/** x to the power y; the same bits in every engine. */
export const pow: (x: number, y: number) => number = stdPow;
/** e to the power x. */
export const exp: (x: number) => number = stdExp;
/** Natural logarithm. */
export const ln: (x: number) => number = stdLn;
/** Sine of an angle in radians. */
export const sin: (angleRad: number) => number = stdSin;
/** Cosine of an angle in radians. */
export const cos: (angleRad: number) => number = stdCos;
/** Hyperbolic tangent. */
export const tanh: (x: number) => number = stdTanh;

/** Natural logarithm of ten. */
export const LN_10 = 2.302585092994046;

/** Logarithm to base ten. */
export function log10(x: number): number {
  return ln(x) / LN_10;
}

/**
 * Cube root of a number that is not negative, by scaling into [1/8, 1] and Newton's method. Good to two units in
 * the last place, which is more than a step size asks for. Returns 0 for 0 and Infinity for Infinity.
 */
export function cbrtPortable(x: number): number {
  if (!(x > 0)) return 0;
  if (x === Infinity) return Infinity;
  let scale = 1;
  let reduced = x;
  while (reduced > 1) {
    reduced *= 0.125;
    scale *= 2;
  }
  while (reduced < 0.125) {
    reduced *= 8;
    scale *= 0.5;
  }
  let root = 0.39 + reduced * (1.0 - 0.39 * reduced);
  for (let i = 0; i < 5; i += 1) root -= (root * root * root - reduced) / (3 * root * root);
  return root * scale;
}
