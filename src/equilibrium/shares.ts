import type { Arithmetic } from '../solver/arithmetic.js';

/**
 * The share of each species of a protolyte, from most to least protonated.
 *
 *   α_j = t_j / Σ t,   t_m = 1,   t_(j−1) = t_j · h/K_j,   t_(j+1) = t_j · K_(j+1)/h
 *
 * In doubles m must be the prevailing species, so that no term overflows within protolyteLimits and the small ones keep
 * their relative precision; otherwise any m will do.
 *
 * @param constants - stepwise acidity constants, most protonated first
 * @internal
 */
export function sharesOf<N>(
  { of, plus, times, over }: Arithmetic<N>,
  constants: ArrayLike<N>,
  h: N,
  m: number,
): N[] {
  const terms = new Array<N>(constants.length + 1).fill(of(1));
  for (let j = m; j > 0; j -= 1) terms[j - 1] = times(terms[j] as N, over(h, constants[j - 1] as N));
  for (let j = m; j < constants.length; j += 1)
    terms[j + 1] = times(terms[j] as N, over(constants[j] as N, h));
  const total = terms.reduce((sum, term) => plus(sum, term));
  return terms.map((term) => over(term, total));
}
