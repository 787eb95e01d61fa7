import type { Decimal } from 'decimal.js';
import { pHOf } from '../../equilibrium/ph-of.js';
import { frozen } from '../../frozen.js';
import { conditioningLimit } from '../model/conditioning-limit.js';
import type { ExactConditions } from '../model/exact-conditions.js';
import type { ExactSolution } from '../model/exact-solution.js';
import { solutionInDoubles } from '../model/exact-system.js';
import { provenBracketOf } from '../model/proven-bracket.js';
import { readExactProblem } from '../model/read-exact-problem.js';
import { exactPHOf } from './exact-ph.js';

/** A pH in doubles against the exact one. */
export interface Comparison {
  /** The pH of `pHOf`. */
  readonly pH: number;
  readonly exact: Decimal;
  /** |pH − exact|. */
  readonly error: number;
  /** The conditioning limit: no solver in doubles can promise less. */
  readonly limit: number;
  /** error/limit. */
  readonly inLimits: number;
}

/**
 * A pH in doubles against the exact one, in units of the conditioning limit: what the rounding of the input alone can
 * do to the answer.
 *
 *   limit = 2⁻⁵² · Σ |x·∂pH/∂x| + 2.3e-16 · max(1, |pH|)
 *
 * over all numbers x that go in (amounts, pKa, pKw, pKH, pressure, log10 γ), each off by its last bit with the worst
 * choice of signs, and the rounding of the pH itself. A pKa near 0 counts with the last bit of its K, which is then the
 * coarser, and a constant that is worked out from the temperature with the last bit of each term of its formula. A pH
 * may be four limits off (the accuracy this package promises), and is mostly well below one.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { reagents } from 'protolysis';
 * import { compareWithExact, davies, makeSolution } from 'protolysis/exact';
 *
 * const brine = makeSolution({ contents: [{ reagent: reagents.sodiumChloride, molar: '5' }] });
 * const { pH, inLimits } = compareWithExact(brine);
 * pH; // => 6.9975
 * inLimits <= 4; // => true
 * compareWithExact(brine, { activity: davies }).inLimits <= 4; // => true
 * ```
 */
export function compareWithExact(solution: ExactSolution, conditions: ExactConditions = {}): Comparison {
  const problem = readExactProblem('compareWithExact', solution, conditions, digits);
  const { system, column } = problem;
  const pH = pHOf(solutionInDoubles(problem.solution), problem.conditions.inUse.given);
  const bracket = provenBracketOf(system, column, digits);
  const { pH: exact } = exactPHOf(system, column, bracket, digits);
  const error = exact.minus(pH).abs().toNumber();
  const limit = conditioningLimit(problem, bracket);
  return frozen({ pH, exact, error, limit, inLimits: error / limit });
}

/** Far beyond those of a double. */
const digits = 30;
