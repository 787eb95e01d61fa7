import { Faults } from '../../input/faults.js';
import { solutionLimits } from '../../solution/solution.js';
import { type ExactSolution, readExactSolution, readExactVolume, written } from '../model/exact-solution.js';
import { type Exactly, readExactly } from '../numbers/exactly.js';
import { compared, ratios, textOf } from '../numbers/ratio.js';

/**
 * Adds pure water to a solution, to the last digit.
 *
 * @param water - `mL`: volume added, 0 or more
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { reagents } from 'protolysis';
 * import { addWater, makeSolution } from 'protolysis/exact';
 *
 * const acid = makeSolution({ mL: '10', contents: [{ reagent: reagents.hydrochloricAcid, molar: '0.1' }] });
 * addWater(acid, { mL: '0.05' }).mL; // => '10.05'
 * ```
 */
export function exactAddWater(solution: ExactSolution, water: { readonly mL: Exactly }): ExactSolution {
  const faults = new Faults('addWater');
  const { mL: before, contents } = readExactSolution(solution, 'solution', faults, true);
  const unread = faults.object(water, 'water', 'a volume of water { mL }', ['mL']);
  const limits = { from: 0, to: solutionLimits.mL };
  const added = readExactly(unread.mL, 'mL', 'a volume in mL', limits, faults);
  const mL = ratios.plus(before, added);
  if (!faults.any && compared(mL, ratios.of(solutionLimits.mL)) > 0)
    faults.add(
      'out-of-range',
      'mL',
      `a volume that leaves no more than ${solutionLimits.mL} mL in all`,
      textOf(added),
    );
  faults.done();
  return written({ mL, contents });
}

/**
 * Makes a solution up to a mark with pure water, to the last digit.
 *
 * @param mark - `mL`: final volume, not below the present one
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { reagents } from 'protolysis';
 * import { makeSolution, makeUpTo } from 'protolysis/exact';
 *
 * const acid = makeSolution({ mL: '10', contents: [{ reagent: reagents.hydrochloricAcid, molar: '0.1' }] });
 * makeUpTo(acid, { mL: '250' }).contents[0]?.mmol; // => '1'
 * ```
 */
export function exactMakeUpTo(solution: ExactSolution, mark: { readonly mL: Exactly }): ExactSolution {
  const faults = new Faults('makeUpTo');
  const { mL: before, contents } = readExactSolution(solution, 'solution', faults, true);
  const unread = faults.object(mark, 'mark', 'a final volume { mL }', ['mL']);
  const mL = readExactVolume(unread.mL, 'mL', faults);
  if (!faults.any && compared(mL, before) < 0)
    faults.add('out-of-range', 'mL', `a volume in mL, not below the present ${textOf(before)}`, textOf(mL));
  faults.done();
  return written({ mL, contents });
}
