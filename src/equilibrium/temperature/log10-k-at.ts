import type { Functions } from '../../solver/arithmetic.js';
import type { TemperatureFit } from '../../substance/protolyte.js';
import { zeroCelsius } from './kelvin.js';

/** log10 K of a fitted constant at a temperature in °C: a + b·T + c/T + d·log10 T + e/T², T in K. @internal */
export function log10KAt<N>(
  { plus, times, over, decimal, log10 }: Functions<N>,
  { coefficients }: TemperatureFit,
  celsius: N,
): N {
  const [a, b, c, d, e] = coefficients.map(decimal) as [N, N, N, N, N];
  const T = plus(celsius, decimal(zeroCelsius));
  return [times(b, T), over(c, T), times(d, log10(T)), over(e, times(T, T))].reduce(plus, a);
}
