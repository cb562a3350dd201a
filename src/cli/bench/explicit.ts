import { Solver } from 'odex';
import { compile, linkRates, pressuresAbsPa, type CompiledNetwork } from '../../core/physics/index.ts';
import { EQUAL_ERROR, worstAt, type StiffCase, type StiffReference } from './stiff.ts';

/** Evaluations after which a method gives up, unless told otherwise. */
export const PATIENCE = 400_000;

/** How far a method came and what it took: a share of 1 is the whole case, exact enough. */
export interface Far {
  readonly evaluations: number;
  readonly share: number;
}

class GivesUp extends Error {}

/** The case in the form every solver takes: air and gas of each cell side by side, and their change in time. */
function equations(start: StiffCase, most: number) {
  const net = compile(start);
  const y0 = start.airMol.flatMap((air, i) => [air, start.gasMol[i]]);
  let evaluations = 0;
  let farS = 0;
  return {
    y0,
    count: () => evaluations,
    reachedS: () => farS,
    pressures: (y: readonly number[]): number[] => pressuresAbsPa(net, contentsOf(y)),
    change: (atS: number, y: readonly number[]): number[] => {
      evaluations += 1;
      farS = atS;
      if (evaluations > most || y.some((value) => !(Math.abs(value) < 1e9))) throw new GivesUp();
      return changeOf(net, y);
    },
  };
}

/** Methods that know nothing of gas may step below nothing: there they are shown an empty cell. */
function contentsOf(y: readonly number[]) {
  const airMol: number[] = [];
  const gasMol: number[] = [];
  for (let i = 0; i < y.length; i += 2) {
    airMol.push(Math.max(0, y[i]));
    gasMol.push(Math.max(1e-12, y[i + 1]));
  }
  return { airMol, gasMol };
}

function changeOf(net: CompiledNetwork, y: readonly number[]): number[] {
  const { airMolPerS, gasMolPerS } = linkRates(net, contentsOf(y));
  const change = new Array<number>(y.length).fill(0);
  for (let l = 0; l < net.linkCount; l += 1) {
    const from = net.from[l];
    const to = net.to[l];
    if (from < net.cellCount) {
      change[2 * from] -= airMolPerS[l];
      change[2 * from + 1] -= gasMolPerS[l];
    }
    if (to < net.cellCount) {
      change[2 * to] += airMolPerS[l];
      change[2 * to + 1] += gasMolPerS[l];
    }
  }
  return change;
}

type Between = (system: ReturnType<typeof equations>, y: number[], fromS: number, toS: number) => number[];

/** Follows a case from mark to mark by a method, as far as it goes. */
function follow(
  start: StiffCase,
  theirs: StiffReference,
  most: number,
  between: Between,
): Far & { worst: number } {
  const system = equations(start, most);
  const endS = start.marksS[start.marksS.length - 1];
  let y = system.y0;
  let atS = 0;
  let worst = 0;
  try {
    start.marksS.forEach((markS, mark) => {
      y = between(system, y, atS, markS);
      atS = markS;
      const off = worstAt(theirs, mark, system.pressures(y));
      if (!(off <= worst)) worst = off;
    });
  } catch (error) {
    if (error instanceof GivesUp) return { evaluations: most, share: system.reachedS() / endS, worst };
    throw error;
  }
  return { evaluations: system.count(), share: 1, worst };
}

const TOLERANCES = [1e-2, 1e-3, 1e-4, 1e-5, 1e-6];

/** Hairer's extrapolation of the explicit midpoint rule, at the loosest tolerance that is exact enough. */
export function solveByOdex(start: StiffCase, theirs: StiffReference, most: number): Far {
  let far: Far = { evaluations: most, share: 0 };
  for (const tolerance of TOLERANCES) {
    const { worst, ...reached } = follow(start, theirs, most, (system, y, fromS, toS) => {
      const solver = new Solver(y.length);
      solver.relativeTolerance = tolerance;
      solver.absoluteTolerance = tolerance * 1e-4;
      solver.maxSteps = most;
      solver.initialStepSize = Math.min(1e-6, toS - fromS);
      return solver.solve((atS, now) => system.change(atS, now), fromS, y, toS).y;
    });
    far = reached;
    if (reached.share < 1 || worst <= EQUAL_ERROR) break;
  }
  return far;
}

/** The classical fourth-order rule at the widest step, halved from a tenth of a second, that is exact enough. */
export function solveByRungeKutta(start: StiffCase, theirs: StiffReference, most: number): Far {
  const endS = start.marksS[start.marksS.length - 1];
  for (let stepS = 0.1; (4 * endS) / stepS <= most; stepS /= 2) {
    const { worst, ...reached } = follow(start, theirs, most, (system, y, fromS, toS) => {
      const steps = Math.ceil((toS - fromS) / stepS);
      const hS = (toS - fromS) / steps;
      let now = y;
      for (let i = 0; i < steps; i += 1) {
        const change = (at: readonly number[]): number[] => system.change(fromS + i * hS, at);
        now = rungeKuttaStep(change, now, hS);
      }
      return now;
    });
    if (reached.share === 1 && worst <= EQUAL_ERROR) return reached;
  }
  return { evaluations: most, share: 0 };
}

function rungeKuttaStep(
  change: (y: readonly number[]) => number[],
  y: readonly number[],
  hS: number,
): number[] {
  const along = (slope: readonly number[], h: number): number[] => y.map((value, i) => value + h * slope[i]);
  const a = change(y);
  const b = change(along(a, hS / 2));
  const c = change(along(b, hS / 2));
  const d = change(along(c, hS));
  return y.map((value, i) => value + (hS / 6) * (a[i] + 2 * b[i] + 2 * c[i] + d[i]));
}
