import { numberAt } from '../../solver/number-at.js';
import type { ReadSetup } from '../../titration/read-setup.js';
import { chemistryOf } from './chemistry.js';
import { fittedSetup } from './fitted-setup.js';
import type { FitParameter } from './parameter-moves.js';
import { respondAt } from './respond-at.js';
import { emptyResponse } from './response.js';

/** Between which pH a fitted curve lies, at each of some volumes. @internal */
export interface CurveBand {
  readonly lower: readonly number[];
  readonly upper: readonly number[];
}

/**
 * The confidence band of a curve f(V, θ) from the covariance C of its parameters, at each volume by itself. Of all changes
 * of the parameters with δᵀ·C⁻¹·δ = k², the one that moves f(V) most, by its gradient g = ∂f/∂θ, is
 *
 *   δ = k·C·g / √(gᵀ·C·g)                                                                            (1)
 *
 * The band reaches from f(V, θ − δ) to f(V, θ + δ). To first order that is f ± k·u with u² = gᵀ·C·g (JCGM 100:2008, GUM,
 * eq. 13), which in a step leaves every curve that there could be; (1) stays on such curves.
 *
 * @param setup - the fitted one, of which the parameters were read
 * @returns null where a change of (1) leads to what there cannot be, such as an amount below zero
 * @internal
 */
export function curveBand(
  setup: ReadSetup,
  parameters: readonly FitParameter[],
  covariance: readonly (readonly number[])[],
  k: number,
  volumes: readonly number[],
): CurveBand | null {
  const chemistry = chemistryOf(setup, parameters);
  const start = parameters.map((parameter) => parameter.start);
  const here = respondAt(chemistry, start);
  const response = emptyResponse(parameters.length);
  const [lower, upper]: [number[], number[]] = [[], []];
  for (const mL of volumes) {
    here(mL, response, true);
    const centre = response.pH;
    const change = furthestChange(response.moves, covariance, k);
    const [less, more] = [-1, 1].map((sign) => start.map((value, j) => value + sign * numberAt(change, j)));
    if (!less || !more || !isThere(setup, parameters, less) || !isThere(setup, parameters, more)) return null;
    const ends = [less, more].map((values) => {
      respondAt(chemistry, values)(mL, response, false);
      return response.pH;
    });
    lower.push(Math.min(centre, ...ends));
    upper.push(Math.max(centre, ...ends));
  }
  return { lower, upper };
}

/** δ of (1); none where the volume tells nothing of the parameters. */
function furthestChange(
  gradient: Float64Array,
  covariance: readonly (readonly number[])[],
  k: number,
): readonly number[] {
  const along = covariance.map((row) => row.reduce((sum, c, j) => sum + c * numberAt(gradient, j), 0));
  const variance = along.reduce((sum, a, j) => sum + a * numberAt(gradient, j), 0);
  return along.map((a) => (variance > 0 ? (k * a) / Math.sqrt(variance) : 0));
}

/** Whether there could be such a titration: no amount below zero, and nothing beyond where a fit may go. */
function isThere(setup: ReadSetup, parameters: readonly FitParameter[], values: readonly number[]): boolean {
  const isWithin = parameters.every(({ moves, from, to }, j) => {
    const value = numberAt(values, j);
    return value <= to && ('contents' in moves || value >= from);
  });
  if (!isWithin) return false;
  const { analyte, titrant } = fittedSetup(setup, parameters, values);
  return [...analyte.contents, ...titrant.contents].every(({ mmol }) => mmol >= 0);
}
