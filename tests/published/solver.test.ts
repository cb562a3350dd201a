import { describe, expect, it } from 'vitest';
import { solveOurs, stiffCases, stiffReferences, type StiffCase } from '../../src/cli/bench/stiff.ts';
import {
  compile,
  firstStepS,
  naturalStep,
  openAtRandom,
  pressuresAbsPa,
  stepTo,
  type Contents,
} from '../../src/core/physics/index.ts';
import { comparing } from './compare.ts';

/*
 * Source: SciPy 1.17.1, LSODA at 1e-10 (Radau at 1e-7 agrees to 1e-6), solving the same cases from their numbers by its
 * own statement of the laws: cli/bench/scipy/reference.py. Tolerance 0.1 % of pressure.
 */
const pressures = comparing(
  'SciPy 1.17.1, LSODA at 1e-10',
  'pressure furthest off, six stiff cases',
  'computed',
  'Pa',
);
const evaluations = comparing(
  'SciPy 1.17.1, best stiff method',
  'evaluations of the right-hand side at equal error, no more than theirs',
  'computed',
  'evaluations',
);
const itself = comparing(
  'The model itself, a hundred times finer',
  'pressure furthest off',
  'computed',
  'Pa',
);
const books = comparing(
  'Mass balance',
  'random openings over seven decades of area',
  'arithmetic',
  'as named',
);

/** Cells of all marks: where we are furthest from theirs, ours and theirs. */
function furthest(pairs: readonly (readonly [ours: number, theirs: number])[]): readonly [number, number] {
  return pairs.reduce((worst, pair) =>
    Math.abs(pair[0] / pair[1] - 1) > Math.abs(worst[0] / worst[1] - 1) ? pair : worst,
  );
}

/** Pressures at the marks, step by natural step; with `parts`, each of those steps gone again in that many pieces. */
function marks(start: StiffCase, parts: number): number[][] {
  const net = compile(start);
  let ours: Contents = start;
  let finer: Contents = start;
  let atS = 0;
  let stepS = firstStepS(net, 0, start);
  return start.marksS.map((markS) => {
    while (atS < markS) {
      const step = naturalStep(net, atS, ours, stepS, markS - atS);
      const pieceS = (step.endS - atS) / parts;
      for (let i = 0; i < parts; i += 1)
        finer = stepTo(net, atS + i * pieceS, finer, pieceS, atS + (i + 1) * pieceS).contents;
      ({ contents: ours, endS: atS, nextStepS: stepS } = step);
    }
    return pressuresAbsPa(net, parts === 1 ? ours : finer);
  });
}

describe('the solver on stiff cases', () => {
  const cases = stiffCases.map((start, i) => [start.name, start, stiffReferences[i]] as const);

  it.each(cases)('%s: every pressure within 0.1 %% of SciPy’s', (name, start, theirs) => {
    const pairs = marks(start, 1).flatMap((row, m) =>
      row.map((ours, c) => [ours, theirs.pressuresAbsPa[m][c]] as const),
    );
    pressures(name, ...furthest(pairs), { share: 1e-3 });
  });

  it.each(cases)(
    '%s: no more evaluations than SciPy’s best stiff method at equal error',
    (name, start, theirs) => {
      const best = Math.min(...Object.values(theirs.scipy).map(({ rightHandSides }) => rightHandSides));
      evaluations(name, solveOurs(start, theirs).evaluations, best, { from: -1, to: 0 });
    },
  );

  it.each(cases)('%s: every pressure within 0.05 %% of itself a hundred times finer', (name, start) => {
    const finer = marks(start, 100);
    const pairs = marks(start, 1).flatMap((row, m) => row.map((ours, c) => [ours, finer[m][c]] as const));
    itself(name, ...furthest(pairs), { share: 5e-4 });
  });
});

describe('the books', () => {
  it('of 2,000 random openings close, with no mole owed and no opening over 1,000 steps', () => {
    const { count, failures, maxSteps, worstClosure } = openAtRandom(2000, 1);
    expect(count).toBe(2000);
    books('failures of 2,000', failures, 0, { absolute: 0 });
    books('worst closure, share of throughput', worstClosure, 0, { absolute: 1e-9 });
    books('most steps, at most 1,000', maxSteps, 1000, { from: -1, to: 0 });
  });
});
