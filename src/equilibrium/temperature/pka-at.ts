import { Faults } from '../../errors.js';
import { log10KAt, type Protolyte, readProtolyte, type Step } from '../../substance/protolyte.js';
import { gasConstant, zeroCelsius } from './kelvin.js';
import { readCelsius } from './read-celsius.js';

/** 25 °C: where tables give constants. */
export const reference = 25;

/** Constants from dH and dCp were compared with measured series from 0 to 50 °C; further out they are extrapolated. */
const thermalRange = [0, 50] as const;

/**
 * The pKa values of a protolyte at a temperature.
 *
 *   ln K(T) = ln K(θ) + ΔH/R·(1/θ − 1/T) + ΔCp/R·(θ/T − 1 + ln(T/θ)),   θ = 298.15 K                 (1)
 *
 * with ΔH and ΔCp at θ; a missing ΔCp counts as zero, which is van 't Hoff's equation. Where a step brings an equation of its
 * own, log10 K = a + b·T + c/T + d·log10 T + e/T², pKa moves from its value at 25 °C as that equation does. A step with
 * neither keeps its value at 25 °C, and `equilibrate` and `titrate` say so in their notes.
 *
 * Source of (1): E. C. W. Clarke, D. N. Glew, Trans. Faraday Soc. 62, 539–547 (1966), doi:10.1039/TF9666200539.
 *
 * @param celsius - temperature, °C, from 0 to 100
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { acids, pKaAt } from 'protolysis';
 *
 * pKaAt(acids.tris, 25); // => [8.072]
 * pKaAt(acids.tris, 37); // => [7.753]
 * ```
 */
export function pKaAt(protolyte: Protolyte, celsius: number): number[] {
  const faults = new Faults('pKaAt');
  const { steps } = readProtolyte(protolyte, 'protolyte', faults);
  const t = readCelsius(celsius, 'celsius', faults);
  faults.done();
  return steps.map((step) => stepAt(step, t));
}

/** @internal */
export function stepAt(step: Step, celsius: number): number {
  const { pKa, dH, dCp = 0, log10K } = step;
  if (celsius === reference) return pKa;
  if (log10K) return pKa - (log10KAt(log10K, celsius) - log10KAt(log10K, reference));
  if (dH === undefined) return pKa;
  const theta = reference + zeroCelsius;
  const T = celsius + zeroCelsius;
  const enthalpy = ((1000 * dH) / gasConstant) * (1 / theta - 1 / T);
  const capacity = (dCp / gasConstant) * (theta / T - 1 + Math.log(T / theta));
  return pKa - (enthalpy + capacity) / Math.LN10;
}

/** What is uncertain about a protolyte's constants at a temperature. @internal */
export function notesOnTemperature({ name, steps }: Protolyte, celsius: number): string[] {
  if (celsius === reference) return [];
  const numbered = steps.map((step, index) => ({ ...step, number: index + 1 }));
  const fixed = numbered.filter(({ dH, log10K }) => dH === undefined && !log10K);
  const outside = numbered.filter(({ dH, log10K }) => {
    const [from, to] = log10K ? log10K.celsius : thermalRange;
    return (log10K || dH !== undefined) && !(celsius >= from && celsius <= to);
  });
  const list = (some: typeof numbered) => some.map(({ number }) => number).join(', ');
  return [
    ...(fixed.length > 0
      ? [`${name}: no enthalpy is given for step ${list(fixed)}, so its pKa is that of 25 °C.`]
      : []),
    ...(outside.length > 0
      ? [`${name}: ${celsius} °C is outside the range of the temperature data for step ${list(outside)}.`]
      : []),
  ];
}
