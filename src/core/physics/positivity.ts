import type { CompiledNetwork } from './compile.ts';
import { STEP_FROM } from './rosenbrock.ts';
import { SPECIES_TOLERANCE } from './stepError.ts';

/** What rounding may leave below nothing, as a share of a cell's content. */
const ROUNDING = 1e-14;
const PASSES = 8;
const FORCED_PASSES = 200;

/**
 * Moves the loaded state on by what the links passed in the stages just run, and adds that to their sums. A content
 * is never clipped: where a cell would be left owing, the flows out of it are scaled down to what it had, and what
 * they fed gets that much less, so that no mole is made. Owing more than the allowed error refuses the step (false),
 * unless forced. Cells are moved by the links alone, so that mass closes to the last bits.
 */
export function keepPositive(net: CompiledNetwork, forced: boolean): boolean {
  const { linkAirStages, linkGasStages, linkAirMol, linkGasMol, stage, state } = net.scratch;
  const movedAir = linkAirStages[0];
  const movedGas = linkGasStages[0];
  for (let l = 0; l < net.linkCount; l += 1) {
    movedAir[l] = sumStages(linkAirStages, l);
    movedGas[l] = sumStages(linkGasStages, l);
  }
  const passes = forced ? FORCED_PASSES : PASSES;
  for (let pass = 0; ; pass += 1) {
    moveCells(net, movedAir, movedGas);
    const worst = worstDebt(net);
    if (worst <= ROUNDING) break;
    if (pass >= passes || (!forced && worst > SPECIES_TOLERANCE)) return false;
    for (let i = 0; i < net.cellCount; i += 1) {
      if (stage[2 * i] < 0) scaleOut(net, i, movedAir, stage[2 * i]);
      if (stage[2 * i + 1] < 0) scaleOut(net, i, movedGas, stage[2 * i + 1]);
    }
  }
  for (let v = 0; v < state.length; v += 1) state[v] = stage[v] > 0 ? stage[v] : 0;
  for (let l = 0; l < net.linkCount; l += 1) {
    linkAirMol[l] += movedAir[l];
    linkGasMol[l] += movedGas[l];
  }
  return true;
}

function sumStages(stages: readonly Float64Array[], l: number): number {
  return (
    STEP_FROM[0] * stages[0][l] +
    STEP_FROM[1] * stages[1][l] +
    STEP_FROM[2] * stages[2][l] +
    STEP_FROM[3] * stages[3][l]
  );
}

/** Lays the contents after the step into `stage`. */
function moveCells(net: CompiledNetwork, movedAir: Float64Array, movedGas: Float64Array): void {
  const { stage, state } = net.scratch;
  stage.set(state);
  for (let l = 0; l < net.linkCount; l += 1) {
    const from = net.from[l];
    const to = net.to[l];
    if (from < net.cellCount) {
      stage[2 * from] -= movedAir[l];
      stage[2 * from + 1] -= movedGas[l];
    }
    if (to < net.cellCount) {
      stage[2 * to] += movedAir[l];
      stage[2 * to + 1] += movedGas[l];
    }
  }
}

/** The deepest debt of any cell, as a share of what it held. */
function worstDebt(net: CompiledNetwork): number {
  const { stage, state } = net.scratch;
  let worst = 0;
  for (let i = 0; i < net.cellCount; i += 1) {
    const least = Math.min(stage[2 * i], stage[2 * i + 1]);
    if (least >= 0) continue;
    worst = Math.max(worst, -least / (state[2 * i] + state[2 * i + 1]));
  }
  return worst;
}

/** Scales what left cell i by so much that its debt (a negative amount, mol) is met. */
function scaleOut(net: CompiledNetwork, i: number, moved: Float64Array, debt: number): void {
  let out = 0;
  for (let l = 0; l < net.linkCount; l += 1) out += leaving(net, i, l, moved);
  if (!(out > 0)) return;
  const share = Math.max(0, (out + debt) / out);
  for (let l = 0; l < net.linkCount; l += 1) if (leaving(net, i, l, moved) > 0) moved[l] *= share;
}

/** What link l took out of cell i, mol; nothing if it brought some. */
function leaving(net: CompiledNetwork, i: number, l: number, moved: Float64Array): number {
  if (net.from[l] === i && moved[l] > 0) return moved[l];
  return net.to[l] === i && moved[l] < 0 ? -moved[l] : 0;
}
