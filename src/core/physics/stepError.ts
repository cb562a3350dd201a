import type { CompiledNetwork } from './compile.ts';

/** Error allowed in a step: of a cell's whole content, and of either gas, as shares of that content. */
const TOTAL_TOLERANCE = 1e-4;
export const SPECIES_TOLERANCE = 3e-4;

/** Error of the stages just run, over what is allowed: the worst cell counts. */
export function stepError(net: CompiledNetwork): number {
  const { state, cellStages } = net.scratch;
  const last = cellStages[3];
  let worst = 0;
  for (let i = 0; i < net.cellCount; i += 1) {
    const held = state[2 * i] + state[2 * i + 1];
    const air = last[2 * i];
    const gas = last[2 * i + 1];
    const whole = Math.abs(air + gas) / TOTAL_TOLERANCE;
    const either = Math.max(Math.abs(air), Math.abs(gas)) / SPECIES_TOLERANCE;
    const error = Math.max(whole, either) / held;
    if (!(error <= worst)) worst = error;
  }
  return worst === worst ? worst : Infinity;
}
