import { Faults } from '../../input/faults.js';
import type { Estimate } from '../estimate.js';
import type { UncertaintyBudget } from './budget.js';
import { toOnePlace } from './to-one-place.js';

/**
 * An estimate in words, its standard uncertainty to two digits and the value to the same place (JCGM 100:2008, GUM,
 * 7.2.2 and 7.2.6).
 *
 * @param unit - written after each number; none if left out
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { printEstimate } from 'protolysis/measurement';
 *
 * const molar = { value: 0.1021374, standardUncertainty: 0.0000996, degreesOfFreedom: 4 };
 * printEstimate(molar, 'mol/L'); // => '0.10214 mol/L, standard uncertainty 0.00010 mol/L'
 * ```
 */
export function printEstimate(estimate: Estimate, unit = ''): string {
  const faults = new Faults('printEstimate');
  const unread = faults.object(estimate, 'estimate', 'an estimate { value, standardUncertainty }');
  const value = readNumber(unread.value, 'estimate.value', faults, -mostPrinted);
  const uncertainty = readNumber(unread.standardUncertainty, 'estimate.standardUncertainty', faults, 0);
  const after = readUnit(unit, faults);
  faults.done();
  const { value: printed, uncertainty: spread, power } = toOnePlace(value, uncertainty);
  return `${printed}${power}${after}, standard uncertainty ${spread}${power}${after}`;
}

/**
 * A result with its expanded uncertainty to two digits, the value to the same place, the coverage factor and the level. One
 * whose inputs have no uncertainty says so, to ten digits.
 *
 * @param unit - written after the numbers; none if left out
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { printResult, uncertaintyBudget } from 'protolysis/measurement';
 *
 * const mL = { value: 24.31, standardUncertainty: 0.02, degreesOfFreedom: 2 };
 * const mmol = uncertaintyBudget({ mL, molar: 0.1 }, ({ mL, molar }) => mL * molar);
 * printResult(mmol, 'mmol'); // => '(2.4310 ± 0.0086) mmol, k = 4.3 for 95 %'
 * ```
 */
export function printResult(result: UncertaintyBudget, unit = ''): string {
  const faults = new Faults('printResult');
  const unread = faults.object(result, 'result', 'a result with its uncertainty budget');
  const value = readNumber(unread.value, 'result.value', faults, -mostPrinted);
  const expanded = readNumber(unread.expandedUncertainty, 'result.expandedUncertainty', faults, 0);
  const k = readNumber(unread.coverageFactor, 'result.coverageFactor', faults, 0);
  const level = readNumber(unread.level, 'result.level', faults, 0, 1);
  const after = readUnit(unit, faults);
  faults.done();
  const { value: printed, uncertainty, power } = toOnePlace(value, expanded);
  if (expanded === 0) return `${printed}${after}, no uncertainty given`;
  const percent = Number((100 * level).toPrecision(6));
  return `(${printed} ± ${uncertainty})${power}${after}, k = ${k.toPrecision(2)} for ${percent} %`;
}

const mostPrinted = 1e100;

const readNumber = (value: unknown, path: string, faults: Faults, from: number, to = mostPrinted): number =>
  faults.number(value, path, 'a number', { from, to });

const readUnit = (unit: unknown, faults: Faults): string =>
  unit === '' ? '' : ` ${faults.text(unit, 'unit', 'a unit', 50)}`;
