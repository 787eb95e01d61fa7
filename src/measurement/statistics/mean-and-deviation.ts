import { sum } from '../../solver/sum.js';

/** A mean, and the standard deviation of one value about it. @internal */
export interface MeanAndDeviation {
  readonly mean: number;
  readonly s: number;
}

/**
 * In two passes, about a value among them and then about the mean: values that differ in their last digits alone keep them
 * (T. F. Chan, G. H. Golub, R. J. LeVeque, Am. Stat. 37, 242–247 (1983), doi:10.1080/00031305.1983.10483115).
 *
 * @internal
 */
export function meanAndDeviation(values: ArrayLike<number>, about: number): MeanAndDeviation {
  const n = values.length;
  const offset = sum(Array.from(values, (x) => x - about)) / n;
  const squares = sum(Array.from(values, (x) => (x - about - offset) ** 2));
  return { mean: about + offset, s: Math.sqrt(squares / (n - 1)) };
}
