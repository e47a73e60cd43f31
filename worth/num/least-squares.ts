// Least squares by Householder reflections, with weights: stable where normal equations lose their digits.

export interface Fit {
  readonly coefficients: Float64Array;
  /** y less what is fitted, not weighted. */
  readonly residuals: Float64Array;
  /** Weighted sum of squared residuals. */
  readonly squares: number;
  /** Rows less columns. */
  readonly freedom: number;
  /** Residual standard deviation. */
  readonly sigma: number;
  /** x'(X'WX)^-1 x: variance of a fitted value in units of sigma squared. */
  leverage(x: ArrayLike<number>): number;
}

/**
 * Fits y to columns.
 * @param columns  p columns of n numbers each; a column of ones is the intercept
 * @param weights  n numbers, not negative; left out: all 1
 * @returns null when the columns depend on each other
 * @source  G. H. Golub, C. F. Van Loan, Matrix Computations, section 5.3; one step of refinement
 * @accuracy  nine digits and more on the certified problems of test/outside/worth
 */
export function leastSquares(columns: readonly Float64Array[], y: ArrayLike<number>, weights?: ArrayLike<number>): Fit | null {
  const n = y.length;
  const p = columns.length;
  const root = new Float64Array(n).fill(1);
  if (weights) for (let i = 0; i < n; i++) root[i] = Math.sqrt(weights[i]!);
  const a = columns.map((column) => column.map((x, i) => x * root[i]!));
  const diagonal = reflect(a);
  if (!diagonal) return null;
  const solve = (target: Float64Array) => {
    for (let k = 0; k < p; k++) applyReflection(a[k]!, target, k);
    return backward(a, diagonal, target);
  };
  const coefficients = solve(root.map((w, i) => y[i]! * w));
  const left = () => residualsOf(columns, y, coefficients);
  const correction = solve(left().map((r, i) => r * root[i]!));
  for (let k = 0; k < p; k++) coefficients[k]! += correction[k]!;
  const residuals = left();
  let squares = 0;
  for (let i = 0; i < n; i++) squares += (residuals[i]! * root[i]!) ** 2;
  const freedom = n - p;
  return {coefficients, residuals, squares, freedom, sigma: Math.sqrt(squares / freedom), leverage: (x) => leverageOf(a, diagonal, x)};
}

export function residualsOf(columns: readonly Float64Array[], y: ArrayLike<number>, coefficients: ArrayLike<number>): Float64Array {
  const left = Float64Array.from(y);
  columns.forEach((column, k) => {
    const c = coefficients[k]!;
    if (c !== 0) for (let i = 0; i < left.length; i++) left[i]! -= c * column[i]!;
  });
  return left;
}

/** Turns the columns into reflections below and R above the diagonal; the diagonal of R is returned, null when one of its entries is nothing. */
function reflect(a: readonly Float64Array[]): Float64Array | null {
  const diagonal = new Float64Array(a.length);
  for (let k = 0; k < a.length; k++) {
    const column = a[k]!;
    let whole = 0;
    for (let i = 0; i < column.length; i++) whole += column[i]! ** 2;
    let below = 0;
    for (let i = k; i < column.length; i++) below += column[i]! ** 2;
    if (!(below > whole * 1e-24) || column.length <= k) return null;
    const length = Math.sqrt(below);
    const alpha = column[k]! > 0 ? -length : length;
    diagonal[k] = alpha;
    column[k]! -= alpha;
    for (let j = k + 1; j < a.length; j++) applyReflection(column, a[j]!, k);
  }
  return diagonal;
}

function applyReflection(v: Float64Array, target: Float64Array, from: number): void {
  let dot = 0;
  let own = 0;
  for (let i = from; i < v.length; i++) {
    dot += v[i]! * target[i]!;
    own += v[i]! * v[i]!;
  }
  if (own === 0 || dot === 0) return;
  const scale = (2 * dot) / own;
  for (let i = from; i < v.length; i++) target[i]! -= scale * v[i]!;
}

function backward(a: readonly Float64Array[], diagonal: Float64Array, target: Float64Array): Float64Array {
  const x = new Float64Array(a.length);
  for (let k = a.length - 1; k >= 0; k--) {
    let left = target[k]!;
    for (let j = k + 1; j < a.length; j++) left -= a[j]![k]! * x[j]!;
    x[k] = left / diagonal[k]!;
  }
  return x;
}

/** Solves R'z = x; the leverage is the squared length of z. */
function leverageOf(a: readonly Float64Array[], diagonal: Float64Array, x: ArrayLike<number>): number {
  const z = new Float64Array(a.length);
  let sum = 0;
  for (let k = 0; k < a.length; k++) {
    let left = x[k]!;
    for (let j = 0; j < k; j++) left -= a[k]![j]! * z[j]!;
    z[k] = left / diagonal[k]!;
    sum += z[k]! ** 2;
  }
  return sum;
}
