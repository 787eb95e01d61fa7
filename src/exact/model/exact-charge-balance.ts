import { sharesOf } from '../../equilibrium/shares.js';
import { numberAt } from '../../solver/number-at.js';
import type { Protolyte } from '../../substance/protolyte.js';
import type { ExactArithmetic } from '../numbers/exact-arithmetic.js';
import type { ActivityAt, Charged, Coefficient } from './exact-activity.js';

/** Constants of a charge balance in any kind of number: between concentrations and the activity a of H+. @internal */
export interface BalanceOf<N> {
  /** [H+]/a. */
  readonly hydrogen: N;
  /** a·[OH-]. */
  readonly kw: N;
  readonly families: readonly { readonly topCharge: number; readonly constants: readonly N[] }[];
  /**
   * Of a gas at fixed pressure: a^j times the concentration of its form that lost j protons; none where there is none.
   */
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
  readonly any: ActivityAt<N>['of'];
}

/**
 * Conditional constants, from those at zero ionic strength and the coefficients: K_j·γ_(j−1)/γ_j, Kw/γ, c₀β_j/γ_j.
 *
 * @internal
 */
export function conditional<N>(
  { times, over }: ExactArithmetic<N>,
  { hydrogen, kw, families, gas }: BalanceOf<N>,
  activity: ActivityAt<N>,
  system: { readonly protolytes: readonly Protolyte[]; readonly gas: Protolyte | null },
): Constants<N> {
  const ofForms = ({ species }: Protolyte) => species.map(activity.of);
  const gammas = {
    hydrogen: activity.of({ charge: 1, formula: 'H+' }),
    hydroxide: activity.of({ charge: -1, formula: 'OH-' }),
    families: system.protolytes.map(ofForms),
    gas: system.gas ? ofForms(system.gas) : [],
    any: activity.of,
  };
  const balance = {
    hydrogen: over(hydrogen, gammas.hydrogen.gamma),
    kw: over(kw, gammas.hydroxide.gamma),
    families: families.map(({ topCharge, constants }, i) => {
      const species = system.protolytes[i]?.species as Protolyte['species'];
      const ratio = (j: number) => activity.ratio(species[j] as Charged, species[j + 1] as Charged);
      return { topCharge, constants: constants.map((K, j) => times(K, ratio(j))) };
    }),
    gas: gas.map((level, j) => over(level, (gammas.gas[j] as Coefficient<N>).gamma)),
  };
  return { balance, gammas };
}

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
    readonly prevailing: number;
  }[];
}

/**
 * The amounts of all species at an activity of H+.
 *
 * @param prevailing - how many protons each protolyte's prevailing species has lost at about this activity; any number
 * will do, but with this intervals stay narrow
 * @param narrow - works out each share from itself, at more cost: for constants that are wide intervals
 * @internal
 */
export function formsAt<N>(
  arithmetic: ExactArithmetic<N>,
  { hydrogen, kw, families, gas }: BalanceOf<N>,
  { volume, amounts }: ColumnOf<N>,
  a: N,
  prevailing: readonly number[],
  narrow = false,
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
    families: families.map(({ topCharge, constants }, i) => {
      const most = numberAt(prevailing, i);
      const sharesFrom = (m: number) => sharesOf(arithmetic, constants, a, m);
      const shares = narrow ? [1, ...constants].map((_, j) => sharesFrom(j)[j] as N) : sharesFrom(most);
      return { topCharge, total: amounts[i] as N, shares, prevailing: most };
    }),
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
export const netOf = <N>(arithmetic: ExactArithmetic<N>, column: ColumnOf<N>, forms: Forms<N>): N =>
  arithmetic.plus(
    column.charge,
    summed(arithmetic, forms, (z) => z),
  );

/** The ionic strength of the same. @internal */
export const strengthOf = <N>(arithmetic: ExactArithmetic<N>, column: ColumnOf<N>, forms: Forms<N>): N =>
  arithmetic.over(
    arithmetic.plus(
      column.squares,
      summed(arithmetic, forms, (z) => z * z),
    ),
    arithmetic.of(2),
  );

function summed<N>(
  arithmetic: ExactArithmetic<N>,
  { free, families }: Forms<N>,
  weight: (charge: number) => number,
): N {
  const { of, plus, times } = arithmetic;
  const parts = free.map(({ charge, amount }) => times(of(weight(charge)), amount));
  const ofFamilies = families.map(({ total, ...family }) => times(total, meanOf(arithmetic, family, weight)));
  return [...parts, ...ofFamilies].reduce(plus);
}

/**
 * The mean of a function of charge over the species of a protolyte, from that of the prevailing one: shares add up to
 * one.
 */
function meanOf<N>(
  { of, plus, times }: ExactArithmetic<N>,
  { topCharge, shares, prevailing }: Omit<Forms<N>['families'][number], 'total'>,
  weight: (charge: number) => number,
): N {
  const most = weight(topCharge - prevailing);
  return shares.map((share, j) => times(of(weight(topCharge - j) - most), share)).reduce(plus, of(most));
}
