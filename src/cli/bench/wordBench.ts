import type { Far } from './explicit.ts';
import type { BenchReport } from './index.ts';
import type { Stiff } from './measureStiff.ts';

/** The report as lines for a person. */
export function wordBench(report: BenchReport): string {
  const { fullJob, quietHold, blow, actions, openings } = report;
  return [
    `Whole job: ${fullJob.ms} ms for ${fullJob.simulatedS} s of simulated time (${fullJob.simPerCpuS} per processor second)`,
    `Quiet hold of ten minutes: ${quietHold.simPerCpuS} simulated seconds per processor second`,
    `Open blow: ${blow.simPerCpuS} simulated seconds per processor second`,
    `Random actions on a run: ${actions.n} done of ${actions.tried} tried in ${trial(actions)}`,
    `Random openings: ${openings.n} in ${trial(openings)}`,
    ...report.growth.map(({ cells, usPerStep }) => `${cells} cells: ${usPerStep} µs a step`),
    ...report.length.map(
      ({ simulatedS, ms }) =>
        `${simulatedS} s of a busy crew: ${ms} ms (${((ms * 3600) / simulatedS).toFixed(1)} an hour)`,
    ),
    ...wordStiff(report),
  ].join('\n');
}

function trial({ ms, failures, maxSteps, worstClosure }: BenchReport['openings']): string {
  return `${ms} ms, ${failures} failures, at most ${maxSteps} steps, mass closes to ${worstClosure.toExponential(1)}`;
}

/** The stiff cases, one line each: evaluations of the right-hand side at equal error. */
export function wordStiff({ rhs, rhsFrom }: BenchReport): string[] {
  const beside = (name: string, evaluations: number, ours: number): string =>
    `${name} ${evaluations} (${(evaluations / ours).toFixed(1)} times ours)`;
  const far = (name: string, { evaluations, share }: Far, ours: number): string => {
    if (share === 1) return beside(name, evaluations, ours);
    const came =
      share === 0 ? 'no step is stable' : `only ${(100 * share).toPrecision(2)} % of the time covered`;
    return `${name} gives up after ${evaluations}: ${came}`;
  };
  const line = (one: Stiff): string => {
    const times = one.scipyMs === null ? `${one.oursMs} ms` : `${one.oursMs} ms against ${one.scipyMs} ms`;
    return [
      `${one.case}: ours ${one.ours}`,
      beside(`SciPy’s ${one.scipyMethod}`, one.bestScipy, one.ours),
      far('odex', one.odex, one.ours),
      far('fixed-step RK4', one.rungeKutta, one.ours),
      `our error ${(100 * one.oursError).toFixed(3)} %, ${times}`,
    ].join('; ');
  };
  return [`Evaluations to 0.05 % of pressure (${rhsFrom}):`, ...rhs.map(line)];
}
