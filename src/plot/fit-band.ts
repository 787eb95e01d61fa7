import type { Faults } from '../input/faults.js';
import { curveBand } from '../measurement/fit/curve-band.js';
import { fitParameters } from '../measurement/fit/fit-parameters.js';
import { isOfBench } from '../measurement/fit/free-parameter.js';
import { budgetDefaults } from '../measurement/uncertainty/budget.js';
import { studentTQuantile } from '../solver/students-t.js';
import type { Area } from './figure.js';
import type { ReadFit, ReadParameter } from './read-fit.js';
import { type PlotWords, say } from './words.js';

/** The area of confidence about a fitted curve, or none, and what is to be said of it. */
export interface FitBand {
  readonly area: Area | null;
  readonly note: string;
}

/**
 * The band of 95 % about a fitted curve, by its covariance C_ij = r_ij·u_i·u_j; k is Student's t.
 *
 * @param volumes - at which the curve is drawn, mL
 * @internal
 */
export function fitBand(
  { setup, parameters, correlation }: ReadFit,
  volumes: readonly number[],
  words: PlotWords,
  faults: Faults,
): FitBand {
  const unsure = parameters.find(
    ({ free, standardUncertainty, atLimit }) => !isOfBench(free) && (standardUncertainty === null || atLimit),
  );
  if (unsure) return { area: null, note: say(words.noBandFor, { parameter: unsure.name }) };
  const moved = fitParameters(
    parameters.map(({ free }) => free),
    setup,
    'fit.parameters',
    faults,
  );
  faults.done();
  const spreadOf = ({ standardUncertainty }: ReadParameter) => standardUncertainty ?? 0;
  const covariance = parameters.map((one, i) =>
    parameters.map((other, j) => (correlation[i]?.[j] ?? 0) * spreadOf(one) * spreadOf(other)),
  );
  const { level } = budgetDefaults;
  const k = studentTQuantile((1 + level) / 2, parameters[0]?.degreesOfFreedom ?? null);
  const band = curveBand(setup, moved, covariance, k, volumes);
  if (!band) return { area: null, note: words.noBand };
  const name = say(words.band, { percent: 100 * level });
  return { area: { name, x: volumes, ...band }, note: say(words.aboutBand, { percent: 100 * level }) };
}
