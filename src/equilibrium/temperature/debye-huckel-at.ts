import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { doubles, type Functions } from '../../solver/arithmetic.js';
import { zeroCelsius } from './kelvin.js';
import { readCelsius } from './read-celsius.js';
import { waterDensityAt } from './water-density.js';
import { waterPermittivityAt } from './water-permittivity.js';

/** The two parameters of the Debye–Hückel laws. */
export interface DebyeHuckelParameters {
  /** (kg/mol)^½, for decimal logarithms. */
  readonly A: number;
  /** (kg/mol)^½ per ångström of ion size. */
  readonly B: number;
}

/** SI Brochure, 9th edition (2019): exact but for the permittivity of vacuum, which is CODATA 2018. */
const charge = 1.602176634e-19; //       C
const avogadro = 6.02214076e23; //       1/mol
const boltzmann = 1.380649e-23; //       J/K
const vacuum = 8.8541878128e-12; //      F/m

/**
 * A and B of the Debye–Hückel laws, from the density and the permittivity of water at a temperature.
 *
 *   A = e³·√(2·N_A·ρ) / (8π·ln10·(ε₀·ε·k·T)^(3/2)),   B = √(2·N_A·e²·ρ / (ε₀·ε·k·T))
 *
 * with ρ from Kell (1975) and ε from Malmberg & Maryott (1956), on the molal scale: 0.5108 and 0.3286 at 25 °C. With
 * the permittivity of 1997 it would be 0.5098; older tables have 0.5085. The differences are below the error of any of
 * the laws.
 *
 * @param celsius - temperature, °C, from 0 to 100
 * @throws InputError where the temperature is out of range
 * @example
 * ```ts
 * import { debyeHuckelAt } from 'protolysis';
 *
 * debyeHuckelAt(25).A; // => 0.5108
 * debyeHuckelAt(0).A; // => 0.4918
 * ```
 */
export function debyeHuckelAt(celsius: number): DebyeHuckelParameters {
  const faults = new Faults('debyeHuckelAt');
  const t = readCelsius(celsius, 'celsius', faults);
  faults.done();
  return frozen(parametersAt(t));
}

/** The same at a temperature that has been read, in any kind of number. @internal */
export function parametersIn<N>(arithmetic: Functions<N>, celsius: N): { readonly A: N; readonly B: N } {
  const { of, plus, times, over, decimal, sqrt, ln, pi } = arithmetic;
  const product = (...factors: N[]) => factors.reduce(times);
  const kelvin = plus(celsius, decimal(zeroCelsius));
  const permittivity = times(decimal(vacuum), waterPermittivityAt(arithmetic, celsius));
  const energy = product(permittivity, decimal(boltzmann), kelvin);
  const ions = product(of(2), decimal(avogadro), waterDensityAt(arithmetic, celsius));
  const e = decimal(charge);
  return {
    A: over(product(e, e, e, sqrt(ions)), product(of(8), pi, ln(of(10)), energy, sqrt(energy))),
    B: product(e, sqrt(over(ions, energy)), decimal(1e-10)),
  };
}

/** The same in doubles. @internal */
export const parametersAt = (celsius: number): DebyeHuckelParameters => parametersIn(doubles, celsius);
