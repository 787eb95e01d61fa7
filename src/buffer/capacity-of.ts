import type { Conditions } from '../equilibrium/conditions.js';
import { equilibrate } from '../equilibrium/equilibrate.js';
import { Faults } from '../input/faults.js';
import { readSolution } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import { givenConditions } from './given-conditions.js';

/**
 * Buffer capacity β of a solution, in mol/L of strong base per unit of pH, at constant volume.
 *
 *   β = dC_base/dpH = ln10 · ( [H+] + [OH−] + Σᵢ Cᵢ·varᵢ )                                            (1)
 *
 * with varᵢ the variance of the number of protons that protolyte i has lost; for one pair C·K·h/(K + h)². Water's own
 * share is counted in, so that strong acids and bases have a capacity too. (1) is the ideal case; with a model of
 * activity the ion that comes in with the base (charge +1) counts in the ionic strength, and so does the shift of the
 * equilibrium.
 *
 * @throws InputError that lists every fault
 * @see D. D. Van Slyke, J. Biol. Chem. 52, 525–570 (1922)
 * @example
 * ```ts
 * import { capacityOf, makeSolution, reagents } from 'protolysis';
 *
 * const buffer = makeSolution({
 *   contents: [
 *     { reagent: reagents.aceticAcid, molar: 0.05 },
 *     { reagent: reagents.sodiumAcetate, molar: 0.05 },
 *   ],
 * });
 * capacityOf(buffer); // => 0.0576
 * ```
 */
export function capacityOf(solution: Solution, conditions?: Conditions): number {
  const faults = new Faults('capacityOf');
  const read = readSolution(solution, 'solution', faults);
  const given = givenConditions(conditions, 'conditions', faults);
  faults.done();
  return equilibrate(read, given).bufferCapacity;
}
