import type { ExactArithmetic } from '../numbers/exact-arithmetic.js';
import type { Coefficient } from './exact-activity.js';
import type { CoefficientsOf, Forms } from './exact-charge-balance.js';

/** The second moments of equilibrium/activity/ion-moments.ts, which is their twin in tuned doubles. @internal */
export interface ExactMoments<N> {
  readonly zz: N;
  readonly zs: N;
  readonly zl: N;
  readonly sl: N;
}

/**
 * ⟨z, z⟩, ⟨z², z⟩, ⟨z, ℓ′⟩ and ⟨z², ℓ′⟩, with ⟨x, y⟩ = Σ n·x·y for free species and n·cov(x, y) within a protolyte.
 *
 *   cov(x, y) = Σ_(j<k) α_j·α_k·(x_j − x_k)·(y_j − y_k),   in which nothing cancels where x and y run alike
 *
 * @param gammas - null where γ = 1 throughout, so that ℓ′ = 0
 * @internal
 */
export function exactMomentsOf<N>(
  { of, plus, minus, times }: ExactArithmetic<N>,
  { free, families }: Forms<N>,
  gammas: CoefficientsOf<N> | null,
): ExactMoments<N> {
  const zero = of(0);
  let [zz, zs, zl, sl] = [zero, zero, zero, zero];
  const add = (weight: N, z: number, s: number, slope: N | null) => {
    zz = plus(zz, times(of(z * z), weight));
    zs = plus(zs, times(of(s * z), weight));
    if (slope === null) return;
    const ofSlope = times(weight, slope);
    zl = plus(zl, times(of(z), ofSlope));
    sl = plus(sl, times(of(s), ofSlope));
  };
  const freeSlopes = gammas && [gammas.hydrogen, gammas.hydroxide, ...gammas.gas];
  for (const [k, { charge, amount }] of free.entries())
    add(amount, charge, charge * charge, freeSlopes && (freeSlopes[k] as Coefficient<N>).slope);
  for (const [i, { topCharge, total, shares }] of families.entries()) {
    const coefficients = gammas && (gammas.families[i] as readonly Coefficient<N>[]);
    const gap = (j: number, k: number) =>
      coefficients &&
      minus((coefficients[j] as Coefficient<N>).slope, (coefficients[k] as Coefficient<N>).slope);
    for (const [k, share] of shares.entries())
      for (let j = 0; j < k; j += 1) {
        const weight = times(total, times(share, shares[j] as N));
        const squares = (topCharge - j) ** 2 - (topCharge - k) ** 2;
        add(weight, k - j, squares, gap(j, k));
      }
  }
  return { zz, zs, zl, sl };
}

/**
 * The change of ln a where `net` and `strength` are added to (net, strength − I·V) = 0: −M⁻¹ of
 * equilibrium/activity/compensating-change.ts.
 *
 * @internal
 */
export function exactShiftOf<N>(
  { of, plus, minus, times, over, ln10 }: ExactArithmetic<N>,
  { zz, zs, zl, sl }: ExactMoments<N>,
  volume: N,
  { net, strength }: { readonly net: N; readonly strength: N },
): N {
  const half = over(ln10, of(2));
  const netOfI = times(ln10, zl); //                          −∂net/∂I
  const strengthOfI = plus(times(half, sl), volume); //       −∂(strength − I·V)/∂I
  const determinant = minus(times(zz, strengthOfI), times(half, times(zl, zs))); // −det M
  return over(minus(times(strength, netOfI), times(net, strengthOfI)), determinant);
}
