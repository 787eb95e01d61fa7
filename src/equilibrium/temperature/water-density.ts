/**
 * The density of air-free water at 101.325 kPa, kg/m³.
 *
 *   ρ = (c₀ + c₁t + … + c₅t⁵) / (1 + d·t)        t in °C
 *
 * Source: G. S. Kell 1975 (`waterSources`), good from 0 to 150 °C.
 *
 * @internal
 */
export function waterDensityAt(celsius: number): number {
  const t = celsius;
  const above =
    999.83952 +
    t * (16.945176 + t * (-7.9870401e-3 + t * (-4.6170461e-5 + t * (1.0556302e-7 + t * -2.8054253e-10))));
  return above / (1 + 1.687985e-2 * t);
}
