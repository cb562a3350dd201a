import { clearBlocks, factorBlocks, solveBlocks } from './blockMatrix.ts';
import type { CompiledNetwork } from './compile.ts';
import { layFlows, layPlaces } from './evaluate.ts';

/*
 * RODAS3: four stages, order three with an embedded two, L-stable and stiffly accurate (Sandu, Verwer, Blom, Spee,
 * Carmichael and Potra 1997). Coefficients in the form that needs no product with the Jacobian.
 */
const GAMMA = 0.5;
/** Time of a stage, share of the step, and weight of the flow's own change in time. */
const STAGE_TIME = [0, 0, 1, 1];
const STAGE_RAMP = [0.5, 1.5, 0, 0];
/** What the first stage gives to the state stages three and four are evaluated at; the third gives the fourth once. */
const STATE_FROM_FIRST = 2;
/** What earlier stages give to a stage's right-hand side, over the step. */
const SECOND_FROM_FIRST = 4;
const FOURTH_FROM_THIRD = -8 / 3;
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
  if (!factorBlocks(net.scratch.matrix, net.elimination)) return false;
  for (let i = 0; i < 4; i += 1) {
    if (i >= 2 && !layStage(net, i, startS + STAGE_TIME[i] * hS)) return false;
    solveStage(net, i, hS);
  }
  return true;
}

/** 1/(γ·h) on the diagonal, less the Jacobian: each link takes from one cell and gives to the other. */
function layMatrix(net: CompiledNetwork, diagonal: number): void {
  const { matrix, flows } = net.scratch;
  const { cellCount, from, to, elimination } = net;
  clearBlocks(matrix, elimination, diagonal);
  for (let l = 0; l < net.linkCount; l += 1) {
    const f = from[l];
    const t = to[l];
    if (f < cellCount) {
      addBlock(matrix, 4 * (f * cellCount + f), flows.slopes, 8 * l, 1);
      if (t < cellCount) {
        addBlock(matrix, 4 * (f * cellCount + t), flows.slopes, 8 * l + 2, 1);
        addBlock(matrix, 4 * (t * cellCount + f), flows.slopes, 8 * l, -1);
      }
    }
    if (t < cellCount) addBlock(matrix, 4 * (t * cellCount + t), flows.slopes, 8 * l + 2, -1);
  }
}

function addBlock(matrix: Float64Array, at: number, slopes: Float64Array, from: number, sign: number): void {
  matrix[at] += sign * slopes[from];
  matrix[at + 1] += sign * slopes[from + 1];
  matrix[at + 2] += sign * slopes[from + 4];
  matrix[at + 3] += sign * slopes[from + 5];
}

/** Lays places and flows at the state of the third or fourth stage. */
function layStage(net: CompiledNetwork, i: number, atS: number): boolean {
  const { state, stage, cellStages } = net.scratch;
  const first = cellStages[0];
  const third = cellStages[2];
  for (let v = 0; v < state.length; v += 1) stage[v] = state[v] + STATE_FROM_FIRST * first[v];
  if (i === 3) for (let v = 0; v < state.length; v += 1) stage[v] += third[v];
  for (let n = 0; n < net.cellCount; n += 1) {
    const before = state[2 * n] + state[2 * n + 1];
    const now = stage[2 * n] + stage[2 * n + 1];
    if (!(now >= LEAST_SHARE * before) || now === Infinity) return false;
  }
  layPlaces(net, stage, atS);
  layFlows(net, false);
  return true;
}

/** What earlier stages give to the right-hand side of stage i, over a time: the step's for cells, one for links. */
function layEarlier(stages: readonly Float64Array[], i: number, overS: number): void {
  const out = stages[i];
  const first = stages[0];
  const second = stages[1];
  const third = stages[2];
  const once = 1 / overS;
  if (i === 0) out.fill(0);
  else if (i === 1) {
    const c = SECOND_FROM_FIRST / overS;
    for (let v = 0; v < out.length; v += 1) out[v] = c * first[v];
  } else if (i === 2) for (let v = 0; v < out.length; v += 1) out[v] = once * first[v] - once * second[v];
  else {
    const c = FOURTH_FROM_THIRD / overS;
    for (let v = 0; v < out.length; v += 1) out[v] = once * first[v] - once * second[v] + c * third[v];
  }
}

/**
 * Solves stage i for the cells, then carries the same stage through every link, so that what the links passed and
 * what the cells gained are one and the same.
 */
function solveStage(net: CompiledNetwork, i: number, hS: number): void {
  const { flows, cellStages, matrix } = net.scratch;
  const { cellCount, from, to, elimination } = net;
  const ramp = net.moving ? STAGE_RAMP[i] * hS : 0;
  const k = cellStages[i];
  layEarlier(cellStages, i, hS);
  for (let l = 0; l < net.linkCount; l += 1) {
    const f = from[l];
    const t = to[l];
    let air = flows.air[l];
    let gas = flows.gas[l];
    if (ramp !== 0) {
      air += ramp * flows.airByTime[l];
      gas += ramp * flows.gasByTime[l];
    }
    if (f < cellCount) {
      k[2 * f] -= air;
      k[2 * f + 1] -= gas;
    }
    if (t < cellCount) {
      k[2 * t] += air;
      k[2 * t + 1] += gas;
    }
  }
  solveBlocks(matrix, elimination, k);
  carryLinks(net, i, hS, ramp);
}

function carryLinks(net: CompiledNetwork, i: number, hS: number, ramp: number): void {
  const { flows, cellStages, linkAirStages, linkGasStages } = net.scratch;
  const { cellCount, from, to } = net;
  const k = cellStages[i];
  const s = flows.slopes;
  const airOut = linkAirStages[i];
  const gasOut = linkGasStages[i];
  layEarlier(linkAirStages, i, 1);
  layEarlier(linkGasStages, i, 1);
  for (let l = 0; l < net.linkCount; l += 1) {
    const base = 8 * l;
    let air = flows.air[l];
    let gas = flows.gas[l];
    if (ramp !== 0) {
      air += ramp * flows.airByTime[l];
      gas += ramp * flows.gasByTime[l];
    }
    const f = from[l];
    const t = to[l];
    if (f < cellCount) {
      const ka = k[2 * f];
      const kg = k[2 * f + 1];
      air += s[base] * ka + s[base + 1] * kg;
      gas += s[base + 4] * ka + s[base + 5] * kg;
    }
    if (t < cellCount) {
      const ka = k[2 * t];
      const kg = k[2 * t + 1];
      air += s[base + 2] * ka + s[base + 3] * kg;
      gas += s[base + 6] * ka + s[base + 7] * kg;
    }
    airOut[l] = GAMMA * (hS * air + airOut[l]);
    gasOut[l] = GAMMA * (hS * gas + gasOut[l]);
  }
}
