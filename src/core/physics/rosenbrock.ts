import type { CompiledNetwork } from './compile.ts';
import { layFlows, layPlaces } from './evaluate.ts';

/*
 * RODAS3: four stages, order three with an embedded two, L-stable and stiffly accurate (Sandu, Verwer, Blom, Spee,
 * Carmichael and Potra 1997). Coefficients in the form that needs no product with the Jacobian.
 */
const GAMMA = 0.5;
/** What earlier stages give to the state a stage is evaluated at. */
const STATE_FROM = [
  [0, 0, 0],
  [0, 0, 0],
  [2, 0, 0],
  [2, 0, 1],
];
/** What earlier stages give to a stage's right-hand side, over the step. */
const RIGHT_FROM = [
  [0, 0, 0],
  [4, 0, 0],
  [1, -1, 0],
  [1, -1, -8 / 3],
];
/** Time of a stage, share of the step, and weight of the flow's own change in time. */
const STAGE_TIME = [0, 0, 1, 1];
const STAGE_RAMP = [0.5, 1.5, 0, 0];
/** How the stages make the step; the last one alone is the estimate of its error. */
export const STEP_FROM = [2, 0, 1, 1];

/** A stage may not empty a cell further than this share of what it held. */
const LEAST_SHARE = 1e-3;

/**
 * Runs the four stages of a step of hS from the state loaded and the flows and slopes laid at its start. Leaves the
 * stages in scratch. Returns false where a stage emptied a cell or the matrix could not be factored.
 */
export function runStages(net: CompiledNetwork, startS: number, hS: number): boolean {
  layMatrix(net, 1 / (GAMMA * hS));
  if (!net.scratch.matrix.factor()) return false;
  for (let i = 0; i < 4; i += 1) {
    if (i >= 2 && !layStage(net, i, startS + STAGE_TIME[i] * hS)) return false;
    solveStage(net, i, hS);
  }
  return true;
}

/** 1/(γ·h) on the diagonal, less the Jacobian: each link takes from one cell and gives to the other. */
function layMatrix(net: CompiledNetwork, diagonal: number): void {
  const { matrix, flows } = net.scratch;
  const { values, size } = matrix;
  values.fill(0);
  for (let i = 0; i < size; i += 1) values[i * size + i] = diagonal;
  const s = flows.slopes;
  for (let l = 0; l < net.linkCount; l += 1) {
    const from = net.from[l];
    const to = net.to[l];
    const base = 8 * l;
    for (let side = 0; side < 2; side += 1) {
      const column = side === 0 ? from : to;
      if (column >= net.cellCount) continue;
      const c = 2 * column;
      const k = base + 2 * side;
      if (from < net.cellCount) {
        const row = 2 * from * size + c;
        values[row] += s[k];
        values[row + 1] += s[k + 1];
        values[row + size] += s[k + 4];
        values[row + size + 1] += s[k + 5];
      }
      if (to < net.cellCount) {
        const row = 2 * to * size + c;
        values[row] -= s[k];
        values[row + 1] -= s[k + 1];
        values[row + size] -= s[k + 4];
        values[row + size + 1] -= s[k + 5];
      }
    }
  }
}

/** Lays places and flows at the state of stage i. */
function layStage(net: CompiledNetwork, i: number, atS: number): boolean {
  const { state, stage, cellStages, totalMol } = net.scratch;
  const [a, b, c] = STATE_FROM[i];
  const [k0, k1, k2] = cellStages;
  for (let v = 0; v < state.length; v += 1) stage[v] = state[v] + a * k0[v] + b * k1[v] + c * k2[v];
  for (let n = 0; n < net.cellCount; n += 1) {
    const before = state[2 * n] + state[2 * n + 1];
    const now = stage[2 * n] + stage[2 * n + 1];
    if (!(now >= LEAST_SHARE * before) || now === Infinity) return false;
    totalMol[n] = now;
  }
  layPlaces(net, stage, atS);
  layFlows(net, false);
  return true;
}

/**
 * Solves stage i for the cells, then carries the same stage through every link, so that what the links passed and
 * what the cells gained are one and the same.
 */
function solveStage(net: CompiledNetwork, i: number, hS: number): void {
  const { flows, cellStages, matrix } = net.scratch;
  const [r0, r1, r2] = RIGHT_FROM[i];
  const c0 = r0 / hS;
  const c1 = r1 / hS;
  const c2 = r2 / hS;
  const ramp = net.moving ? STAGE_RAMP[i] * hS : 0;
  const k = cellStages[i];
  const [k0, k1, k2] = cellStages;
  for (let v = 0; v < k.length; v += 1) k[v] = i === 0 ? 0 : c0 * k0[v] + c1 * k1[v] + c2 * k2[v];
  for (let l = 0; l < net.linkCount; l += 1) {
    const from = net.from[l];
    const to = net.to[l];
    const air = flows.air[l] + ramp * flows.airByTime[l];
    const gas = flows.gas[l] + ramp * flows.gasByTime[l];
    if (from < net.cellCount) {
      k[2 * from] -= air;
      k[2 * from + 1] -= gas;
    }
    if (to < net.cellCount) {
      k[2 * to] += air;
      k[2 * to + 1] += gas;
    }
  }
  matrix.solve(k);
  carryLinks(net, i, hS, ramp);
}

function carryLinks(net: CompiledNetwork, i: number, hS: number, ramp: number): void {
  const { flows, cellStages, linkAirStages, linkGasStages } = net.scratch;
  const [c0, c1, c2] = RIGHT_FROM[i];
  const k = cellStages[i];
  const s = flows.slopes;
  const [a0, a1, a2] = linkAirStages;
  const [g0, g1, g2] = linkGasStages;
  const air = linkAirStages[i];
  const gas = linkGasStages[i];
  for (let l = 0; l < net.linkCount; l += 1) {
    const base = 8 * l;
    let dAir = flows.air[l] + ramp * flows.airByTime[l];
    let dGas = flows.gas[l] + ramp * flows.gasByTime[l];
    const from = net.from[l];
    const to = net.to[l];
    if (from < net.cellCount) {
      const ka = k[2 * from];
      const kg = k[2 * from + 1];
      dAir += s[base] * ka + s[base + 1] * kg;
      dGas += s[base + 4] * ka + s[base + 5] * kg;
    }
    if (to < net.cellCount) {
      const ka = k[2 * to];
      const kg = k[2 * to + 1];
      dAir += s[base + 2] * ka + s[base + 3] * kg;
      dGas += s[base + 6] * ka + s[base + 7] * kg;
    }
    air[l] = GAMMA * (hS * dAir + (i === 0 ? 0 : c0 * a0[l] + c1 * a1[l] + c2 * a2[l]));
    gas[l] = GAMMA * (hS * dGas + (i === 0 ? 0 : c0 * g0[l] + c1 * g1[l] + c2 * g2[l]));
  }
}
