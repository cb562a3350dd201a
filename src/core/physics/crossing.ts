import type { CompiledNetwork } from './compile.ts';
import type { Contents, Step } from './network.ts';
import { stepTo } from './solver.ts';

/** How closely a crossing is located, s. */
const CROSSING_S = 1e-3;

/**
 * When something measured on the contents passes zero between startS and a later time, to CROSSING_S, and the step
 * that lands there: the first instant, to that tolerance, at which the measure has the sign it has at endS. Null if
 * both ends have one sign. The measure is taken to cross once; of several crossings one is found. What lies behind the
 * mark is integrated again from startS, so the answer depends on the state alone.
 */
export function locateCrossing(
  net: CompiledNetwork,
  startS: number,
  contents: Contents,
  stepS: number,
  endS: number,
  measure: (contents: Contents, atS: number) => number,
): Step | null {
  const rises = measure(contents, startS) < 0;
  let end = stepTo(net, startS, contents, stepS, endS);
  const atEnd = measure(end.contents, endS);
  if (rises ? atEnd < 0 : atEnd >= 0) return null;
  let lowS = startS;
  while (end.endS - lowS > CROSSING_S) {
    const middle = stepTo(net, startS, contents, stepS, lowS + (end.endS - lowS) / 2);
    const before = measure(middle.contents, middle.endS) < 0 === rises;
    if (before) lowS = middle.endS;
    else end = middle;
  }
  return end;
}
