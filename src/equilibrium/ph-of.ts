import type { Solution } from '../solution/solution.js';
import type { Conditions } from './conditions.js';
import type { PH } from './quantities.js';
import { readProblem } from './read-problem.js';
import { solveSolution } from './solve-solution.js';

/**
 * The pH of a solution: `equilibrate` without the species.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { davies, makeSolution, pHOf, reagents } from 'protolysis';
 *
 * const acid = makeSolution({ contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] });
 * pHOf(acid); // => 2.8809
 * pHOf(acid, { activity: davies, celsius: 40 }); // => 2.8871
 * ```
 */
export function pHOf(solution: Solution, conditions?: Conditions): PH {
  const { system, column } = readProblem('pHOf', solution, conditions);
  return -Math.log10(solveSolution(system, column).activity);
}
