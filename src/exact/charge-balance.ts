import { sharesOf } from '../equilibrium/shares.js';
import type { Protolyte } from '../substance/protolyte.js';
import type { Coefficient, CoefficientOf } from './activity.js';
import type { Rendering } from './rendering.js';

/** Constants of a charge balance in any kind of number: between concentrations and the activity a of H+. @internal */
export interface BalanceOf<N> {
  /** [H+]/a. */
  readonly hydrogen: N;
  /** a·[OH-]. */
  readonly kw: N;
  readonly families: readonly { readonly topCharge: number; readonly constants: readonly N[] }[];
  /** Of a gas at fixed pressure: a^j times the concentration of its form that lost j protons; none where there is none. */
  readonly gas: readonly N[];
}

/** Amounts that enter it, in any one unit of amount, and its volume. @internal */
export interface ColumnOf<N> {
  readonly volume: N;
  /** Net charge of the strong ions. */
  readonly charge: N;
  /** Σ z²·n over the strong ions. */
  readonly squares: N;
  readonly amounts: readonly N[];
}

/** Coefficients of all species at one ionic strength. @internal */
export interface CoefficientsOf<N> {
  readonly hydrogen: Coefficient<N>;
  readonly hydroxide: Coefficient<N>;
  readonly families: readonly (readonly Coefficient<N>[])[];
  readonly gas: readonly Coefficient<N>[];
  /** Of any other ion. */
  readonly any: CoefficientOf<N>;
}

/** @internal */
export function coefficientsOfAll<N>(
  coefficientOf: CoefficientOf<N>,
  { protolytes, gas }: { readonly protolytes: readonly Protolyte[]; readonly gas: Protolyte | null },
): CoefficientsOf<N> {
  const ofForms = ({ species }: Protolyte) =>
    species.map(({ charge, formula }) => coefficientOf(charge, formula));
  return {
    hydrogen: coefficientOf(1, 'H+'),
    hydroxide: coefficientOf(-1, 'OH-'),
    families: protolytes.map(ofForms),
    gas: gas ? ofForms(gas) : [],
    any: coefficientOf,
  };
}

/** The constants that hold where the coefficients do: K_j·γ_(j−1)/γ_j, Kw/γ, c₀β_j/γ_j, 1/γ of H+. @internal */
export const conditional = <N>(
  { times, over }: Rendering<N>,
  { hydrogen, kw, families, gas }: BalanceOf<N>,
  gammas: CoefficientsOf<N>,
): BalanceOf<N> => ({
  hydrogen: over(hydrogen, gammas.hydrogen.gamma),
  kw: over(kw, gammas.hydroxide.gamma),
  families: families.map(({ topCharge, constants }, i) => {
    const own = gammas.families[i] as readonly Coefficient<N>[];
    const gamma = (lost: number) => (own[lost] as Coefficient<N>).gamma;
    return {
      topCharge,
      constants: constants.map((K, j) => times(K, over(gamma(j), gamma(j + 1)))),
    };
  }),
  gas: gas.map((level, j) => over(level, (gammas.gas[j] as Coefficient<N>).gamma)),
});

/** Constants and coefficients at one ionic strength; no coefficients where γ = 1 throughout. @internal */
export interface Constants<N> {
  readonly balance: BalanceOf<N>;
  readonly gammas: CoefficientsOf<N> | null;
}

/** All species at an activity of H+. @internal */
export interface Forms<N> {
  /** Amounts of H+, OH- and the gas with its ions. */
  readonly free: readonly { readonly charge: number; readonly amount: N }[];
  /** Shares of each protolyte's species, from most to least protonated. */
  readonly families: readonly {
    readonly topCharge: number;
    readonly total: N;
    readonly shares: readonly N[];
  }[];
}

/**
 * @param prevailing - how many protons each protolyte's prevailing species has lost at about this activity; any number will do, but
 * with this the intervals stay narrow
 * @internal
 */
export function formsAt<N>(
  arithmetic: Rendering<N>,
  { hydrogen, kw, families, gas }: BalanceOf<N>,
  { volume, amounts }: ColumnOf<N>,
  a: N,
  prevailing: readonly number[],
): Forms<N> {
  const { times, over } = arithmetic;
  let power = volume;
  const ofGas = gas.map((level, j) => {
    if (j > 0) power = over(power, a);
    return { charge: -j, amount: times(level, power) };
  });
  return {
    free: [
      { charge: 1, amount: times(volume, times(hydrogen, a)) },
      { charge: -1, amount: times(volume, over(kw, a)) },
      ...ofGas,
    ],
    families: families.map(({ topCharge, constants }, i) => ({
      topCharge,
      total: amounts[i] as N,
      shares: sharesOf(arithmetic, constants, a, prevailing[i] as number),
    })),
  };
}

