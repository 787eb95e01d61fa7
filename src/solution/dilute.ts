import { plainly } from '../input/describe-value.js';
import { Faults } from '../input/faults.js';
import { readPouredSolution } from './read-solution.js';
import { type PouredSolution, type Solution, solutionLimits } from './solution.js';
import { handOut } from './view-solution.js';

/**
 * Adds pure water to a solution: the amounts stay, the volume grows.
 *
 * @param water - `mL`: volume added, 0 or more
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { addWater, makeSolution, reagents } from 'protolysis';
 *
 * const acid = makeSolution({ mL: 10, contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
 * addWater(acid, { mL: 90 }).mL; // => 100
 * ```
 */
export function addWater(solution: PouredSolution, water: { readonly mL: number }): Solution {
  const faults = new Faults('addWater');
  const { mL: before, contents } = readPouredSolution(solution, 'solution', faults);
  const unread = faults.object(water, 'water', 'a volume of water { mL }', ['mL']);
  const added = faults.number(unread.mL, 'water.mL', 'a volume in mL', { from: 0, to: solutionLimits.mL });
  if (before + added > solutionLimits.mL)
    faults.add(
      'out-of-range',
      'water.mL',
      `a volume in mL that leaves no more than ${plainly(solutionLimits.mL)} in all`,
      added,
    );
  faults.done();
  return handOut({ mL: before + added, contents });
}

/**
 * Makes a solution up to a mark with pure water, as in a volumetric flask.
 *
 * @param mark - `mL`: final volume, not below the present one
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { makeSolution, makeUpTo, reagents } from 'protolysis';
 *
 * const acid = makeSolution({ mL: 10, contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
 * makeUpTo(acid, { mL: 250 }).mL; // => 250
 * ```
 */
export function makeUpTo(solution: PouredSolution, mark: { readonly mL: number }): Solution {
  const faults = new Faults('makeUpTo');
  const { mL: before, contents } = readPouredSolution(solution, 'solution', faults);
  const unread = faults.object(mark, 'mark', 'a final volume { mL }', ['mL']);
  const mL = faults.number(unread.mL, 'mark.mL', 'a volume in mL, not below the present one', {
    from: faults.any ? 0 : before,
    to: solutionLimits.mL,
  });
  faults.done();
  return handOut({ mL, contents });
}
