import type { Decimal } from 'decimal.js';
import { Faults } from '../errors.js';
import { type Bracket, bracketOf } from './bracket.js';
import type { ColumnOf } from './charge-balance.js';
import {
  conditionKeys,
  type Digits,
  type ExactConditions,
  readConditions,
  readDigits,
} from './conditions.js';
import { type Ratio, ratios, textOf } from './ratio.js';
import { decimalsToKeep } from './settled.js';
import { type ExactSolution, readExactSolution } from './solution.js';
import { systemOf } from './system.js';

/** A pH with its proof. */
export interface ExactPH {
  /** The middle of the bracket, to the digits wanted after the point. */
  readonly pH: Decimal;
  /** Here the net charge is certainly positive: the solution is less acid than that. */
  readonly lower: Decimal;
  /** Here it is certainly negative. */
  readonly upper: Decimal;
}

/**
 * The pH of a solution to any number of digits, with a bracket that proves it.
 *
 *   [H+] − Kw/[H+] + Σ z·c(strong ions) + Σᵢ Cᵢ·z̄ᵢ([H+]) = 0
 *
 * The left side rises with [H+], is positive at `lower` and negative at `upper`: both signs are certain, every rounding on the
 * way bounded. So the root lies between them, `upper − lower` is 2·10^−(digits + 3), and `pH` is off by less than one
 * unit of its last digit. What is proven is the root of this equation for the numbers given, not that nature obeys it: the
 * solution is taken as ideal, at 25 °C and closed to the air.
 *
 * @param options - `digits` after the point, 50 by default and at most 500, and conditions
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { reagents } from 'protolysis';
 * import { exactPH, makeSolution } from 'protolysis/exact';
 *
 * const vinegar = makeSolution({ contents: [{ reagent: reagents.aceticAcid, molar: '0.1' }] });
 * const { pH, lower, upper } = exactPH(vinegar, { digits: 30 });
 * pH.toString(); // => '2.880875748811671569329955045605'
 * upper.minus(lower).toString(); // => '2e-33'
 * ```
 */
export function exactPH(solution: ExactSolution, options: ExactConditions & Digits = {}): ExactPH {
  const faults = new Faults('exactPH');
  const read = readExactSolution(solution, 'solution', faults);
  const unread = faults.object(options, 'options', 'options { digits, pKw }', ['digits', ...conditionKeys]);
  const digits = readDigits(unread.digits, faults);
  const conditions = readConditions(unread, '', faults);
  faults.done();
  const system = systemOf([read], conditions);
  return pHOf(bracketOf(system, system.columns[0] as ColumnOf<Ratio>, digits), digits);
}

/** @internal */
export function pHOf({ lower, upper }: Bracket, digits: number): ExactPH {
  const Own = decimalsToKeep(digits);
  const middle = ratios.over(ratios.plus(lower, upper), ratios.of(2));
  return {
    pH: new Own(textOf(middle)).toDecimalPlaces(digits),
    lower: new Own(textOf(lower)),
    upper: new Own(textOf(upper)),
  };
}
