import { Faults } from '../errors.js';
import { readSolution } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import type { IonColumn } from './activity/real-system.js';
import { type Conditions, readConditions, readGas } from './conditions.js';
import { afterEscape, pointOf } from './point.js';
import type { PH } from './quantities.js';
import { settingOf } from './setting.js';

/**
 * The pH of a solution: `equilibrate` without the species.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { davies, makeSolution, pHOf, reagents } from 'protolysis';
 *
 * const acid = makeSolution({ contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] });
 * pHOf(acid); // => 2.8809
 * pHOf(acid, { activity: davies, celsius: 40 }); // => 2.8871
 * ```
 */
export function pHOf(solution: Solution, conditions?: Conditions): PH {
  const faults = new Faults('pHOf');
  const read = readSolution(solution, 'solution', faults);
  const settled = readConditions(conditions, 'conditions', faults);
  readGas([read], settled, 'conditions', faults);
  faults.done();
  const setting = settingOf([read], settled);
  const { activity } = pointOf(setting, afterEscape(setting, setting.columns[0] as IonColumn));
  return -Math.log10(activity);
}
