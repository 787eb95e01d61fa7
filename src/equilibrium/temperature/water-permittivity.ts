import { type Functions, polynomial } from '../../solver/arithmetic.js';

/**
 * The relative permittivity of water.
 *
 *   ε = 87.740 − 0.40008·t + 9.398·10⁻⁴·t² − 1.410·10⁻⁶·t³        t in °C
 *
 * Source: C. G. Malmberg, A. A. Maryott 1956 (`waterSources`), good from 0 to 100 °C. The IAPWS formulation of 1997
 * lies 0.16 higher at 0 °C, 0.1 higher at 25 °C and 0.19 lower at 100 °C, which moves A by 0.5 % at most.
 *
 * @internal
 */
export const waterPermittivityAt = <N>(arithmetic: Functions<N>, celsius: N): N =>
  polynomial(arithmetic, [87.74, -0.40008, 9.398e-4, -1.41e-6], celsius);
