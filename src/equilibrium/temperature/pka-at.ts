import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { doubles, type Functions } from '../../solver/arithmetic.js';
import type { Protolyte, Step, TemperatureFit } from '../../substance/protolyte.js';
import { readProtolyte } from '../../substance/read-protolyte.js';
import { gasConstant, zeroCelsius } from './kelvin.js';
import { log10KAt } from './log10-k-at.js';
import { readCelsius } from './read-celsius.js';

/** 25 °C: where tables give constants. @internal */
export const referenceCelsius = 25;

/** Constants from dH and dCp were compared with measured series from 0 to 50 °C; further out they are extrapolated. */
const thermalRange = [0, 50] as const;

/**
 * The pKa values of a protolyte at a temperature.
 *
 *   ln K(T) = ln K(θ) + ΔH/R·(1/θ − 1/T) + ΔCp/R·(θ/T − 1 + ln(T/θ)),   θ = 298.15 K                 (1)
 *
 * with ΔH and ΔCp at θ; a missing ΔCp counts as zero, which is van 't Hoff's equation. Where a step brings an equation
 * of its own, log10 K = a + b·T + c/T + d·log10 T + e/T², pKa moves from its value at 25 °C as that equation does. A
 * step with neither keeps its value at 25 °C, and `equilibrate` and `titrate` say so in their notes.
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
export function pKaAt(protolyte: Protolyte, celsius: number): readonly number[] {
  const faults = new Faults('pKaAt');
  const { steps } = readProtolyte(protolyte, 'protolyte', faults);
  const t = readCelsius(celsius, 'celsius', faults);
  faults.done();
  return frozen(steps.map((step) => stepAt(step, t)));
}

/** pKa of a step at a temperature that has been read. @internal */
export const stepAt = (step: Step, celsius: number): number =>
  celsius === referenceCelsius ? step.pKa : movedPKa(doubles, step, celsius);

/** The same in any kind of number, away from 25 °C: at 25 °C it gives pKa but for rounding. @internal */
export function movedPKa<N>(arithmetic: Functions<N>, { pKa, dH, dCp = 0, log10K }: Step, celsius: N): N {
  const { of, plus, minus, times, over, decimal, ln } = arithmetic;
  const start = decimal(pKa);
  const log10KOf = (t: N) => log10KAt(arithmetic, log10K as TemperatureFit, t);
  if (log10K) return minus(start, minus(log10KOf(celsius), log10KOf(of(referenceCelsius))));
  if (dH === undefined) return start;
  const R = decimal(gasConstant);
  const theta = plus(of(referenceCelsius), decimal(zeroCelsius));
  const T = plus(celsius, decimal(zeroCelsius));
  const enthalpy = times(over(times(of(1000), decimal(dH)), R), minus(over(of(1), theta), over(of(1), T)));
  const lag = plus(minus(over(theta, T), of(1)), ln(over(T, theta)));
  const capacity = times(over(decimal(dCp), R), lag);
  return minus(start, over(plus(enthalpy, capacity), ln(of(10))));
}

/** What is uncertain about a protolyte's constants at a temperature. @internal */
export function notesOnTemperature({ name, steps }: Protolyte, celsius: number): string[] {
  if (celsius === referenceCelsius) return [];
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
