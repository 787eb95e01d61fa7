import { Faults } from '../../input/faults.js';
import { henryAt } from '../carbon-dioxide.js';
import { readCelsius } from './read-celsius.js';

/**
 * −log10 of Henry's constant of carbon dioxide in water, [CO2(aq)]/p in mol/(L·atm), H2CO3 counted in.
 *
 *   log10 K = a + b·T + c/T + d·log10 T + e/T²        T in K
 *
 * Source: L. N. Plummer, E. Busenberg, Geochim. Cosmochim. Acta 46, 1011–1040 (1982): 0 to 90 °C, 1 atm, zero ionic
 * strength, molality.
 *
 * @param celsius - temperature, °C, from 0 to 100
 * @throws InputError where the temperature is out of range
 * @example
 * ```ts
 * import { pKHAt } from 'protolysis';
 *
 * pKHAt(25); // => 1.468
 * pKHAt(0); // => 1.108
 * ```
 */
export function pKHAt(celsius: number): number {
  const faults = new Faults('pKHAt');
  const t = readCelsius(celsius, 'celsius', faults);
  faults.done();
  return henryAt(t);
}
