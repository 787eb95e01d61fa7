import type { Source } from '../../source.js';

/** Of `waterPermittivityAt`: good from 0 to 100 °C. The IAPWS formulation of 1997 lies 0.1 higher at 25 °C. */
export const waterPermittivitySource: Source = {
  kind: 'fromMemory',
  work: 'malmberg-maryott-1956',
  note: 'the coefficients; 78.30 at 25 °C stands in the abstract',
};

/**
 * The relative permittivity of water.
 *
 *   ε = 87.740 − 0.40008·t + 9.398·10⁻⁴·t² − 1.410·10⁻⁶·t³        t in °C
 *
 * @internal
 */
export function waterPermittivityAt(celsius: number): number {
  const t = celsius;
  return 87.74 + t * (-0.40008 + t * (9.398e-4 + t * -1.41e-6));
}
