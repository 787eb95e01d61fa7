import { frozenWithView } from '../../frozen-with-view.js';
import { Faults } from '../../input/faults.js';
import { readReadingColumns } from '../read-reading-columns.js';
import type { Readings } from '../readings.js';
import { chemistryOf } from './chemistry.js';
import { findFit } from './find-fit.js';
import { type FitOptions, readFitOptions } from './fit-options.js';
import { fitResult } from './fit-result.js';
import type { TitrationFit } from './titration-fit.js';
import { viewFit } from './view-fit.js';

/**
 * The amounts, constants and faults of the bench that bring the predicted curve nearest to all readings.
 *
 *   S = Σ least over Vᵢ of [(pHᵢ − f(Vᵢ, θ))²/u_pH² + (mLᵢ − Vᵢ)²/u_mL²]                                    (1)
 *
 * f is the full charge balance of the titration, seen through the probe; both pH and volume of a reading are uncertain, so
 * that on the steep part the volume counts and on the flat part the pH. Where the curve is straight across u_mL, (1) is
 * least squares with the effective variance u_pH² + f′²·u_mL². The covariance is (JᵀJ)⁻¹, times S/(n − p) where the
 * scatter is estimated.
 *
 * Source: P. T. Boggs, R. H. Byrd, R. B. Schnabel, SIAM J. Sci. Stat. Comput. 8, 1052–1078 (1987),
 * doi:10.1137/0908085. Accuracy on simulated readings: docs/guides/readings.md.
 *
 * @param readings - running totals and pH, more than there are free parameters
 * @throws InputError that lists every fault; also where the titration is boiled out or gives off CO2 on its way
 * @example
 * ```ts
 * import { makeSolution, reagents, titrate } from 'protolysis';
 * import { fitTitration } from 'protolysis/measurement';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
 * });
 * const mL = [2, 5, 10, 15, 20, 22, 23, 24, 25, 26, 28];
 * const pH = [3.74, 4.19, 4.61, 4.97, 5.45, 5.79, 6.06, 6.65, 11.02, 11.44, 11.81];
 * const fit = fitTitration({ mL, pH, notes: [] }, { titration, free: ['sampleAmount'] });
 * fit.parameters[0]?.value; // => 2.43
 * fit.equivalencePoints[0]?.mL; // => 24.3
 * ```
 */
export function fitTitration(readings: Readings, options: FitOptions): TitrationFit {
  const faults = new Faults('fitTitration');
  const given = readReadingColumns(readings, 'readings', faults, { least: 2, rising: false });
  const how = readFitOptions(options, 'options', faults);
  const least = how.free.length + (how.scatter === 'estimated' ? 1 : 0);
  if (!faults.any && given.mL.length < least)
    faults.add(
      'out-of-range',
      'readings.mL',
      `at least ${least} readings for ${how.free.length} free parameters`,
      given.mL,
    );
  faults.done();
  const chemistry = chemistryOf(how.setup, how.parameters);
  const found = findFit(given, chemistry, how.uncertainty);
  return frozenWithView(fitResult(given, how, chemistry, found), viewFit);
}
