import {
  compile,
  firstStepS,
  pressuresAbsPa,
  stepTo,
  type Contents,
  type Network,
} from '../../core/physics/index.ts';
import cases from './scipy/stiffCases.json';
import reference from './scipy/reference.json';

/** A case hard for a solver: small volumes behind wide openings, followed for a while. */
export interface StiffCase extends Network, Contents {
  readonly name: string;
  /** Times at which pressures are compared, s. */
  readonly marksS: readonly number[];
}

/** What SciPy says of it and what its methods cost, as committed with the script that made the figures. */
export interface StiffReference {
  readonly name: string;
  readonly pressuresAbsPa: readonly (readonly number[])[];
  readonly gasFractions: readonly (readonly number[])[];
  readonly scipy: Readonly<Record<string, { readonly rightHandSides: number; readonly rtol: number }>>;
}

export const stiffCases = cases as unknown as readonly StiffCase[];
export const stiffReferences = reference.cases as unknown as readonly StiffReference[];
/** Version of SciPy the figures were made by. */
export const scipyVersion: string = reference.scipy;

/** Error of pressure at the marks that every method is held to, as a share. */
export const EQUAL_ERROR = 5e-4;

/** One method's answer to one case: evaluations of the right-hand side, and the worst error of pressure at any mark. */
export interface Solved {
  readonly evaluations: number;
  readonly worst: number;
}

/** Worst share by which pressures differ from the reference at one mark. */
export function worstAt(theirs: StiffReference, mark: number, pressures: readonly number[]): number {
  let worst = 0;
  for (let i = 0; i < pressures.length; i += 1) {
    const off = Math.abs(pressures[i] / theirs.pressuresAbsPa[mark][i] - 1);
    if (!(off <= worst)) worst = off;
  }
  return worst;
}

/** Our own solver on a case. */
export function solveOurs(start: StiffCase, theirs: StiffReference): Solved {
  const net = compile(start);
  let contents: Contents = start;
  let stepS = firstStepS(net, 0, contents);
  let atS = 0;
  let evaluations = 0;
  let worst = 0;
  start.marksS.forEach((markS, mark) => {
    const step = stepTo(net, atS, contents, stepS, markS);
    ({ contents, nextStepS: stepS } = step);
    evaluations += step.evaluations;
    atS = markS;
    worst = Math.max(worst, worstAt(theirs, mark, pressuresAbsPa(net, contents)));
  });
  return { evaluations, worst };
}
