import type { CompiledNetwork } from './compile.ts';
import { flowThrough } from './linkLaw.ts';

/** Lays pressures, fractions and totals of all places for a state (air and gas of each cell interleaved) at a time. */
export function layPlaces(net: CompiledNetwork, state: Float64Array, atS: number): void {
  const { pressurePa, fraction, totalMol } = net.scratch;
  const { boundaries } = net.network;
  for (let i = 0; i < net.cellCount; i += 1) {
    const gas = state[2 * i + 1];
    const total = state[2 * i] + gas;
    totalMol[i] = total;
    pressurePa[i] = total * net.paPerMol[i];
    fraction[i] = total > 0 ? gas / total : 0;
  }
  for (let b = 0; b < boundaries.length; b += 1) {
    const boundary = boundaries[b];
    const node = net.cellCount + b;
    const ramp = boundary.ramp;
    const moved = ramp === undefined ? 0 : ramp.ratePaPerS * (atS - ramp.sinceS);
    pressurePa[node] = Math.max(0, boundary.pressureAbsPa + moved);
    fraction[node] = boundary.gasFraction;
  }
}

/** Picks for every link the place whose mixture it passes: the one of higher pressure, or `from` if it is one-way. */
export function chooseDonors(net: CompiledNetwork): void {
  const { pressurePa, donors } = net.scratch;
  for (let l = 0; l < net.linkCount; l += 1) {
    const from = net.from[l];
    const to = net.to[l];
    donors[l] = net.oneWay[l] === 1 || pressurePa[from] >= pressurePa[to] ? from : to;
  }
}

/**
 * Flows of all links at the places laid, each passing its donor's mixture; with `slopes`, also the exact slopes by
 * the contents of the cells at both ends.
 */
export function layFlows(net: CompiledNetwork, slopes: boolean): void {
  const { pressurePa, fraction, donors, flows, mixture, flowAt } = net.scratch;
  const { from, to, laws, curves } = net;
  const airMass = net.network.air.molarMassKgPerMol;
  const airViscosity = net.network.air.viscosityPaS;
  for (let l = 0; l < net.linkCount; l += 1) {
    const x = fraction[donors[l]];
    mixture.fraction = x;
    mixture.molarMassKgPerMol = airMass + x * mixture.molarMassSlope;
    mixture.viscosityPaS = airViscosity + x * mixture.viscositySlope;
    flowThrough(laws[l], pressurePa, from[l], to[l], mixture, curves, slopes, flowAt);
    flows.gas[l] = flowAt.molPerS * x;
    flows.air[l] = flowAt.molPerS * (1 - x);
    if (!slopes) continue;
    laySlopes(net, l, x);
    if (net.moving) layRamps(net, l, x);
  }
}

function laySlopes(net: CompiledNetwork, l: number, x: number): void {
  const { flows, flowAt, donors, totalMol } = net.scratch;
  const from = net.from[l];
  const to = net.to[l];
  const s = flows.slopes;
  const base = 8 * l;
  const byFromMol = from < net.cellCount ? flowAt.byFrom * net.paPerMol[from] : 0;
  const byToMol = to < net.cellCount ? flowAt.byTo * net.paPerMol[to] : 0;
  s[base] = byFromMol * (1 - x);
  s[base + 1] = s[base];
  s[base + 2] = byToMol * (1 - x);
  s[base + 3] = s[base + 2];
  s[base + 4] = byFromMol * x;
  s[base + 5] = s[base + 4];
  s[base + 6] = byToMol * x;
  s[base + 7] = s[base + 6];
  const donor = donors[l];
  const total = totalMol[donor];
  if (donor >= net.cellCount || !(total > 0)) return;
  // The donor's fraction moves with what it holds: dx/d(air) = −x/N, dx/d(gas) = (1 − x)/N.
  const gasByFraction = flowAt.molPerS + x * flowAt.byFraction;
  const airByFraction = (1 - x) * flowAt.byFraction - flowAt.molPerS;
  const side = base + (donor === from ? 0 : 2);
  s[side] -= (airByFraction * x) / total;
  s[side + 1] += (airByFraction * (1 - x)) / total;
  s[side + 4] -= (gasByFraction * x) / total;
  s[side + 5] += (gasByFraction * (1 - x)) / total;
}

function layRamps(net: CompiledNetwork, l: number, x: number): void {
  const { flows, flowAt } = net.scratch;
  const byTime = flowAt.byFrom * net.rampPaPerS[net.from[l]] + flowAt.byTo * net.rampPaPerS[net.to[l]];
  flows.gasByTime[l] = byTime * x;
  flows.airByTime[l] = byTime * (1 - x);
}
