import { Faults } from '../../input/faults.js';
import { doubles, type Functions, polynomial } from '../../solver/arithmetic.js';
import { zeroCelsius } from './kelvin.js';
import { referenceCelsius } from './pka-at.js';
import { readCelsius } from './read-celsius.js';
import { waterAt25 } from './water-at-25.js';
import { waterDensityAt } from './water-density.js';

/**
 * −log10 of the ion product of liquid water at atmospheric pressure, by the IAPWS release.
 *
 *   pKw = −2n·[log10(1 + Q) − Q/(Q + 1)·ρ·(β₀ + β₁/T + β₂·ρ)] + pKw(gas) + 2·log10(M/1000)
 *   Q = ρ·exp(α₀ + α₁/T + α₂/T²·ρ^(2/3)),   pKw(gas) = γ₀ + γ₁/T + γ₂/T² + γ₃/T³        T in K, ρ in g/cm³
 *
 * with ρ from Kell (1975). On the molal scale. At 25 °C the equation gives 13.9945, which tables print as 13.995. The
 * printed value is the one in use, and the equation is raised by the difference, 0.0005, at every temperature.
 *
 * Source: IAPWS R11-07(2019), after A. V. Bandura, S. N. Lvov, J. Phys. Chem. Ref. Data 35, 15–30 (2006),
 * doi:10.1063/1.1928231.
 *
 * @param celsius - temperature, °C, from 0 to 100
 * @throws InputError where the temperature is out of range
 * @example
 * ```ts
 * import { pKwAt } from 'protolysis';
 *
 * pKwAt(0); // => 14.947
 * pKwAt(25); // => 13.995
 * ```
 */
export function pKwAt(celsius: number): number {
  const faults = new Faults('pKwAt');
  const t = readCelsius(celsius, 'celsius', faults);
  faults.done();
  return ownPKwAt(t);
}

/** pKw in use at a temperature that has been read, °C. @internal */
export const ownPKwAt = (celsius: number): number =>
  waterAt25.pKw + (ionProductAt(celsius) - ionProductAt(referenceCelsius));

/** pKw as the release's equation gives it, at a temperature that has been read, °C. @internal */
export const ionProductAt = (celsius: number): number => ionProductIn(doubles, celsius);

/** The same in any kind of number. @internal */
export function ionProductIn<N>(arithmetic: Functions<N>, celsius: N): N {
  const { of, plus, over, decimal } = arithmetic;
  const density = over(waterDensityAt(arithmetic, celsius), of(1000));
  return releasedPKw(arithmetic, plus(celsius, decimal(zeroCelsius)), density);
}

/** The release's own function of temperature, K, and density, g/cm³. @internal */
export function releasedPKw<N>(arithmetic: Functions<N>, kelvin: N, density: N): N {
  const { of, plus, minus, times, over, decimal, exp, ln, log10 } = arithmetic;
  const reciprocal = over(of(1), kelvin);
  const twoThirds = exp(times(over(of(2), of(3)), ln(density))); //        ρ^(2/3)
  const exponent = polynomial(arithmetic, [-0.864671, 8659.19], reciprocal);
  const attraction = times(times(decimal(22786.2), times(reciprocal, reciprocal)), twoThirds);
  const Q = times(density, exp(minus(exponent, attraction)));
  const gas = polynomial(arithmetic, [0.61415, 48251.33, -67707.93, 10102100], reciprocal);
  const bonds = minus(
    polynomial(arithmetic, [0.642044, -56.8534], reciprocal),
    times(decimal(0.375754), density),
  );
  const solvation = times(times(over(Q, plus(Q, of(1))), density), bonds);
  const mass = times(of(2), log10(decimal(0.018015268)));
  return plus(plus(times(of(-12), minus(log10(plus(of(1), Q)), solvation)), gas), mass);
}
