import type { Decimal } from 'decimal.js';
import { frozen } from '../../frozen.js';
import type { ColumnOf } from '../model/exact-charge-balance.js';
import type { Digits, ExactConditions } from '../model/exact-conditions.js';
import type { ExactSolution } from '../model/exact-solution.js';
import type { ExactSystem } from '../model/exact-system.js';
import { isLeastStrength } from '../model/is-least-strength.js';
import type { PHBracket } from '../model/ph-bracket.js';
import { provenBracketOf } from '../model/proven-bracket.js';
import { readExactProblem } from '../model/read-exact-problem.js';
import { decimalsToKeep } from '../numbers/certain-digits.js';
import { type Ratio, ratios, textOf } from '../numbers/ratio.js';

/** A pH with its proof. */
export interface ExactPH {
  /** The middle of the bracket, to the digits wanted after the point. */
  readonly pH: Decimal;
  /** Here the net charge is certainly positive: the solution is less acid than that. */
  readonly lower: Decimal;
  /** Here it is certainly negative. */
  readonly upper: Decimal;
  /**
   * What is proven beside that the equations have a solution between the two. `only`: there is no other anywhere, always so
   * where γ = 1. `least`: no other has as low an ionic strength. `some`: nothing more.
   */
  readonly proven: 'only' | 'least' | 'some';
}

/**
 * The pH of a solution to any number of digits, with a bracket that proves it.
 *
 *   [H+] − Kw/[H+] + Σ z·c(strong ions) + Σᵢ Cᵢ·z̄ᵢ([H+]) = 0
 *
 * The left side rises with [H+], is positive at `lower` and negative at `upper`: both signs are certain, every rounding
 * on the way bounded. So the root lies between them, `upper − lower` is 2·10^−(digits + 3), and `pH` is off by less
 * than one unit of its last digit. What is proven is the root of this equation for the numbers given, not that nature
 * obeys it.
 *
 * With a law of activity the ionic strength is an unknown too. Then the bracket proves that there is a self-consistent
 * pair of pH and ionic strength with this pH; that it is the one of least ionic strength, which `pHOf` takes, is proven
 * where `proven` is `least`, and left open where it is `some`.
 *
 * @param options - `digits` after the point, 50 by default and at most 500, and conditions
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { reagents } from 'protolysis';
 * import { davies, exactPH, makeSolution } from 'protolysis/exact';
 *
 * const vinegar = makeSolution({ contents: [{ reagent: reagents.aceticAcid, molar: '0.1' }] });
 * const { pH, lower, upper } = exactPH(vinegar, { digits: 30 });
 * pH.toString(); // => '2.880875748811671569329955045605'
 * upper.minus(lower).toString(); // => '2e-33'
 *
 * const real = exactPH(vinegar, { digits: 30, activity: davies, celsius: 20 });
 * real.pH.toString(); // => '2.880917536946196823378672499816'
 * real.proven; // => 'least'
 * ```
 */
export function exactPH(solution: ExactSolution, options: ExactConditions & Digits = {}): ExactPH {
  const { system, column, digits } = readExactProblem('exactPH', solution, options);
  return exactPHOf(system, column, provenBracketOf(system, column, digits), digits);
}

/** The pH in the middle of a bracket, with what the bracket proves. @internal */
export function exactPHOf(
  system: ExactSystem,
  column: ColumnOf<Ratio>,
  { lower, upper, strength }: PHBracket,
  digits: number,
): ExactPH {
  const Own = decimalsToKeep(digits);
  const middle = ratios.over(ratios.plus(lower, upper), ratios.of(2));
  return frozen({
    pH: new Own(textOf(middle)).toDecimalPlaces(digits),
    lower: new Own(textOf(lower)),
    upper: new Own(textOf(upper)),
    proven: strength === null ? 'only' : isLeastStrength(system, column, strength) ? 'least' : 'some',
  });
}
