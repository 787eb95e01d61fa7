import { Faults } from '../errors.js';
import { sum } from '../solver/sum.js';
import { merged } from './merged.js';
import { readSolution } from './read-solution.js';
import { type Solution, solutionLimits } from './solution.js';
import { readTotals } from './totals.js';

/**
 * Pours solutions together: volumes and amounts add.
 *
 * @throws InputError that lists every fault; also where two protolytes or reagents share an id but not their data
 * @example
 * ```ts
 * import { makeSolution, mix, reagents } from 'protolysis';
 *
 * const acid = makeSolution({ mL: 20, contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] });
 * const salt = makeSolution({ mL: 30, contents: [{ reagent: reagents.sodiumAcetate, molar: 0.1 }] });
 * mix(acid, salt).mL; // => 50
 * ```
 */
export function mix(...solutions: readonly Solution[]): Solution {
  const faults = new Faults('mix');
  if (solutions.length === 0) faults.add('missing', 'solutions', 'at least one solution', undefined);
  for (const [index, solution] of solutions.entries()) readSolution(solution, `solutions[${index}]`, faults);
  faults.done();

  const contents = merged(
    solutions.flatMap((solution) => solution.contents),
    'solutions',
    faults,
  );
  readTotals(solutions, 'solutions', faults);
  const mL = sum(solutions.map((solution) => solution.mL));
  if (mL > solutionLimits.mL)
    faults.add('out-of-range', 'solutions', `no more than ${solutionLimits.mL} mL in all`, mL);
  faults.done();
  return { mL, contents };
}
