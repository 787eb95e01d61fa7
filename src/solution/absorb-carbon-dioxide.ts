import { carbonDioxide } from '../catalogue/reagents/carbonates.js';
import { Faults } from '../input/faults.js';
import { readConflicts } from './conflicting-constants.js';
import { merged } from './merged.js';
import { readSolution } from './read-solution.js';
import { type Solution, sameVolume } from './solution.js';
import { totalsOf } from './totals.js';
import { handOut } from './view-solution.js';

/**
 * An alkaline solution that has taken up carbon dioxide from the air: a share of its hydroxide has become carbonate.
 *
 *   2 OH⁻ + CO₂ → CO₃²⁻ + H₂O,   n(CO₂) = share·n(OH⁻)/2
 *
 * The hydroxide is the excess of strong cations over strong anions, as in a solution of NaOH. The volume is taken as
 * unchanged.
 *
 * @param options - `share`: of the hydroxide, from 0 to 1
 * @throws InputError that lists every fault; also where the strong ions leave no hydroxide
 * @example
 * ```ts
 * import { absorbCarbonDioxide, makeSolution, reagents } from 'protolysis';
 *
 * const fresh = makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] });
 * const old = absorbCarbonDioxide(fresh, { share: 0.02 });
 * old.contents[1]?.mmol; // => 1.00
 * ```
 */
export function absorbCarbonDioxide(solution: Solution, options: { readonly share: number }): Solution {
  const faults = new Faults('absorbCarbonDioxide');
  const read = readSolution(solution, 'solution', faults);
  const unread = faults.object(options, 'options', 'options { share }', ['share']);
  const share = faults.number(unread.share, 'options.share', 'a share of the hydroxide', { from: 0, to: 1 });
  faults.done();
  const { charge } = totalsOf(read);
  if (!(charge > 0))
    faults.add('out-of-range', 'solution', 'a solution with more strong cations than anions', solution);
  const contents = [...read.contents, { reagent: carbonDioxide, mmol: (share * charge) / 2 }];
  readConflicts(
    contents.map(({ reagent }) => ({ reagent, path: 'solution' })),
    faults,
  );
  faults.done();
  return handOut({ ...sameVolume(read), contents: merged(contents) });
}
