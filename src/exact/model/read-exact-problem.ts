import { readGas } from '../../equilibrium/conditions.js';
import { Faults } from '../../input/faults.js';
import type { Ratio } from '../numbers/ratio.js';
import type { ColumnOf } from './exact-charge-balance.js';
import {
  conditionKeys,
  type ReadExactConditions,
  readDigits,
  readExactConditions,
} from './exact-conditions.js';
import { type ReadSolution, readExactSolution } from './exact-solution.js';
import { type ExactSystem, exactSystemOf } from './exact-system.js';

/** A solution under conditions, and how many digits are wanted. @internal */
export interface ExactProblem {
  readonly solution: ReadSolution;
  readonly conditions: ReadExactConditions;
  readonly digits: number;
  readonly system: ExactSystem;
  readonly column: ColumnOf<Ratio>;
}

/**
 * Reads the arguments (solution, { digits, ...conditions }) of a call.
 *
 * @param fixed - how many digits, where the call does not leave that to the caller
 * @internal
 */
export function readExactProblem(
  call: string,
  given: unknown,
  options: unknown,
  fixed?: number,
): ExactProblem {
  const faults = new Faults(call);
  const solution = readExactSolution(given, 'solution', faults);
  const keys = fixed === undefined ? ['digits', ...conditionKeys] : conditionKeys;
  const unread = faults.object(options, 'options', `options { ${keys.join(', ')} }`, keys);
  const digits = fixed ?? readDigits(unread.digits, faults);
  const conditions = readExactConditions(unread, '', faults);
  faults.done();
  readGas([solution], conditions.inUse, '', faults);
  faults.done();
  const system = exactSystemOf([solution], conditions);
  return { solution, conditions, digits, system, column: system.columns[0] as ColumnOf<Ratio> };
}
