import type { Decimal } from 'decimal.js';
import { frozen } from '../../frozen.js';
import type { Protolyte } from '../../substance/protolyte.js';
import { prevailingAt } from '../model/charge-root.js';
import type { Coefficient } from '../model/exact-activity.js';
import { formsAt } from '../model/exact-charge-balance.js';
import { columnIn } from '../model/exact-column.js';
import { type Digits, type ExactConditions, writtenConditions } from '../model/exact-conditions.js';
import { exactMomentsOf, exactShiftOf } from '../model/exact-moments.js';
import { type ExactSolution, written } from '../model/exact-solution.js';
import { activityBetween, type PHBracket, strengthBetween } from '../model/ph-bracket.js';
import { provenBracketOf } from '../model/proven-bracket.js';
import { type ExactProblem, readExactProblem } from '../model/read-exact-problem.js';
import { certainDigits, withMoreDigits } from '../numbers/certain-digits.js';
import type { Interval } from '../numbers/interval-operations.js';
import { type ExactPH, exactPHOf } from './exact-ph.js';

/** One species, to the digits wanted. */
export interface ExactSpecies {
  readonly formula: string;
  readonly charge: number;
  /** The protolyte it is a form of; null for H+, OH- and the strong ions. */
  readonly protolyteId: string | null;
  /** Concentration, mol/L. */
  readonly molar: Decimal;
  /** Activity, mol/L. */
  readonly activity: Decimal;
  /** Its share of its protolyte; null where there is none. */
  readonly fraction: Decimal | null;
}

/** A solution at equilibrium, to the digits wanted. */
export interface ExactEquilibrium extends ExactPH {
  readonly solution: ExactSolution;
  readonly conditions: ExactConditions;
  /** ½ Σ c·z² over every ion, mol/L. */
  readonly ionicStrength: Decimal;
  /**
   * β = dC_base/dpH, mol/L per unit of pH, water's own share included, and what the base's cation (of charge +1) does
   * to γ.
   */
  readonly bufferCapacity: Decimal;
  readonly species: readonly ExactSpecies[];
}

/**
 * The equilibrium of a solution to any number of digits: `equilibrate` on decimals.
 *
 * Every quantity is evaluated on intervals over the whole bracket of `exactPH`, in ionic strength too, and is off by
 * less than one unit of its last digit from that of the state which the bracket proves.
 *
 * @param options - `digits` (of the pH after the point, of the rest in all), 50 by default and at most 500, and
 * conditions
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { reagents } from 'protolysis';
 * import { exactEquilibrium, makeSolution } from 'protolysis/exact';
 *
 * const soda = makeSolution({ contents: [{ reagent: reagents.sodiumHydrogenCarbonate, molar: '0.1' }] });
 * const { species } = exactEquilibrium(soda, { digits: 20 });
 * species.find(({ formula }) => formula === 'HCO3-')?.molar.toString(); // => '0.097989927628871125635'
 * ```
 */
export function exactEquilibrium(
  solution: ExactSolution,
  options: ExactConditions & Digits = {},
): ExactEquilibrium {
  return equilibriumOf(readExactProblem('exactEquilibrium', solution, options));
}

function equilibriumOf(problem: ExactProblem): ExactEquilibrium {
  const { system, column, digits } = problem;
  const quantities = withMoreDigits(digits + 5, Number.POSITIVE_INFINITY, (working) => {
    const bracket = provenBracketOf(system, column, working);
    const rest = quantitiesOf(problem, bracket, working + 40);
    return rest && { ...exactPHOf(system, column, bracket, digits), ...rest };
  }) as ExactPH & Quantities;
  return frozen({
    solution: written(problem.solution),
    conditions: writtenConditions(problem.conditions),
    ...quantities,
  });
}

type Quantities = Pick<ExactEquilibrium, 'ionicStrength' | 'bufferCapacity' | 'species'>;

