import { describe, expect, it } from 'vitest';
import { blockMatrix, clearBlocks, factorBlocks, solveBlocks } from '../../src/core/physics/blockMatrix.ts';
import { planElimination } from '../../src/core/physics/elimination.ts';
import { Chance } from '../../src/cli/bench/randomActions.ts';

const rings = (cells: number): [Int32Array, Int32Array] => {
  const from = Int32Array.from({ length: cells }, (_, i) => i);
  return [from, Int32Array.from(from, (i) => (i + 1) % cells)];
};
const chain = (cells: number): [Int32Array, Int32Array] => {
  const from = Int32Array.from({ length: cells - 1 }, (_, i) => i);
  return [from, Int32Array.from(from, (i) => i + 1)];
};

/** What comes out of the matrix times the answer, by plain sums. */
function multiply(full: Float64Array, x: Float64Array, cells: number): number[] {
  return Array.from({ length: 2 * cells }, (_, row) => {
    let sum = 0;
    for (let cell = 0; cell < cells; cell += 1) {
      const at = 4 * ((row >> 1) * cells + cell) + 2 * (row & 1);
      sum += full[at] * x[2 * cell] + full[at + 1] * x[2 * cell + 1];
    }
    return sum;
  });
}

describe('the equations of a step', () => {
  it('of a chain fill nothing in: every cell but the last has one neighbour left', () => {
    const plan = planElimination(9, ...chain(9));
    expect(plan.neighbours).toHaveLength(8);
    expect([...plan.order].sort((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it('leave out what leads to a boundary, and a link that ends where it began', () => {
    expect(planElimination(2, Int32Array.of(0, 1, 1), Int32Array.of(2, 3, 1)).neighbours).toHaveLength(0);
  });

  it.each([
    ['a chain', 6, chain(6)],
    ['a ring', 7, rings(7)],
    ['a ring of two', 2, rings(2)],
  ] as const)('are solved on %s to the last digits, for any openings', (_, cells, [from, to]) => {
    const plan = planElimination(cells, from, to);
    for (let seed = 1; seed <= 50; seed += 1) {
      const chance = new Chance(seed);
      const m = blockMatrix(cells);
      clearBlocks(m, plan, 1);
      // Each link takes from one cell and gives to the other, over six decades.
      for (let l = 0; l < from.length; l += 1)
        for (let k = 0; k < 4; k += 1) {
          const out = 10 ** chance.between(-3, 3) * (k % 3 === 0 ? 1 : 0.2);
          m[4 * (from[l] * cells + from[l]) + k] += out;
          m[4 * (to[l] * cells + from[l]) + k] -= out;
        }
      const full = m.slice();
      const right = Float64Array.from({ length: 2 * cells }, () => chance.between(-1, 1));
      const x = right.slice();
      expect(factorBlocks(m, plan)).toBe(true);
      solveBlocks(m, plan, x);
      multiply(full, x, cells).forEach((sum, i) => expect(Math.abs(sum - right[i])).toBeLessThan(1e-11));
    }
  });

  it('say so when a cell has nothing to divide by', () => {
    const plan = planElimination(2, ...chain(2));
    const m = blockMatrix(2);
    clearBlocks(m, plan, 0);
    expect(factorBlocks(m, plan)).toBe(false);
    clearBlocks(m, plan, NaN);
    expect(factorBlocks(m, plan)).toBe(false);
  });
});
