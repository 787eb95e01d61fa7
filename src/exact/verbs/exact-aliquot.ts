import { Faults } from '../../input/faults.js';
import { type ExactSolution, readExactSolution, readExactVolume, written } from '../model/exact-solution.js';
import type { Exactly } from '../numbers/exactly.js';
import { ratios } from '../numbers/ratio.js';

/**
 * A measured part of a solution, to the last digit; it may be larger than the whole.
 *
 * @param part - `mL`: volume of the part
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { reagents } from 'protolysis';
 * import { aliquot, makeSolution } from 'protolysis/exact';
 *
 * const stock = makeSolution({ mL: '30', contents: [{ reagent: reagents.sodiumHydroxide, mmol: '1' }] });
 * aliquot(stock, { mL: '10' }).contents[0]?.mmol; // => '1/3'
 * ```
 */
export function exactAliquot(solution: ExactSolution, part: { readonly mL: Exactly }): ExactSolution {
  const faults = new Faults('aliquot');
  const { mL: whole, contents } = readExactSolution(solution, 'solution', faults);
  const unread = faults.object(part, 'part', 'a part { mL }', ['mL']);
  const mL = readExactVolume(unread.mL, 'mL', faults);
  faults.done();
  const share = ratios.over(mL, whole);
  return written({
    mL,
    contents: contents.map(({ reagent, mmol }) => ({ reagent, mmol: ratios.times(mmol, share) })),
  });
}
