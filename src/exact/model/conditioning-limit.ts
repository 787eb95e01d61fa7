import { henryFit } from '../../equilibrium/carbon-dioxide.js';
import { gasConstant, zeroCelsius } from '../../equilibrium/temperature/kelvin.js';
import { referenceCelsius } from '../../equilibrium/temperature/pka-at.js';
import type { Protolyte, Step, TemperatureFit } from '../../substance/protolyte.js';
import { plainDoubles } from '../numbers/exact-arithmetic.js';
import { numberOf } from '../numbers/exactly.js';
import { prevailingAt } from './charge-root.js';
import { formsAt } from './exact-charge-balance.js';
import { columnIn } from './exact-column.js';
import { isReference, type ReadExactConditions } from './exact-conditions.js';
import { exactConstantsOf } from './exact-constants.js';
import { exactMomentsOf, exactShiftOf } from './exact-moments.js';
import type { PHBracket } from './ph-bracket.js';
import type { ExactProblem } from './read-exact-problem.js';

/** What a relative change of one number adds to net charge and ionic strength, in the column's unit of amount. */
interface Push {
  readonly net: number;
  readonly strength: number;
}

/**
 * The greatest effect on a pH of the last bit of every number that goes in, with the worst choice of signs
 * (`compareWithExact`).
 *
 * A number x that pushes net charge and ionic strength by ∂/∂ln x moves ln a by −M⁻¹ times the push.
 *
 * @internal
 */
export function conditioningLimit(
  { solution, system, column: exact, conditions }: ExactProblem,
  bracket: PHBracket,
): number {
  const pH = numberOf(bracket.lower);
  const a = 10 ** -pH;
  const ionicStrength = bracket.strength ? numberOf(bracket.strength.lower) : 0;
  const { balance, gammas } = exactConstantsOf(plainDoubles, system)(ionicStrength);
  const column = columnIn(plainDoubles, exact);
  const forms = formsAt(plainDoubles, balance, column, a, prevailingAt(system, a));
  const moments = exactMomentsOf(plainDoubles, forms, gammas);
  const moved = (size: number, { net, strength }: Push) =>
    Math.abs(size * exactShiftOf(plainDoubles, moments, column.volume, { net, strength }));
  const sizes = sizesIn(conditions);

  /** All forms of a protolyte: each step takes along the forms beyond it, each coefficient its own. */
  const ofForms = (pushes: readonly Push[], { steps }: Protolyte, own: readonly { gamma: number }[] = []) =>
    steps.reduce((sum, step, k) => sum + moved(sizes.ofStep(step), summed(pushes.slice(k + 1))), 0) +
    pushes.reduce((sum, push, j) => sum + moved(Math.abs(Math.log(own[j]?.gamma ?? 1)), push), 0);

  const free = forms.free.map(({ charge, amount }) => pushOf(amount, charge, charge * charge));
  const [hydrogen, hydroxide, ...ofGas] = free as [Push, Push, ...Push[]];
  const water = Math.abs(Math.log(gammas?.hydrogen.gamma ?? 1));
  let shift = moved(water, hydrogen) + moved(sizes.pKw + water, hydroxide);
  if (system.gas)
    shift += ofForms(ofGas, system.gas, gammas?.gas) + moved(1 + sizes.pKH, summed(ofGas.slice(1)));

  const means = new Map<string, { readonly charge: number; readonly square: number }>();
  for (const [i, { topCharge, total, shares }] of forms.families.entries()) {
    const protolyte = system.protolytes[i] as Protolyte;
    const { charge, square } = meansOf(topCharge, shares);
    means.set(protolyte.id, { charge, square });
    const pushes = shares.map((share, j) =>
      pushOf(total * share, topCharge - j - charge, (topCharge - j) ** 2 - square),
    );
    shift += ofForms(pushes, protolyte, gammas?.families[i]);
  }
  for (const { reagent, mmol } of solution.contents) {
    const parts = [
      ...reagent.ions.map(({ ion, count }) => pushOf(count, ion.charge, ion.charge ** 2)),
      ...reagent.protolytes.map(({ protolyte, count }) => {
        const { charge = 0, square = 0 } = means.get(protolyte.id) ?? {};
        return pushOf(count, charge, square);
      }),
    ];
    shift += moved(numberOf(mmol), summed(parts));
  }
  return (2 ** -52 * shift) / Math.LN10 + 2.3e-16 * Math.max(1, Math.abs(pH));
}

/** The mean charge of a protolyte's forms, and the mean of its square. */
function meansOf(topCharge: number, shares: readonly number[]): { charge: number; square: number } {
  const mean = (power: 1 | 2) => shares.reduce((sum, share, j) => sum + share * (topCharge - j) ** power, 0);
  return { charge: mean(1), square: mean(2) };
}

const pushOf = (amount: number, charge: number, square: number): Push => ({
  net: amount * charge,
  strength: (amount * square) / 2,
});

const summed = (pushes: readonly Push[]): Push => ({
  net: pushes.reduce((sum, { net }) => sum + net, 0),
  strength: pushes.reduce((sum, { strength }) => sum + strength, 0),
});

/**
 * Natural logarithms of constants, or the sum of the terms that they are worked out from: what a last bit is a part of.
 */
function sizesIn(conditions: ReadExactConditions) {
  const { inUse, gas } = conditions;
  const kelvin = inUse.celsius + zeroCelsius;
  const atReference = isReference(conditions);
  const ofFit = ({ coefficients: [a, b, c, d, e] }: TemperatureFit) =>
    Math.LN10 *
    [a, b * kelvin, c / kelvin, d * Math.log10(kelvin), e / kelvin ** 2].reduce(
      (sum, term) => sum + Math.abs(term),
      0,
    );
  const theta = referenceCelsius + zeroCelsius;
  return {
    /** The largest term of the release's equation, γ₁/T, all but cancels another. */
    pKw: Math.LN10 * (conditions.pKw ? inUse.pKw : (2 * 48251.33) / kelvin),
    pKH: gas?.pKH ? Math.LN10 * Math.abs(numberOf(gas.pKH)) : ofFit(henryFit),
    ofStep({ pKa, dH = 0, dCp = 0, log10K }: Step): number {
      const given = Math.max(Math.abs(pKa) * Math.LN10, 1);
      if (atReference) return given;
      if (log10K) return given + ofFit(log10K);
      return given + Math.abs(1000 * dH) / (gasConstant * theta) + Math.abs(dCp) / gasConstant;
    },
  };
}
