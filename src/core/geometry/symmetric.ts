/** A small symmetric matrix, kept whole; written only through `add`, which keeps it symmetric. */
export class SymmetricMatrix {
  private readonly cells: Float64Array;

  constructor(readonly size: number) {
    this.cells = new Float64Array(size * size);
  }

  get(row: number, column: number): number {
    return this.cells[row * this.size + column] ?? 0;
  }

  /** Adds to an entry and to the one across the diagonal. */
  add(row: number, column: number, value: number): void {
    this.cells[row * this.size + column] = this.get(row, column) + value;
    if (row !== column) this.cells[column * this.size + row] = this.get(row, column);
  }
}

/** Solves for one right-hand side. */
export type Solver = (right: readonly number[]) => number[];

/**
 * Cholesky factor of the matrix with `damping` added along its diagonal, wrapped as a solver; null when that matrix is
 * not positive definite.
 */
export function factorise(matrix: SymmetricMatrix, damping = 0): Solver | null {
  const { size } = matrix;
  const cells = new Float64Array(size * size);
  const get = (row: number, column: number) => cells[row * size + column] ?? 0;
  for (let column = 0; column < size; column++) {
    let pivot = matrix.get(column, column) + damping;
    for (let k = 0; k < column; k++) pivot -= get(column, k) ** 2;
    if (!(pivot > 0)) return null;
    const root = Math.sqrt(pivot);
    cells[column * size + column] = root;
    for (let row = column + 1; row < size; row++) {
      let value = matrix.get(row, column);
      for (let k = 0; k < column; k++) value -= get(row, k) * get(column, k);
      cells[row * size + column] = value / root;
    }
  }
  return (right) => {
    const x = Float64Array.from(right);
    for (let row = 0; row < size; row++) {
      let value = x[row] ?? 0;
      for (let k = 0; k < row; k++) value -= get(row, k) * (x[k] ?? 0);
      x[row] = value / get(row, row);
    }
    for (let row = size - 1; row >= 0; row--) {
      let value = x[row] ?? 0;
      for (let k = row + 1; k < size; k++) value -= get(k, row) * (x[k] ?? 0);
      x[row] = value / get(row, row);
    }
    return Array.from(x);
  };
}
