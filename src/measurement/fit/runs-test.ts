import { numberAt } from '../../solver/number-at.js';

/** Whether residuals change sign as often as chance would have it. */
export interface RunsTest {
  /** Stretches of residuals of one sign. */
  readonly runs: number;
  /** As chance would have it, on average. */
  readonly expected: number;
  /** Of so few runs or fewer, by chance; below 0.05 the model is likely to miss something. */
  readonly probability: number;
}

/**
 * The runs test on the signs of residuals, exact: of n₁ positive and n₂ negative ones in random order,
 *
 *   P(2k runs) = 2·C(n₁−1, k−1)·C(n₂−1, k−1)/C(n, n₁)
 *   P(2k + 1)  = [C(n₁−1, k)·C(n₂−1, k−1) + C(n₁−1, k−1)·C(n₂−1, k)]/C(n, n₁)
 *
 * Residuals of zero are left out. With one sign alone there is nothing to judge: one run, of probability 1.
 *
 * A. Wald, J. Wolfowitz, Ann. Math. Statist. 11, 147–162 (1940), doi:10.1214/aoms/1177731909.
 *
 * @internal
 */
export function runsTest(residuals: ArrayLike<number>): RunsTest {
  const signs = Array.from(residuals, Math.sign).filter((sign) => sign !== 0);
  const above = signs.filter((sign) => sign > 0).length;
  const below = signs.length - above;
  const runs = signs.filter((sign, k) => sign !== signs[k - 1]).length;
  if (above === 0 || below === 0) return { runs, expected: runs, probability: 1 };
  const choose = logChoose(signs.length);
  const all = choose(signs.length, above);
  const ways = (k: number, l: number) => Math.exp(choose(above - 1, k) + choose(below - 1, l) - all);
  let probability = 0;
  for (let count = 2; count <= runs; count += 1) {
    const k = Math.floor(count / 2);
    probability += count % 2 === 0 ? 2 * ways(k - 1, k - 1) : ways(k, k - 1) + ways(k - 1, k);
  }
  return { runs, expected: 1 + (2 * above * below) / signs.length, probability: Math.min(probability, 1) };
}

/** ln C(n, k) for n up to `most`; −∞ where k is none of 0 to n. */
function logChoose(most: number): (n: number, k: number) => number {
  const logFactorials = [0];
  for (let n = 1; n <= most; n += 1) logFactorials.push(numberAt(logFactorials, n - 1) + Math.log(n));
  return (n, k) =>
    k < 0 || k > n
      ? Number.NEGATIVE_INFINITY
      : numberAt(logFactorials, n) - numberAt(logFactorials, k) - numberAt(logFactorials, n - k);
}
