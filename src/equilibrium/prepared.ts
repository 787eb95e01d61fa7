import { Faults } from '../errors.js';
import { readSolution } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import type { IonColumn } from './activity/real-system.js';
import { type Conditions, readConditions, readGas } from './conditions.js';
import { afterEscape } from './point.js';
import { type Setting, settingOf } from './setting.js';

/** One solution under its conditions, ready for the charge balance. */
interface Prepared {
  readonly read: Solution;
  readonly setting: Setting;
  /** What is in it, after any escape of CO2. */
  readonly column: IonColumn;
}

/** Reads the solution and conditions of a call and sets them up. @internal */
export function prepared(call: string, solution: Solution, conditions?: Conditions): Prepared {
  const faults = new Faults(call);
  const read = readSolution(solution, 'solution', faults);
  const settled = readConditions(conditions, 'conditions', faults);
  readGas([read], settled, 'conditions', faults);
  faults.done();
  const setting = settingOf([read], settled);
  return { read, setting, column: afterEscape(setting, setting.columns[0] as IonColumn) };
}
