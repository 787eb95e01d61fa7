import { numberAt } from '../solver/number-at.js';

/** Where a straight line through points crosses zero. @internal */
export interface LineZero {
  readonly value: number;
  readonly standardUncertainty: number;
  /** Of the line. */
  readonly slope: number;
  /** By how much the zero moves when the ordinates move by these. */
  movesWith(shifts: readonly number[]): number;
}

/**
 * The zero of the least-squares line f = a + b·x, all points weighing the same, and its standard error.
 *
 *   x₀ = −a/b,   δx₀ = −(1/b)·Σ wₖ·δfₖ,   wₖ = 1/n + (x₀ − x̄)(xₖ − x̄)/Σ(x − x̄)²
 *
 * The ordinates of a Gran plot scatter the more the larger they are, so each point brings its own residual, eₖ/(1 − hₖ)
 * with its leverage h, in place of a common standard deviation ("HC3": J. G. MacKinnon, H. White, J. Econometrics 29,
 * 305–325 (1985), doi:10.1016/0304-4076(85)90158-7). Undefined where the line is level.
 *
 * @internal
 */
export function lineZero(x: readonly number[], f: readonly number[]): LineZero | undefined {
  const n = x.length;
  const mean = (column: readonly number[]) => column.reduce((sum, each) => sum + each, 0) / n;
  const [xMean, fMean] = [mean(x), mean(f)];
  const dx = x.map((each) => each - xMean);
  const sxx = dx.reduce((sum, each) => sum + each * each, 0);
  const b = dx.reduce((sum, each, k) => sum + each * (numberAt(f, k) - fMean), 0) / sxx;
  const value = xMean - fMean / b;
  if (!Number.isFinite(value)) return undefined;
  const weights = dx.map((each) => 1 / n + ((value - xMean) * each) / sxx);
  const residuals = dx.map((each, k) => {
    const leverage = 1 / n + (each * each) / sxx;
    return (numberAt(f, k) - fMean - b * each) / Math.max(1 - leverage, Number.EPSILON);
  });
  const movesWith = (shifts: readonly number[]) =>
    -weights.reduce((sum, w, k) => sum + w * numberAt(shifts, k), 0) / b;
  const standardUncertainty = Math.hypot(...weights.map((w, k) => (w * numberAt(residuals, k)) / b));
  return Number.isFinite(standardUncertainty)
    ? { value, standardUncertainty, slope: b, movesWith }
    : undefined;
}
