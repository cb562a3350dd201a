/** What is used of the package; it ships its own source instead of types, which no strict compiler accepts. */
export class Solver {
  constructor(dimension: number);
  relativeTolerance: number;
  absoluteTolerance: number;
  initialStepSize: number;
  maxSteps: number;
  solve(
    change: (x: number, y: number[]) => number[],
    from: number,
    start: number[],
    to: number,
  ): { readonly y: number[] };
}
