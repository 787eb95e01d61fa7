import { atomicWeights } from '../catalogue/atomic-weights.js';
import { Faults } from '../input/faults.js';
import { readComposition } from './formula.js';

/**
 * Molar mass of a formula, g/mol, from the standard atomic weights of 2021 (Prohaska et al., 2022).
 *
 * Brackets may nest; `·`, `*` or `.` joins hydrate water; a charge and a state at the end are allowed and weigh nothing
 * (an electron is 0.0005 g/mol). The sum is rounded to four decimals: the weights of hydrogen, carbon and oxygen are
 * not known better than 0.0002 for a sample of unknown origin.
 *
 * @throws InputError that says which character of the formula cannot be read
 * @example
 * ```ts
 * import { molarMassOf } from 'protolysis';
 *
 * molarMassOf('Na2CO3'); // => 105.9875
 * molarMassOf('Na2CO3·10H2O'); // => 286.1375
 * molarMassOf('(NH4)2SO4'); // => 132.134
 * ```
 */
export function molarMassOf(formula: string): number {
  const faults = new Faults('molarMassOf');
  const molarMass = readMolarMass(formula, 'formula', faults);
  faults.done();
  return molarMass;
}

/** Reads a formula from a caller's value and returns its molar mass, g/mol, noting every fault. @internal */
export function readMolarMass(value: unknown, path: string, faults: Faults): number {
  let molarMass = 0;
  for (const [element, count] of readComposition(value, path, faults))
    molarMass += count * atomicWeights[element];
  return Math.round(molarMass * 1e4) / 1e4;
}
