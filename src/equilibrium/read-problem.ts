import { Faults } from '../input/faults.js';
import { readSolution } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import type { IonColumn } from './activity/real-system.js';
import { afterEscape } from './carbon-dioxide-escape.js';
import { type Conditions, readConditions, readGas } from './conditions.js';
import { type System, systemOf } from './system.js';

/** One solution under its conditions, ready for the charge balance. */
interface Problem {
  readonly read: Solution;
  readonly system: System;
  /** What is in it, after any escape of CO2. */
  readonly column: IonColumn;
}

/** Reads the solution and conditions of a call and sets them up. @internal */
export function readProblem(call: string, solution: Solution, conditions?: Conditions): Problem {
  const faults = new Faults(call);
  const read = readSolution(solution, 'solution', faults);
  const inUse = readConditions(conditions, 'conditions', faults);
  readGas([read], inUse, 'conditions', faults);
  faults.done();
  const system = systemOf([read], inUse);
  return { read, system, column: afterEscape(system, system.columns[0] as IonColumn) };
}
