import { leastMs, tenth } from './cpu.ts';
import { solveByOdex, solveByRungeKutta, type Far } from './explicit.ts';
import { readScipy } from './scipy.ts';
import { solveOurs, stiffCases, stiffReferences, type Solved } from './stiff.ts';

/** Evaluations of the right-hand side on one stiff case, by several methods held to the same error of pressure. */
export interface Stiff {
  readonly case: string;
  readonly ours: number;
  readonly bestScipy: number;
  readonly scipyMethod: string;
  /** Worst error of our pressures at any mark, as a share. */
  readonly oursError: number;
  readonly oursMs: number;
  /** Null where the figures are those committed. */
  readonly scipyMs: number | null;
  readonly odex: Far;
  readonly rungeKutta: Far;
}

/**
 * All cases: ours beside SciPy's best stiff method, an explicit extrapolation and the classical fixed step, which give
 * up after so many evaluations.
 */
export function measureStiff(patience: number): { rhs: Stiff[]; rhsFrom: string } {
  const scipy = readScipy();
  const rhs = stiffCases.map((start, i): Stiff => {
    const theirs = stiffReferences[i];
    const best = scipy.best.get(start.name);
    let ours: Solved = { evaluations: 0, worst: 0 };
    const oursMs = leastMs(5, () => {
      ours = solveOurs(start, theirs);
    });
    return {
      case: start.name,
      ours: ours.evaluations,
      bestScipy: best?.evaluations ?? NaN,
      scipyMethod: best?.method ?? '',
      oursError: ours.worst,
      oursMs: tenth(oursMs),
      scipyMs: best?.ms === undefined || best.ms === null ? null : tenth(best.ms),
      odex: solveByOdex(start, theirs, patience),
      rungeKutta: solveByRungeKutta(start, theirs, patience),
    };
  });
  return { rhs, rhsFrom: scipy.from };
}
