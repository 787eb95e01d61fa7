import { Faults } from '../../errors.js';
import { zeroCelsius } from './kelvin.js';
import { readCelsius } from './read-celsius.js';
import { waterDensityAt } from './water-density.js';

/**
 * −log10 of the ion product of liquid water at atmospheric pressure, by the IAPWS release.
 *
 *   pKw = −2n·[log10(1 + Q) − Q/(Q + 1)·ρ·(β₀ + β₁/T + β₂·ρ)] + pKw(gas) + 2·log10(M/1000)
 *   Q = ρ·exp(α₀ + α₁/T + α₂/T²·ρ^(2/3)),   pKw(gas) = γ₀ + γ₁/T + γ₂/T² + γ₃/T³        T in K, ρ in g/cm³
 *
 * with ρ from Kell (1975). On the molal scale. At 25 °C it gives 13.9945, which tables print as 13.995.
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
 * pKwAt(0); // => 14.946
 * pKwAt(50); // => 13.264
 * ```
 */
export function pKwAt(celsius: number): number {
  const faults = new Faults('pKwAt');
  const t = readCelsius(celsius, 'celsius', faults);
  faults.done();
  return ionProductAt(t);
}

/** pKw at a temperature that has been read, °C. @internal */
export function ionProductAt(celsius: number): number {
  return releasedPKw(celsius + zeroCelsius, waterDensityAt(celsius) / 1000);
}

/** The release's own function of temperature, K, and density, g/cm³. @internal */
export function releasedPKw(kelvin: number, density: number): number {
  const Q = density * Math.exp(-0.864671 + 8659.19 / kelvin - (22786.2 / kelvin ** 2) * density ** (2 / 3));
  const gas = 0.61415 + 48251.33 / kelvin - 67707.93 / kelvin ** 2 + 10102100 / kelvin ** 3;
  const solvation = (Q / (Q + 1)) * density * (0.642044 - 56.8534 / kelvin - 0.375754 * density);
  return -2 * 6 * (Math.log10(1 + Q) - solvation) + gas + 2 * Math.log10(18.015268 / 1000);
}
