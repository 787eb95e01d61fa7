import { numberAt } from '../solver/number-at.js';
import { studentTQuantile } from '../solver/students-t.js';

/**
 * Whether points bend away from a straight line: the quadratic term of f = a + b·x + c·x² is tested by Student's t,
 *
 *   |c|·√(Σ w·q²)/s > t(0.975; n − 3),   s² = Σ w·r²/(n − 3),   w = 1/u²                                  (1)
 *
 * with q what is left of x² beside a and b, r the residuals of the parabola, u the standard uncertainty of each f: the
 * ordinates of a Gran plot scatter the more the larger they are. Points nearer to the parabola than a tenth of their
 * uncertainty say no more, so s is at least 0.1, as in evidence.ts.
 *
 * J. Mandel's test of linearity, of ISO 8466-1 (1990), from memory; t² is his F. A straight line is called bent in one case
 * of twenty.
 *
 * @param x - increasing
 * @internal
 */
export function isBent(x: readonly number[], f: readonly number[], u: readonly number[]): boolean {
  const freedom = x.length - 3;
  if (freedom < 1) return false;
  const product = (a: readonly number[], b: readonly number[]) =>
    u.reduce((sum, each, k) => sum + (numberAt(a, k) * numberAt(b, k)) / each ** 2, 0);
  /** What is left of a column beside another. */
  const beside = (column: readonly number[], other: readonly number[]) => {
    const share = product(column, other) / product(other, other);
    return column.map((each, k) => each - share * numberAt(other, k));
  };
  const constant = x.map(() => 1);
  const linear = beside(x, constant);
  const quadratic = beside(
    beside(
      linear.map((each) => each ** 2),
      constant,
    ),
    linear,
  );
  const line = beside(beside(f, constant), linear);
  const parabola = beside(line, quadratic);
  const s = Math.max(Math.sqrt(product(parabola, parabola) / freedom), leastScatter);
  const t = Math.abs(product(line, quadratic)) / Math.sqrt(product(quadratic, quadratic)) / s;
  return t > studentTQuantile(0.975, freedom);
}

/** In standard uncertainties of the points. */
const leastScatter = 0.1;
