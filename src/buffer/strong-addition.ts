import { type Conditions, readConditions, readGas } from '../equilibrium/conditions.js';
import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { readSolutions } from '../solution/read-solution.js';
import { type Solution, solutionLimits } from '../solution/solution.js';
import type { Reagent } from '../substance/reagent.js';
import { plus } from './add-solutions.js';
import { bufferLimits } from './buffer-defaults.js';
import { eitherStrong, strongSearch } from './strong-search.js';

/** The strong acid or base that brings a solution to a pH. */
export type StrongAddition =
  | {
      readonly status: 'found';
      /** Hydrochloric acid or sodium hydroxide. */
      readonly reagent: Reagent;
      /** How much of it, mmol; 0 where the solution has that pH already. */
      readonly mmol: number;
      /** The same per volume of the solution, mol/L. */
      readonly molar: number;
      /** The solution with it, its volume unchanged. */
      readonly solution: Solution;
    }
  | {
      readonly status: 'out-of-reach';
      readonly reason: string;
      /** The pH with as much as a solution may hold. */
      readonly nearest: PH;
    };

/**
 * How much strong acid (HCl) or strong base (NaOH) brings a solution to a pH, its volume unchanged.
 *
 *   ideal: C = −( h − Kw/h + Q + Σᵢ Cᵢ·z̄ᵢ(h) ),   above 0 base, below 0 acid                         (1)
 *
 * Solved for any conditions as the amount at which the equilibrium has that pH, so that with a model of activity the
 * ion added counts in the ionic strength; (1) is what comes out of it in the ideal case. Volume and reagent of a real
 * titrant are `titrate(…).volumeAt(pH)`.
 *
 * @param pH - from −2 to 16
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { makeSolution, reagents, strongAdditionTo } from 'protolysis';
 *
 * const tris = makeSolution({ mL: 500, contents: [{ reagent: reagents.tris, molar: 0.1 }] });
 * const addition = strongAdditionTo(tris, 8);
 * addition.status === 'found' ? addition.mmol : addition.reason; // => 27.07
 * ```
 */
export function strongAdditionTo(solution: Solution, pH: PH, conditions?: Conditions): StrongAddition {
  const faults = new Faults('strongAdditionTo');
  const [read] = readSolutions([{ value: solution, path: 'solution' }, eitherStrong], faults) as [
    Solution,
    Solution,
  ];
  const [from, to] = bufferLimits.pH;
  const target = faults.number(pH, 'pH', 'a pH', { from, to });
  const inUse = readConditions(conditions, 'conditions', faults);
  readGas([read], inUse, 'conditions', faults);
  faults.done();

  const { found, reagent, mmol, pH: reached } = strongSearch(read, inUse)(target);
  if (!found)
    return {
      status: 'out-of-reach',
      reason: `even ${solutionLimits.molar} mol/L of ${reagent.name} does not bring it to pH ${target}`,
      nearest: reached,
    };
  return frozen({
    status: 'found',
    reagent,
    mmol,
    molar: mmol / read.mL,
    solution: plus(read, [{ reagent, mmol }]),
  });
}
