import { Faults } from '../input/faults.js';
import { makeTitration } from './make-titration.js';
import { readSetup } from './read-setup.js';
import type { Titration, TitrationSetup } from './titration.js';

/**
 * Sets up a titration: the whole predicted curve of any mixture of acids, bases and their salts with any other.
 *
 *   F(h, V) = A(h) + V·T(h) = 0                                                                        (1)
 *   V(pH) = −A/T,   dpH/dV = T / (β·(V₀ + V))                                                          (2)
 *
 * with A and T the net charge of the analyte and of one mL of titrant at one pH. pH at a volume is found by iteration,
 * volume at a pH is explicit: by default the solution is ideal, at 25 °C and closed to the air. With a model of
 * activity, or with CO2 that escapes, the curve may turn and both are found by iteration. Volumes are additive.
 *
 * @throws InputError that lists every fault, here and from each of the methods
 * @example
 * ```ts
 * import { makeSolution, reagents, titrate } from 'protolysis';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 * });
 * titration.equivalencePoints.map(({ reaction }) => reaction); // => ['CO₃²⁻ + H⁺ → HCO₃⁻', 'HCO₃⁻ + H⁺ → CO₂(aq) + H₂O']
 * titration.pHAt(10); // => 8.34
 * ```
 */
export function titrate(setup: TitrationSetup): Titration {
  const faults = new Faults('titrate');
  const read = readSetup(setup, '', faults);
  faults.done();
  return makeTitration(read);
}
