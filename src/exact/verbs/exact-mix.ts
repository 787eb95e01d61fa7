import { Faults } from '../../input/faults.js';
import { solutionLimits } from '../../solution/solution.js';
import { checked, type ExactSolution, readExactSolution, written } from '../model/exact-solution.js';
import { compared, ratios, textOf } from '../numbers/ratio.js';

/**
 * Pours solutions together: volumes and amounts add, and nothing is rounded.
 *
 * @throws InputError that lists every fault; also where two protolytes or reagents share an id but not their data
 * @example
 * ```ts
 * import { reagents } from 'protolysis';
 * import { makeSolution, mix } from 'protolysis/exact';
 *
 * const acid = makeSolution({ mL: '20', contents: [{ reagent: reagents.aceticAcid, molar: '0.1' }] });
 * const salt = makeSolution({ mL: '0.05', contents: [{ reagent: reagents.sodiumAcetate, molar: '0.1' }] });
 * mix(acid, salt).mL; // => '20.05'
 * ```
 */
export function exactMix(...solutions: readonly ExactSolution[]): ExactSolution {
  const faults = new Faults('mix');
  if (solutions.length === 0) faults.add('missing', 'solutions', 'at least one solution', undefined);
  const read = solutions.map((solution, index) =>
    readExactSolution(solution, `solutions[${index}]`, faults, true),
  );
  const mL = read.reduce((total, solution) => ratios.plus(total, solution.mL), ratios.of(0));
  if (!faults.any && compared(mL, ratios.of(solutionLimits.mL)) > 0)
    faults.add('out-of-range', 'solutions', `no more than ${solutionLimits.mL} mL in all`, textOf(mL));
  const mixture = checked({ mL, contents: read.flatMap(({ contents }) => contents) }, 'solutions', faults);
  faults.done();
  return written(mixture);
}
