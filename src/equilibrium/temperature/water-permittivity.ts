/**
 * The relative permittivity of water.
 *
 *   ε = 87.740 − 0.40008·t + 9.398·10⁻⁴·t² − 1.410·10⁻⁶·t³        t in °C
 *
 * Source: C. G. Malmberg, A. A. Maryott 1956 (`waterSources`), good from 0 to 100 °C. The IAPWS formulation of 1997 lies 0.1 higher at
 * 25 °C.
 *
 * @internal
 */
export function waterPermittivityAt(celsius: number): number {
  const t = celsius;
  return 87.74 + t * (-0.40008 + t * (9.398e-4 + t * -1.41e-6));
}
