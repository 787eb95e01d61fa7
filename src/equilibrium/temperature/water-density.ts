import { type Functions, polynomial } from '../../solver/arithmetic.js';

/**
 * The density of air-free water at 101.325 kPa, kg/m³.
 *
 *   ρ = (c₀ + c₁t + … + c₅t⁵) / (1 + d·t)        t in °C
 *
 * Source: G. S. Kell 1975 (`waterSources`), good from 0 to 150 °C.
 *
 * @internal
 */
export function waterDensityAt<N>(arithmetic: Functions<N>, celsius: N): N {
  return arithmetic.over(
    polynomial(arithmetic, numerator, celsius),
    polynomial(arithmetic, denominator, celsius),
  );
}

const numerator = [999.83952, 16.945176, -7.9870401e-3, -4.6170461e-5, 1.0556302e-7, -2.8054253e-10];
const denominator = [1, 1.687985e-2];
