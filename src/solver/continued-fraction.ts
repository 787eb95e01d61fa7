/**
 * The value of a continued fraction whose terms are positive or settle down quickly,
 *
 *   a₁/(b₁ + a₂/(b₂ + a₃/(b₃ + …)))
 *
 * by the modified method of Lentz.
 *
 * Ends        when a term changes the value by no more than its rounding, or after `mostTerms`.
 * Source      I. J. Thompson, A. R. Barnett, J. Comput. Phys. 64, 490–509 (1986), doi:10.1016/0021-9991(86)90046-X
 *
 * @param term - the pair aₖ, bₖ for k = 1, 2, …
 * @internal
 */
export function continuedFraction(term: (k: number) => { readonly a: number; readonly b: number }): number {
  let value = tiny;
  let [above, below] = [tiny, 0];
  for (let k = 1; k <= mostTerms; k += 1) {
    const { a, b } = term(k);
    above = notZero(b + a / above);
    below = 1 / notZero(b + a * below);
    value *= above * below;
    if (Math.abs(above * below - 1) < Number.EPSILON) break;
  }
  return value;
}

const tiny = 1e-300;
const mostTerms = 10_000;

const notZero = (x: number): number => (x === 0 ? tiny : x);
