import type { Elimination } from './elimination.ts';

/**
 * The equations of a step: for each pair of cells a block of two by two, air and gas of the one by air and gas of the
 * other. Blocks lie by row and column of their cells, four numbers each; those a plan does not name are never read.
 *
 * Rows are not exchanged between cells. The diagonal is 1/(γ·h) and what flows out of a cell is what flows into
 * others, so that a column's diagonal outweighs the rest of it; a shorter step makes it outweigh it further.
 */
export type BlockMatrix = Float64Array;

export function blockMatrix(cellCount: number): BlockMatrix {
  return new Float64Array(4 * cellCount * cellCount);
}

/** Lays the diagonal and empties every block the plan names. */
export function clearBlocks(m: BlockMatrix, plan: Elimination, diagonal: number): void {
  const { cellCount, order, start, neighbours } = plan;
  for (let n = 0; n < cellCount; n += 1) {
    const cell = order[n];
    setBlock(m, 4 * (cell * cellCount + cell), diagonal);
    for (let i = start[n]; i < start[n + 1]; i += 1) {
      setBlock(m, 4 * (cell * cellCount + neighbours[i]), 0);
      setBlock(m, 4 * (neighbours[i] * cellCount + cell), 0);
    }
  }
}

function setBlock(m: BlockMatrix, at: number, diagonal: number): void {
  m[at] = diagonal;
  m[at + 1] = 0;
  m[at + 2] = 0;
  m[at + 3] = diagonal;
}

/** Factors in place; diagonal blocks become their inverses. Returns false where one has none. */
export function factorBlocks(m: BlockMatrix, plan: Elimination): boolean {
  const { cellCount, order, start, neighbours } = plan;
  for (let n = 0; n < cellCount; n += 1) {
    const cell = order[n];
    const d = 4 * (cell * cellCount + cell);
    const determinant = m[d] * m[d + 3] - m[d + 1] * m[d + 2];
    if (determinant === 0 || determinant !== determinant) return false;
    const d00 = m[d + 3] / determinant;
    const d01 = -m[d + 1] / determinant;
    const d10 = -m[d + 2] / determinant;
    const d11 = m[d] / determinant;
    m[d] = d00;
    m[d + 1] = d01;
    m[d + 2] = d10;
    m[d + 3] = d11;
    for (let i = start[n]; i < start[n + 1]; i += 1) {
      const row = neighbours[i] * cellCount;
      const under = 4 * (row + cell);
      const a = m[under];
      const b = m[under + 1];
      const c = m[under + 2];
      const e = m[under + 3];
      const l00 = a * d00 + b * d10;
      const l01 = a * d01 + b * d11;
      const l10 = c * d00 + e * d10;
      const l11 = c * d01 + e * d11;
      m[under] = l00;
      m[under + 1] = l01;
      m[under + 2] = l10;
      m[under + 3] = l11;
      for (let j = start[n]; j < start[n + 1]; j += 1) {
        const beside = 4 * (cell * cellCount + neighbours[j]);
        const at = 4 * (row + neighbours[j]);
        const u00 = m[beside];
        const u01 = m[beside + 1];
        const u10 = m[beside + 2];
        const u11 = m[beside + 3];
        m[at] -= l00 * u00 + l01 * u10;
        m[at + 1] -= l00 * u01 + l01 * u11;
        m[at + 2] -= l10 * u00 + l11 * u10;
        m[at + 3] -= l10 * u01 + l11 * u11;
      }
    }
  }
  return true;
}

/** Solves for one right-hand side (air and gas of each cell side by side); the answer replaces it. */
export function solveBlocks(m: BlockMatrix, plan: Elimination, right: Float64Array): void {
  const { cellCount, order, start, neighbours } = plan;
  for (let n = 0; n < cellCount; n += 1) {
    const cell = order[n];
    const air = right[2 * cell];
    const gas = right[2 * cell + 1];
    for (let i = start[n]; i < start[n + 1]; i += 1) {
      const other = neighbours[i];
      const under = 4 * (other * cellCount + cell);
      right[2 * other] -= m[under] * air + m[under + 1] * gas;
      right[2 * other + 1] -= m[under + 2] * air + m[under + 3] * gas;
    }
  }
  for (let n = cellCount - 1; n >= 0; n -= 1) {
    const cell = order[n];
    let air = right[2 * cell];
    let gas = right[2 * cell + 1];
    for (let i = start[n]; i < start[n + 1]; i += 1) {
      const other = neighbours[i];
      const beside = 4 * (cell * cellCount + other);
      const otherAir = right[2 * other];
      const otherGas = right[2 * other + 1];
      air -= m[beside] * otherAir + m[beside + 1] * otherGas;
      gas -= m[beside + 2] * otherAir + m[beside + 3] * otherGas;
    }
    const d = 4 * (cell * cellCount + cell);
    right[2 * cell] = m[d] * air + m[d + 1] * gas;
    right[2 * cell + 1] = m[d + 2] * air + m[d + 3] * gas;
  }
}
