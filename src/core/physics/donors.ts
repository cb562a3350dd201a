import type { CompiledNetwork } from './compile.ts';
import { STEP_FROM } from './rosenbrock.ts';
import { SPECIES_TOLERANCE } from './stepError.ts';

/** Mixture carried the wrong way is let pass up to this share of the allowed error. */
const SLIGHT = 0.1;

/**
 * A link keeps one donor through a step (turning it inside a step costs a thousand times the steps). Where the step
 * just run moved a different mixture the other way by more than a slight amount, the donor is turned for another
 * try. Returns true if any was.
 */
export function turnDonors(net: CompiledNetwork): boolean {
  const { donors, linkAirStages, linkGasStages } = net.scratch;
  let turned = false;
  for (let l = 0; l < net.linkCount; l += 1) {
    if (net.oneWay[l] === 1) continue;
    let moved = 0;
    for (let i = 0; i < 4; i += 1) moved += STEP_FROM[i] * (linkAirStages[i][l] + linkGasStages[i][l]);
    const from = net.from[l];
    const to = net.to[l];
    const wrongWay = donors[l] === from ? -moved : moved;
    if (wrongWay <= 0) continue;
    const unlike = Math.abs(fractionOf(net, from) - fractionOf(net, to));
    const held = Math.min(heldBy(net, from), heldBy(net, to));
    if (wrongWay * unlike <= SLIGHT * SPECIES_TOLERANCE * held) continue;
    donors[l] = donors[l] === from ? to : from;
    turned = true;
  }
  return turned;
}

/** Fraction at the start of the step. */
function fractionOf(net: CompiledNetwork, node: number): number {
  const { state, fraction } = net.scratch;
  if (node >= net.cellCount) return fraction[node];
  const total = state[2 * node] + state[2 * node + 1];
  return total > 0 ? state[2 * node + 1] / total : 0;
}

function heldBy(net: CompiledNetwork, node: number): number {
  const { state } = net.scratch;
  return node < net.cellCount ? state[2 * node] + state[2 * node + 1] : Infinity;
}
