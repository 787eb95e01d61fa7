import { type Matrix, SingularValueDecomposition } from 'ml-matrix';
import { numberAt } from '../../solver/number-at.js';

/** What a Jacobian tells of its parameters, before any scatter. @internal */
export interface FitCovariance {
  /** Of each parameter, √(C_jj); null where the readings do not determine it. */
  readonly deviations: readonly (number | null)[];
  /** One row per parameter; a parameter that is not determined goes with itself alone. */
  readonly correlation: readonly (readonly number[])[];
  /** √(gᵀC·g), for a quantity whose derivatives by the parameters are g; null where it hangs on one not determined. */
  deviationOf(gradient: readonly number[]): number | null;
  /** The greatest condition index. */
  readonly condition: number;
  /** Parameters, by their indices, that these readings cannot tell apart. */
  readonly inseparable: readonly (readonly number[])[];
}

/**
 * The covariance C = (JᵀJ)⁻¹ from the singular values μ and vectors V of J with its columns brought to length 1:
 *
 *   C_ij = Σ_k V_ik·V_jk/μ_k² / (d_i·d_j)              d the lengths of the columns                     (1)
 *
 * Condition indices η_k = μ_max/μ_k, and the share of direction k in the variance of parameter j,
 *
 *   π_jk = (V_jk/μ_k)² / Σ_l (V_jl/μ_l)²                                                             (2)
 *
 * Where η_k is 30 or more and two parameters or more have π_jk above one half, these readings cannot tell them apart:
 * D. A. Belsley, E. Kuh, R. E. Welsch, Regression Diagnostics (1980), section 3.2, for the rule and its limits.
 *
 * There are as many readings as parameters at least.
 *
 * @internal
 */
export function fitCovariance(jacobian: Matrix): FitCovariance {
  const lengths = Array.from({ length: jacobian.columns }, (_, j) => lengthOf(jacobian.getColumn(j)));
  const scaled = jacobian.clone();
  for (const [j, length] of lengths.entries()) scaled.mulColumn(j, length > 0 ? 1 / length : 0);
  const { diagonal, rightSingularVectors: vectors } = new SingularValueDecomposition(scaled, {
    computeLeftSingularVectors: false,
  });
  const greatest = Math.max(...diagonal);
  const isLevel = diagonal.map((mu) => !(mu > greatest * rounding));
  const determined = lengths.map((length, j) => isDetermined(length, isLevel, (k) => vectors.get(j, k)));
  const over = (i: number, j: number) =>
    diagonal.reduce(
      (sum, mu, k) => (isLevel[k] ? sum : sum + (vectors.get(i, k) * vectors.get(j, k)) / mu ** 2),
      0,
    ) /
    (numberAt(lengths, i) * numberAt(lengths, j));
  const covariance = lengths.map((_, i) =>
    lengths.map((_, j) => (determined[i] && determined[j] ? over(i, j) : i === j ? 1 : 0)),
  );
  const at = (i: number, j: number) => covariance[i]?.[j] ?? 0;
  return {
    deviations: lengths.map((_, j) => (determined[j] ? Math.sqrt(at(j, j)) : null)),
    correlation: lengths.map((_, i) => lengths.map((_, j) => at(i, j) / Math.sqrt(at(i, i) * at(j, j)))),
    deviationOf(gradient) {
      if (gradient.some((g, j) => g !== 0 && !determined[j])) return null;
      const sum = gradient.reduce(
        (total, g, i) => total + g * gradient.reduce((part, other, j) => part + other * at(i, j), 0),
        0,
      );
      return Math.sqrt(Math.max(sum, 0));
    },
    condition: greatest > 0 ? greatest / Math.max(Math.min(...diagonal), greatest * rounding) : 1 / rounding,
    inseparable: inseparableIn(diagonal, (j, k) => vectors.get(j, k)),
  };
}

/** Zero where its square would leave the range of doubles. */
function lengthOf(column: readonly number[]): number {
  const length = Math.hypot(...column);
  return length > 1e-150 ? length : 0;
}

/** Share of the greatest singular value that the rounding of the derivatives alone may leave. */
const rounding = 1e-10;

const isDetermined = (length: number, isLevel: readonly boolean[], vector: (k: number) => number) =>
  length > 0 && !isLevel.some((level, k) => level && Math.abs(vector(k)) > 1e-6);

/** Where two parameters are said to be one: Belsley, Kuh and Welsch. */
const strongIndex = 30;
const halfOfVariance = 0.5;

function inseparableIn(diagonal: readonly number[], vector: (j: number, k: number) => number): number[][] {
  const greatest = Math.max(...diagonal);
  const shareOf = (j: number, k: number) =>
    (vector(j, k) / Math.max(numberAt(diagonal, k), greatest * 1e-15)) ** 2;
  const groups = diagonal.map((mu, k) => {
    if (!(greatest >= strongIndex * mu)) return [];
    return diagonal
      .map((_, j) => j)
      .filter((j) => shareOf(j, k) > halfOfVariance * diagonal.reduce((sum, _, l) => sum + shareOf(j, l), 0));
  });
  return groups.filter((group) => group.length > 1);
}
