import type { Decimal } from 'decimal.js';
import { sharesOf } from '../equilibrium/shares.js';
import { Faults } from '../errors.js';
import { type Bracket, bracketOf, hBetween } from './bracket.js';
import { type ColumnOf, chargeAt } from './charge-balance.js';
import {
  conditionKeys,
  type Digits,
  type ExactConditions,
  readConditions,
  readDigits,
  writtenConditions,
} from './conditions.js';
import { type ExactPH, pHOf } from './exact-ph.js';
import { type Interval, type Intervals, intervals } from './intervals.js';
import type { Ratio } from './ratio.js';
import { refined, settledTo } from './settled.js';
import { type ExactSolution, readExactSolution, written } from './solution.js';
import { balanceIn, columnIn, type System, systemOf } from './system.js';

/** One species, to the digits wanted. */
export interface ExactSpecies {
  readonly formula: string;
  readonly charge: number;
  /** The protolyte it is a form of; null for H+, OH- and the strong ions. */
  readonly protolyteId: string | null;
  /** Concentration, mol/L. */
  readonly molar: Decimal;
  /** Its share of its protolyte; null where there is none. */
  readonly fraction: Decimal | null;
}

/** A solution at equilibrium, to the digits wanted. */
export interface ExactEquilibrium extends ExactPH {
  readonly solution: ExactSolution;
  readonly conditions: ExactConditions;
  /** ½ Σ c·z² over every ion, mol/L. */
  readonly ionicStrength: Decimal;
  /** β = dC_base/dpH, mol/L per unit of pH, water's own share included. */
  readonly bufferCapacity: Decimal;
  readonly species: readonly ExactSpecies[];
}

/**
 * The equilibrium of a solution to any number of digits: `equilibrate` on decimals.
 *
 * Every quantity is evaluated on intervals over the whole bracket of `exactPH`, and is off by less than one unit of its last
 * digit.
 *
 * @param options - `digits` (of the pH after the point, of the rest in all), 50 by default and at most 500, and conditions
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
  const faults = new Faults('exactEquilibrium');
  const read = readExactSolution(solution, 'solution', faults);
  const unread = faults.object(options, 'options', 'options { digits, pKw }', ['digits', ...conditionKeys]);
  const digits = readDigits(unread.digits, faults);
  const conditions = readConditions(unread, '', faults);
  faults.done();

  const system = systemOf([read], conditions);
  const column = system.columns[0] as ColumnOf<Ratio>;
  const quantities = refined(digits + 5, Number.POSITIVE_INFINITY, (working) => {
    const bracket = bracketOf(system, column, working);
    const rest = quantitiesOf(system, bracket, intervals(working + 40), digits);
    return rest && { ...pHOf(bracket, digits), ...rest };
  }) as ExactPH & Quantities;
  return {
    solution: written(read),
    conditions: writtenConditions(conditions),
    ...quantities,
  };
}

type Quantities = Pick<ExactEquilibrium, 'ionicStrength' | 'bufferCapacity' | 'species'>;

/** Everything beside the pH, or undefined where the bracket is too wide for the digits. */
function quantitiesOf(
  system: System,
  bracket: Bracket,
  arithmetic: Intervals,
  digits: number,
): Quantities | undefined {
  const { of, plus, times, over, ofRatio, ln10 } = arithmetic;
  const column = columnIn(arithmetic, system.columns[0] as ColumnOf<Ratio>);
  const balance = balanceIn(arithmetic, system);
  const h = hBetween(bracket, arithmetic);

  const species = [ion('H+', 1, h), ion('OH-', -1, over(balance.kw, h))];
  for (const [index, protolyte] of system.protolytes.entries()) {
    const total = over(column.amounts[index] as Interval, column.volume);
    const constants = balance.families[index]?.constants ?? [];
    for (const [lost, fraction] of sharesOf(arithmetic, constants, h, 0).entries()) {
      const { formula, charge } = protolyte.species[lost] as (typeof protolyte.species)[number];
      species.push({ formula, charge, protolyteId: protolyte.id, molar: times(total, fraction), fraction });
    }
  }
  for (const { ion: own, mmol } of system.ions[0] ?? [])
    species.push(ion(own.formula, own.charge, over(ofRatio(mmol), column.volume)));

  const strength = species
    .map(({ charge, molar }) => times(of(charge * charge), molar))
    .reduce((sum, term) => plus(sum, term));
  const { slope } = chargeAt(arithmetic, balance, column, h);
  const ionicStrength = settledTo(over(strength, of(2)), digits);
  const bufferCapacity = settledTo(over(times(ln10, slope), column.volume), digits);
  const settled = species.map(({ molar, fraction, ...name }) => ({
    ...name,
    molar: settledTo(molar, digits),
    fraction: fraction && settledTo(fraction, digits),
  }));
  if (ionicStrength === undefined || bufferCapacity === undefined || !settled.every(isSettled))
    return undefined;
  return { ionicStrength, bufferCapacity, species: settled };
}

interface OnIntervals {
  readonly formula: string;
  readonly charge: number;
  readonly protolyteId: string | null;
  readonly molar: Interval;
  readonly fraction: Interval | null;
}

const ion = (formula: string, charge: number, molar: Interval): OnIntervals => ({
  formula,
  charge,
  protolyteId: null,
  molar,
  fraction: null,
});

const isSettled = (
  species: Omit<ExactSpecies, 'molar' | 'fraction'> & {
    readonly molar: Decimal | undefined;
    readonly fraction: Decimal | null | undefined;
  },
): species is ExactSpecies => species.molar !== undefined && species.fraction !== undefined;
