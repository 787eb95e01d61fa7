import { readGas } from '../equilibrium/conditions.js';
import { Faults } from '../errors.js';
import type { ColumnOf } from './charge-balance.js';
import { conditionKeys, type ReadConditions, readConditions, readDigits } from './conditions.js';
import type { Ratio } from './ratio.js';
import { type ReadSolution, readExactSolution } from './solution.js';
import { type System, systemOf } from './system.js';

/** A solution under conditions, and how many digits are wanted. @internal */
export interface Problem {
  readonly solution: ReadSolution;
  readonly conditions: ReadConditions;
  readonly digits: number;
  readonly system: System;
  readonly column: ColumnOf<Ratio>;
}

/**
 * Reads the arguments (solution, { digits, ...conditions }) of a call.
 *
 * @param fixed - how many digits, where the call does not leave that to the caller
 * @internal
 */
export function readProblem(call: string, given: unknown, options: unknown, fixed?: number): Problem {
  const faults = new Faults(call);
  const solution = readExactSolution(given, 'solution', faults);
  const keys = fixed === undefined ? ['digits', ...conditionKeys] : conditionKeys;
  const unread = faults.object(options, 'options', `options { ${keys.join(', ')} }`, keys);
  const digits = fixed ?? readDigits(unread.digits, faults);
  const conditions = readConditions(unread, '', faults);
  faults.done();
  readGas([solution], conditions.settled, '', faults);
  faults.done();
  const system = systemOf([solution], conditions);
  return { solution, conditions, digits, system, column: system.columns[0] as ColumnOf<Ratio> };
}
