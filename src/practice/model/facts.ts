import { apart, rowsOf, type Checks } from './checks.ts';
import { figure, perCent } from './figure.ts';

const CLOSED = ['Closed form of a blow-down', 'vessel of 0.1 m³ through 1/4 in from 60 psig'] as const;
const SCIPY = ['SciPy 1.17.1, LSODA at 1e-10', 'pressure furthest off, six stiff cases'] as const;
const BEST = [
  'SciPy 1.17.1, best stiff method',
  'evaluations of the right-hand side at equal error, no more than theirs',
] as const;
const ITSELF = ['The model itself, a hundred times finer', 'pressure furthest off'] as const;
const BOOKS = ['Mass balance', 'random openings over seven decades of area'] as const;

/** Figures of the prose, all read out of the checks of the run that built the page. */
export function factsOfTheRun(checks: Checks): Readonly<Record<string, string | number>> {
  const of = (place: readonly [string, string], name: string): number =>
    rowsOf(checks, ...place).find(([row]) => row.startsWith(name))?.[1] ?? NaN;
  const worst = (place: readonly [string, string]): number =>
    Math.max(...rowsOf(checks, ...place).map((row) => Math.abs(apart(row))));
  const shares = rowsOf(checks, ...BEST).map(([, ours, theirs]) => ours / theirs);
  return {
    checks: checks.sources.reduce((sum, source) => sum + source.count, 0),
    documents: checks.sources.length,
    isothermal: figure(of(CLOSED, 'end of choking, isothermal'), 4),
    adiabatic: figure(of(CLOSED, 'end of choking, adiabatic'), 4),
    closure: figure(of(BOOKS, 'worst closure'), 2),
    steps: figure(of(BOOKS, 'most steps'), 4),
    finer: perCent(worst(ITSELF)),
    scipy: perCent(worst(SCIPY)),
    least: perCent(Math.min(...shares)),
    most: perCent(Math.max(...shares)),
  };
}
