// Lines below which a given part of the values lies: exact, by walking from one fit through p points to the next better one.
import {leastSquares, residualsOf} from "./least-squares.ts";

/**
 * Fits the tau-quantile of y to columns: the coefficients with the least sum of w |r| tau (above) and w |r| (1 - tau) (below).
 * The fit passes through p of the points. Each step leaves one of them along the steepest edge, as far as the loss falls.
 * @param columns  p columns of n numbers; a column of ones is the intercept
 * @returns null when no p points determine a fit
 * @source  R. Koenker, G. Bassett, "Regression quantiles", Econometrica 46 (1978), 33; steps after I. Barrodale, F. D. K. Roberts, SIAM J. Numer. Anal. 10 (1973), 839
 */
export function quantileRegression(columns: readonly Float64Array[], y: ArrayLike<number>, tau: number, weights?: ArrayLike<number>): Float64Array | null {
  const n = y.length;
  const p = columns.length;
  const start = leastSquares(columns, y);
  if (!start) return null;
  const basis = independentRows(columns, start.residuals);
  if (!basis) return null;
  const weight = (i: number) => weights?.[i] ?? 1;
  const noise = 1e-11 * Array.from(y).reduce((most, v) => Math.max(most, Math.abs(v)), 0);
  let inverse = inverseOf(basis.map((i) => columns.map((column) => column[i]!)))!;
  let fitted = product(inverse, basis.map((i) => y[i]!));
  for (let step = 0; step < 50 * (n + p); step++) {
    const residuals = residualsOf(columns, y, fitted);
    for (const i of basis) residuals[i] = 0;
    const edge = steepestEdge(columns, residuals, inverse, basis, tau, weight, noise);
    if (!edge) return Float64Array.from(fitted);
    basis[edge.leaves] = edge.enters;
    inverse = inverseOf(basis.map((i) => columns.map((column) => column[i]!)))!;
    fitted = product(inverse, basis.map((i) => y[i]!));
  }
  return Float64Array.from(fitted);
}

interface Edge {
  /** Place in the basis that is given up, and the row that takes it. */
  readonly leaves: number;
  readonly enters: number;
}

function steepestEdge(columns: readonly Float64Array[], residuals: Float64Array, inverse: readonly number[][], basis: readonly number[], tau: number, weight: (i: number) => number, noise: number): Edge | null {
  const n = residuals.length;
  const inside = new Uint8Array(n);
  for (const i of basis) inside[i] = 1;
  const along = new Float64Array(n);
  let best: {fall: number; j: number; sign: number} | null = null;
  for (let j = 0; j < basis.length; j++) {
    const scale = moveAlong(along, columns, inverse, j, 1);
    // The loss is bent at residuals of nothing, so that both ways along an edge have to be looked at.
    for (const sign of [1, -1]) {
      let slope = weight(basis[j]!) * (sign > 0 ? 1 - tau : tau);
      for (let i = 0; i < n; i++) {
        const v = sign * along[i]!;
        if (inside[i] || Math.abs(v) <= 1e-12 * scale) continue;
        const r = residuals[i]!;
        slope += weight(i) * v * ((Math.abs(r) > noise ? r > 0 : v < 0) ? -tau : 1 - tau);
      }
      if (slope < -1e-10 * scale && (!best || slope < best.fall)) best = {fall: slope, j, sign};
    }
  }
  if (!best) return null;
  const {j, sign, fall} = best;
  const scale = moveAlong(along, columns, inverse, j, sign);
  const breaks: {at: number; i: number; turn: number}[] = [];
  for (let i = 0; i < n; i++) {
    const [r, v] = [residuals[i]!, along[i]!];
    if (!inside[i] && Math.abs(v) > 1e-12 * scale && r * v > 0 && Math.abs(r) > noise) breaks.push({at: r / v, i, turn: weight(i) * Math.abs(v)});
  }
  breaks.sort((x, y) => x.at - y.at);
  let slope = fall;
  const stop = breaks.find(({turn}) => (slope += turn) >= 0);
  return stop ? {leaves: j, enters: stop.i} : null;
}

/** How fast each fitted value moves along an edge; the largest of them is returned. */
function moveAlong(along: Float64Array, columns: readonly Float64Array[], inverse: readonly number[][], j: number, sign: number): number {
  along.fill(0);
  columns.forEach((column, k) => {
    const step = sign * inverse[k]![j]!;
    for (let i = 0; i < along.length; i++) along[i]! += step * column[i]!;
  });
  let scale = 0;
  for (let i = 0; i < along.length; i++) scale = Math.max(scale, Math.abs(along[i]!));
  return scale;
}

/** p rows that determine a fit, those near the least-squares fit first. */
function independentRows(columns: readonly Float64Array[], residuals: Float64Array): number[] | null {
  const chosen: number[] = [];
  const reduced: number[][] = [];
  for (const i of Array.from(residuals.keys()).sort((a, b) => Math.abs(residuals[a]!) - Math.abs(residuals[b]!))) {
    const row = columns.map((column) => column[i]!);
    const length = Math.hypot(...row);
    for (const other of reduced) {
      const dot = row.reduce((sum, v, k) => sum + v * other[k]!, 0);
      row.forEach((v, k) => (row[k] = v - dot * other[k]!));
    }
    const left = Math.hypot(...row);
    if (left <= 1e-8 * length) continue;
    reduced.push(row.map((v) => v / left));
    chosen.push(i);
    if (chosen.length === columns.length) return chosen;
  }
  return null;
}

const product = (matrix: readonly number[][], vector: readonly number[]) => matrix.map((row) => row.reduce((sum, v, k) => sum + v * vector[k]!, 0));

/** Inverse by elimination with the largest pivot; the matrices here are a few rows wide. */
function inverseOf(rows: readonly number[][]): number[][] | null {
  const n = rows.length;
  const work = rows.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(work[i]![k]!) > Math.abs(work[pivot]![k]!)) pivot = i;
    if (work[pivot]![k] === 0) return null;
    [work[k], work[pivot]] = [work[pivot]!, work[k]!];
    const own = work[k]!;
    const by = own[k]!;
    for (let c = 0; c < 2 * n; c++) own[c]! /= by;
    for (let i = 0; i < n; i++) {
      const factor = work[i]![k]!;
      if (i !== k && factor !== 0) for (let c = 0; c < 2 * n; c++) work[i]![c]! -= factor * own[c]!;
    }
  }
  return work.map((row) => row.slice(n));
}
