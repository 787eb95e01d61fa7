import { Faults } from '../input/faults.js';
import { readSolution, readSolutionVolume } from './read-solution.js';
import type { Solution } from './solution.js';
import { handOut } from './view-solution.js';

/**
 * A measured part of a solution, as a pipette takes it.
 *
 * It may be larger than the solution: one litre of titrant made on paper serves any burette. The composition is kept.
 *
 * @param part - `mL`: volume of the part
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { aliquot, makeSolution, reagents } from 'protolysis';
 *
 * const stock = makeSolution({ mL: 250, contents: [{ reagent: reagents.sodiumCarbonate, grams: 1.325 }] });
 * aliquot(stock, { mL: 25 }).contents[0]?.mmol; // => 1.25015
 * ```
 */
export function aliquot(solution: Solution, part: { readonly mL: number }): Solution {
  const faults = new Faults('aliquot');
  const { mL: whole, contents } = readSolution(solution, 'solution', faults);
  const unread = faults.object(part, 'part', 'a part { mL }', ['mL']);
  const mL = readSolutionVolume(unread.mL, 'part.mL', faults);
  faults.done();
  return handOut(partOf({ mL: whole, contents }, mL));
}

/** A part of a solution that has been read. @internal */
export function partOf({ mL: whole, contents }: Solution, mL: number): Solution {
  return { mL, contents: contents.map(({ reagent, mmol }) => ({ reagent, mmol: mmol * (mL / whole) })) };
}
