import { plainly } from '../input/describe-value.js';
import { Faults } from '../input/faults.js';
import { sum } from '../solver/sum.js';
import { merged } from './merged.js';
import { readSolutions } from './read-solution.js';
import { type PouredSolution, type Solution, solutionLimits } from './solution.js';
import { handOut } from './view-solution.js';

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
export function mix(...solutions: readonly PouredSolution[]): Solution {
  const faults = new Faults('mix');
  if (solutions.length === 0) faults.add('missing', 'solutions', 'at least one solution', undefined);
  const read = readSolutions(
    solutions.map((value, index) => ({ value, path: `solutions[${index}]`, isPoured: true })),
    faults,
  );
  const mixture = mixtureOf(read);
  if (!faults.any && mixture.mL > solutionLimits.mL)
    faults.add(
      'out-of-range',
      'solutions',
      `no more than ${plainly(solutionLimits.mL)} mL in all`,
      mixture.mL,
    );
  faults.done();
  return handOut(mixture);
}

/** The mixture of solutions that have been read. @internal */
export function mixtureOf(solutions: readonly Solution[]): Solution {
  return {
    mL: sum(solutions.map(({ mL }) => mL)),
    contents: merged(solutions.flatMap(({ contents }) => contents)),
  };
}
