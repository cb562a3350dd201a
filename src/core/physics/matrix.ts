/** A small dense square matrix, factored in place with row exchanges. Rows lie one after another. */
export class Matrix {
  readonly size: number;
  readonly values: Float64Array;
  private readonly rows: Int32Array;
  private readonly work: Float64Array;

  constructor(size: number) {
    this.size = size;
    this.values = new Float64Array(size * size);
    this.rows = new Int32Array(size);
    this.work = new Float64Array(size);
  }

  /** Factors the values. Returns false when a column has nothing to divide by. */
  factor(): boolean {
    const { size, values, rows } = this;
    for (let i = 0; i < size; i += 1) rows[i] = i;
    for (let column = 0; column < size; column += 1) {
      this.bringPivot(column);
      const pivotRow = rows[column] * size;
      const pivot = values[pivotRow + column];
      if (pivot === 0 || pivot !== pivot) return false;
      for (let i = column + 1; i < size; i += 1) {
        const row = rows[i] * size;
        const under = values[row + column];
        if (under === 0) continue;
        const share = under / pivot;
        values[row + column] = share;
        for (let j = column + 1; j < size; j += 1) values[row + j] -= share * values[pivotRow + j];
      }
    }
    return true;
  }

  /** Solves for one right-hand side with a factored matrix; the answer replaces it. */
  solve(right: Float64Array): void {
    const { size, values, rows, work } = this;
    for (let i = 0; i < size; i += 1) {
      const row = rows[i] * size;
      let sum = right[rows[i]];
      for (let j = 0; j < i; j += 1) sum -= values[row + j] * work[j];
      work[i] = sum;
    }
    for (let i = size - 1; i >= 0; i -= 1) {
      const row = rows[i] * size;
      let sum = work[i];
      for (let j = i + 1; j < size; j += 1) sum -= values[row + j] * work[j];
      work[i] = sum / values[row + i];
    }
    for (let i = 0; i < size; i += 1) right[i] = work[i];
  }

  private bringPivot(column: number): void {
    const { size, values, rows } = this;
    let best = column;
    let largest = Math.abs(values[rows[column] * size + column]);
    for (let i = column + 1; i < size; i += 1) {
      const candidate = Math.abs(values[rows[i] * size + column]);
      if (candidate > largest) {
        largest = candidate;
        best = i;
      }
    }
    if (best === column) return;
    const kept = rows[column];
    rows[column] = rows[best];
    rows[best] = kept;
  }
}
