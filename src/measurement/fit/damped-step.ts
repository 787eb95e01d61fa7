import { Matrix, QrDecomposition } from 'ml-matrix';
import { numberAt } from '../../solver/number-at.js';

/** Residuals at some parameters, and how each changes with each parameter. @internal */
export interface Linearised {
  readonly residuals: Float64Array;
  /** One row per residual, one column per parameter. */
  readonly jacobian: Matrix;
}

/** A step, and what it gains. @internal */
interface Step {
  /** Of each parameter; zero for those that are held. */
  readonly change: Float64Array;
  /** By how much the sum of squares falls, if the residuals are as linear as the Jacobian has them. */
  readonly gain: number;
}

/**
 * The step δ of Levenberg and Marquardt from residuals r with their Jacobian J = ∂r/∂θ:
 *
 *   (JᵀJ + λ·D²)·δ = −Jᵀr                              D the `lengths`, λ the damping                      (1)
 *
 * Solved as the least squares of [J; √λ·D]·δ = [−r; 0] by QR, which keeps the digits that JᵀJ would lose.
 * D. W. Marquardt, J. Soc. Indust. Appl. Math. 11, 431–441 (1963), doi:10.1137/0111030.
 *
 * @param free - the parameters that may move, by their indices
 * @returns undefined where the matrix is singular
 * @internal
 */
export function dampedStep(
  { residuals, jacobian }: Linearised,
  free: readonly number[],
  lengths: Float64Array,
  damping: number,
): Step | undefined {
  const change = new Float64Array(lengths.length);
  if (free.length === 0) return { change, gain: 0 };
  const { rows } = jacobian;
  const extra = damping > 0 ? free.length : 0;
  const matrix = new Matrix(rows + extra, free.length);
  const wanted = new Matrix(rows + extra, 1);
  const scales = free.map((j) => numberAt(lengths, j) || 1);
  for (let i = 0; i < rows; i += 1) {
    wanted.set(i, 0, -numberAt(residuals, i));
    for (let k = 0; k < free.length; k += 1)
      matrix.set(i, k, jacobian.get(i, numberAt(free, k)) / numberAt(scales, k));
  }
  for (let k = 0; k < extra; k += 1) matrix.set(rows + k, k, Math.sqrt(damping));
  if (matrix.rows < matrix.columns) return undefined;
  const qr = new QrDecomposition(matrix);
  if (!qr.isFullRank()) return undefined;
  const solved = qr.solve(wanted);
  let fall = 0;
  let bend = 0;
  for (let k = 0; k < free.length; k += 1) change[numberAt(free, k)] = solved.get(k, 0) / numberAt(scales, k);
  for (let i = 0; i < rows; i += 1) {
    const r = numberAt(residuals, i);
    let moved = 0;
    for (let k = 0; k < free.length; k += 1) moved += matrix.get(i, k) * solved.get(k, 0);
    fall -= 2 * r * moved; // S − S′ = −2·r·Jδ − |Jδ|², term by term, so that little is lost near the end
    bend += moved * moved;
  }
  const gain = fall - bend;
  return Number.isFinite(gain) ? { change, gain: Math.max(gain, 0) } : undefined;
}

/** D of (1): the greatest length so far of each column of J, which makes a step independent of units. @internal */
export function growLengths(lengths: Float64Array, jacobian: Matrix): void {
  for (let j = 0; j < lengths.length; j += 1) {
    let square = 0;
    for (let i = 0; i < jacobian.rows; i += 1) square += jacobian.get(i, j) ** 2;
    lengths[j] = Math.max(numberAt(lengths, j), Math.sqrt(square));
  }
}
