import type { Step } from '../../substance/protolyte.js';
import { gasConstant, zeroCelsius } from './kelvin.js';
import { referenceCelsius } from './pka-at.js';

/**
 * How the pKa of a step moves with temperature, per °C: the derivative of what `pKaAt` takes, null where nothing is
 * known.
 *
 *   dpKa/dT = −(ΔH + ΔCp·(T − θ)) / (ln10·R·T²),   θ = 298.15 K                                         (1)
 *
 * or, where the step brings its own log10 K = a + b·T + c/T + d·log10 T + e/T², the derivative of that.
 *
 * @internal
 */
export function pKaSlopeAt({ dH, dCp = 0, log10K }: Step, celsius: number): number | null {
  const T = celsius + zeroCelsius;
  if (log10K) {
    const [, b, c, d, e] = log10K.coefficients;
    return -(b - c / T ** 2 + d / (T * Math.LN10) - (2 * e) / T ** 3);
  }
  if (dH === undefined) return null;
  return -(1000 * dH + dCp * (celsius - referenceCelsius)) / (Math.LN10 * gasConstant * T ** 2);
}
