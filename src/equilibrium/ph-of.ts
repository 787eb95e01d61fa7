import { Faults } from '../errors.js';
import { readSolution } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import type { Column } from './charge-balance.js';
import { type Conditions, readConditions } from './conditions.js';
import { emptyRoot, hydrogenIon } from './hydrogen-ion.js';
import type { PH } from './quantities.js';
import { settingOf } from './setting.js';

/**
 * The pH of a solution: `equilibrate` without the species.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { makeSolution, pHOf, reagents } from 'protolysis';
 *
 * pHOf(makeSolution({ contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] })); // => 2.8809
 * ```
 */
export function pHOf(solution: Solution, conditions?: Conditions): PH {
  const faults = new Faults('pHOf');
  const read = readSolution(solution, 'solution', faults);
  const settled = readConditions(conditions, 'conditions', faults);
  faults.done();
  const { balance, columns } = settingOf([read], settled);
  return -Math.log10(hydrogenIon(balance, columns[0] as Column, 0, emptyRoot()).h);
}
