import { Matrix, QrDecomposition } from 'ml-matrix';
import { numberAt } from '../solver/number-at.js';

/** One smoothed value: a weighted sum of the readings from `from` on. @internal */
export interface Smoothing {
  readonly from: number;
  readonly weights: readonly number[];
}

/**
 * The weights that give, at each reading, the value of the least-squares cubic through the nearest `points` readings;
 * at the ends the window stays inside and the cubic is read off its middle. Without smoothing each value is its own.
 *
 * The method of A. Savitzky, M. J. E. Golay, Anal. Chem. 36, 1627–1639 (1964), doi:10.1021/ac60214a047, here on uneven
 * points: each window has its own weights.
 *
 * @internal
 */
export function smoothingOf(x: readonly number[], points: number | undefined): readonly Smoothing[] {
  if (points === undefined) return x.map((_, k) => ({ from: k, weights: [1] }));
  return x.map((at, k) => {
    const from = Math.min(Math.max(0, k - (points - 1) / 2), x.length - points);
    const window = x.slice(from, from + points).map((each) => each - at);
    const width = Math.max(...window.map(Math.abs));
    const powers = new Matrix(window.map((each) => [0, 1, 2, 3].map((power) => (each / width) ** power)));
    return { from, weights: new QrDecomposition(powers).solve(Matrix.eye(points)).getRow(0) };
  });
}

/** The smoothed column. @internal */
export const smoothed = (y: readonly number[], smoothing: readonly Smoothing[]): readonly number[] =>
  smoothing.map(({ from, weights }) => weights.reduce((sum, w, k) => sum + w * numberAt(y, from + k), 0));
