import type { CompiledNetwork } from './compile.ts';
import type { Contents, Step } from './network.ts';

/**
 * One accepted adaptive step from startS: the natural grain of the run. It depends on the network, the contents
 * and the proposed stepS alone, so that time may be cut anywhere. It is never longer than maxStepS.
 * Throws RangeError if contents are negative or not numbers.
 */
export declare function naturalStep(
  net: CompiledNetwork,
  startS: number,
  contents: Contents,
  stepS: number,
  maxStepS: number,
): Step;

/** As many steps as are needed to land exactly on endS; link integrals are summed, nextStepS is as if never cut. */
export declare function stepTo(
  net: CompiledNetwork,
  startS: number,
  contents: Contents,
  stepS: number,
  endS: number,
): Step;

/** A careful first step, s, for contents that something has just been done to (an opening, a pump stroke). */
export declare function firstStepS(net: CompiledNetwork, startS: number, contents: Contents): number;
