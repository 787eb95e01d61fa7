import { sharesOf } from '../equilibrium/shares.js';
import type { Arithmetic } from '../solver/arithmetic.js';

/** Constants of a charge balance in any kind of number. @internal */
export interface BalanceOf<N> {
  readonly kw: N;
  readonly families: readonly { readonly topCharge: number; readonly constants: readonly N[] }[];
}

/** Amounts that enter it, in any one unit of amount, and its volume. @internal */
export interface ColumnOf<N> {
  readonly volume: N;
  /** Net charge of the strong ions. */
  readonly charge: N;
  readonly amounts: readonly N[];
}

/**
 * Net charge at a hydrogen-ion concentration h and its derivative with respect to ln h, in any kind of number.
 *
 *   F(h) = V·(h − Kw/h) + Q + Σ nᵢ·Σ_j α_ij·z_ij,   dF/d ln h = V·(h + Kw/h) + Σ nᵢ·Σ_j α_ij·(j − λᵢ)²,   λ = Σ_j α_j·j
 *
 * Its twin in tuned doubles is `chargeAt` of equilibrium/charge-balance.ts; a test holds the two together.
 *
 * @internal
 */
export function chargeAt<N>(
  arithmetic: Arithmetic<N>,
  { kw, families }: BalanceOf<N>,
  { volume, charge, amounts }: ColumnOf<N>,
  h: N,
): { net: N; slope: N } {
  const { of, plus, minus, times, over } = arithmetic;
  const hydroxide = over(kw, h);
  let net = plus(times(volume, minus(h, hydroxide)), charge);
  let slope = times(volume, plus(h, hydroxide));
  for (const [i, { topCharge, constants }] of families.entries()) {
    const shares = sharesOf(arithmetic, constants, h, 0);
    const total = (terms: readonly N[]) => terms.reduce((sum, term) => plus(sum, term));
    const lost = total(shares.map((share, j) => times(of(j), share)));
    const spread = shares.map((share, j) => {
      const apart = minus(of(j), lost);
      return times(share, times(apart, apart));
    });
    const amount = amounts[i] as N;
    net = plus(net, times(amount, minus(of(topCharge), lost)));
    slope = plus(slope, times(amount, total(spread)));
  }
  return { net, slope };
}