/**
 * Net charge and ionic strength, in the column's unit of amount.
 *
 *   net = Q + Σ n·z + Σ nᵢ·Σ_j α_ij·z_ij,   strength = ½·(Σ z²·n of everything)
 *
 * The twin of net in tuned doubles is `chargeAt` of equilibrium/charge-balance.ts; a test holds the two together.
 *
 * @internal
 */
export const netOf = <N>(arithmetic: Rendering<N>, column: ColumnOf<N>, forms: Forms<N>): N =>
  arithmetic.plus(
    column.charge,
    summed(arithmetic, forms, (z) => z),
  );

/** @internal */
export const strengthOf = <N>(arithmetic: Rendering<N>, column: ColumnOf<N>, forms: Forms<N>): N =>
  arithmetic.over(
    arithmetic.plus(
      column.squares,
      summed(arithmetic, forms, (z) => z * z),
    ),
    arithmetic.of(2),
  );

function summed<N>(
  { of, plus, times }: Rendering<N>,
  { free, families }: Forms<N>,
  weight: (charge: number) => number,
): N {
  const parts = free.map(({ charge, amount }) => times(of(weight(charge)), amount));
  const ofFamilies = families.map(({ topCharge, total, shares }) =>
    times(total, shares.map((share, j) => times(of(weight(topCharge - j)), share)).reduce(plus)),
  );
  return [...parts, ...ofFamilies].reduce(plus);
}

/** The second moments of equilibrium/activity/moments.ts, which is their twin in tuned doubles. @internal */
export interface MomentsOf<N> {
  readonly zz: N;
  readonly zs: N;
  readonly zl: N;
  readonly sl: N;
}

/**
 * ⟨z, z⟩, ⟨z², z⟩, ⟨z, ℓ′⟩ and ⟨z², ℓ′⟩, with ⟨x, y⟩ = Σ n·x·y for free species and n·cov(x, y) within a protolyte.
 *
 * @param gammas - null where γ = 1 throughout, so that ℓ′ = 0
 * @internal
 */
export function momentsOf<N>(
  { of, plus, minus, times }: Rendering<N>,
  { free, families }: Forms<N>,
  gammas: CoefficientsOf<N> | null,
): MomentsOf<N> {
  const zero = of(0);
  let [zz, zs, zl, sl] = [zero, zero, zero, zero];
  const add = (weight: N, z: N, s: N, l: N | undefined) => {
    zz = plus(zz, times(weight, times(z, z)));
    zs = plus(zs, times(weight, times(s, z)));
    if (l === undefined) return;
    zl = plus(zl, times(weight, times(z, l)));
    sl = plus(sl, times(weight, times(s, l)));
  };
  const freeSlopes = gammas && [gammas.hydrogen, gammas.hydroxide, ...gammas.gas];
  for (const [k, { charge, amount }] of free.entries())
    add(amount, of(charge), of(charge * charge), freeSlopes?.[k]?.slope);
  for (const [i, { topCharge, total, shares }] of families.entries()) {
    const mean = (power: 1 | 2) =>
      shares.map((share, j) => times(of((topCharge - j) ** power), share)).reduce(plus);
    const [meanZ, meanS] = [mean(1), mean(2)];
    for (const [j, share] of shares.entries()) {
      const z = topCharge - j;
      const away = { z: minus(of(z), meanZ), s: minus(of(z * z), meanS) };
      add(times(total, share), away.z, away.s, gammas?.families[i]?.[j]?.slope);
    }
  }
  return { zz, zs, zl, sl };
}

/**
 * How ln a answers where something adds `net` and `strength` to (net, strength − I·V) = 0: −M⁻¹ of equilibrium/point.ts (1).
 *
 * @internal
 */
export function shiftOf<N>(
  { of, plus, minus, times, over, ln10 }: Rendering<N>,
  { zz, zs, zl, sl }: MomentsOf<N>,
  volume: N,
  { net, strength }: { readonly net: N; readonly strength: N },
): N {
  const half = over(ln10, of(2));
  const netOfI = times(ln10, zl); //                          −∂net/∂I
  const strengthOfI = plus(times(half, sl), volume); //       −∂(strength − I·V)/∂I
  const determinant = minus(times(zz, strengthOfI), times(half, times(zl, zs))); // −det M
  return over(minus(times(strength, netOfI), times(net, strengthOfI)), determinant);
}