/** Everything beside the pH, or undefined where the bracket is too wide for the digits. */
function quantitiesOf(
  { system, column: exact, digits }: ExactProblem,
  bracket: PHBracket,
  working: number,
): Quantities | undefined {
  const { arithmetic, constantsAt } = system.onIntervals(working);
  const { of, plus, minus, times, over, ofRatio, ln10 } = arithmetic;
  const column = columnIn(arithmetic, exact);
  const strength = strengthBetween(arithmetic, bracket);
  const { balance, gammas } = constantsAt(strength);
  const a = activityBetween(arithmetic, bracket);
  const forms = formsAt(arithmetic, balance, column, a, prevailingAt(system, a.low.toNumber()));

  const [hydrogen, hydroxide, ...ofGas] = forms.free.map(({ amount }) => over(amount, column.volume));
  const species = [
    ion('H+', 1, hydrogen as Interval, gammas?.hydrogen.gamma),
    ion('OH-', -1, hydroxide as Interval, gammas?.hydroxide.gamma),
  ];
  for (const [index, { total, shares }] of forms.families.entries()) {
    const molar = over(total, column.volume);
    const protolyte = system.protolytes[index] as Protolyte;
    const concentrations = shares.map((share) => times(molar, share));
    species.push(...formsOf(protolyte, concentrations, shares, gammas?.families[index]));
  }
  if (system.gas) {
    const all = ofGas.reduce(plus);
    const shares = ofGas.map((molar) => (all.high.gt(0) ? over(molar, all) : of(0)));
    species.push(...formsOf(system.gas, ofGas, shares, gammas?.gas));
  }
  for (const { ion: own, mmol } of system.ions[0] ?? [])
    species.push(ion(own.formula, own.charge, over(ofRatio(mmol), column.volume), gammas?.any(own).gamma));

  const total = species
    .map(({ charge, molar }) => times(of(charge * charge), molar))
    .reduce((sum, term) => plus(sum, term));
  const moments = exactMomentsOf(arithmetic, forms, gammas);
  const base = { net: of(1), strength: over(of(1), of(2)) };
  const shift = times(column.volume, exactShiftOf(arithmetic, moments, column.volume, base));
  const ionicStrength = certainDigits(over(total, of(2)), digits);
  const bufferCapacity = certainDigits(over(minus(of(0), ln10), shift), digits);
  const certain = species.map(({ molar, gamma, fraction, ...name }) => ({
    ...name,
    molar: certainDigits(molar, digits),
    activity: certainDigits(gamma === undefined ? molar : times(gamma, molar), digits),
    fraction: fraction && certainDigits(fraction, digits),
  }));
  if (ionicStrength === undefined || bufferCapacity === undefined || !certain.every(isCertain))
    return undefined;
  return { ionicStrength, bufferCapacity, species: certain };
}

interface OnIntervals {
  readonly formula: string;
  readonly charge: number;
  readonly protolyteId: string | null;
  readonly molar: Interval;
  /** Undefined where it is 1. */
  readonly gamma: Interval | undefined;
  readonly fraction: Interval | null;
}

const ion = (formula: string, charge: number, molar: Interval, gamma: Interval | undefined): OnIntervals => ({
  formula,
  charge,
  protolyteId: null,
  molar,
  gamma,
  fraction: null,
});

const formsOf = (
  { id, species }: Protolyte,
  molar: readonly Interval[],
  shares: readonly Interval[],
  gammas: readonly Coefficient<Interval>[] | undefined,
): OnIntervals[] =>
  species.map(({ formula, charge }, lost) => ({
    formula,
    charge,
    protolyteId: id,
    molar: molar[lost] as Interval,
    gamma: gammas?.[lost]?.gamma,
    fraction: shares[lost] as Interval,
  }));

const isCertain = (species: {
  readonly molar: Decimal | undefined;
  readonly activity: Decimal | undefined;
  readonly fraction: Decimal | null | undefined;
}): species is ExactSpecies =>
  [species.molar, species.activity, species.fraction].every((value) => value !== undefined);
