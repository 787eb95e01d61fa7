import { Matrix } from 'ml-matrix';
import { numberAt } from '../../solver/number-at.js';
import type { ReadingUncertainty } from '../reading-uncertainty.js';
import type { Readings } from '../readings.js';
import type { Chemistry } from './chemistry.js';
import type { Linearised } from './damped-step.js';
import { distortionsAt, isPast, shareOf } from './distortion.js';
import { beforeFirstDrop, nearestOn, type Shown } from './latent-volume.js';
import type { FitParameter } from './parameter-moves.js';
import { respondAt } from './respond-at.js';
import { emptyResponse } from './response.js';

/** Of each reading, its distance from the curve, and where on the curve it belongs. @internal */
export interface Residuals extends Linearised {
  /** The pH shown there. */
  readonly onCurve: readonly number[];
  /** The total that would have been read there, mL. */
  readonly totals: readonly number[];
}

/**
 * The residuals of a titration at some values of its parameters: the distances of latent-volume.ts.
 *
 * A total of zero is the reading before the first drop. Every other volume is that read less what was never poured.
 *
 * @internal
 */
export function residualsAt(
  chemistry: Chemistry,
  readings: Readings,
  u: ReadingUncertainty,
  values: Float64Array,
): Residuals {
  const { mL, pH } = readings;
  const { parameters } = chemistry;
  const respond = respondAt(chemistry, values);
  const response = emptyResponse(parameters.length);
  const residuals = new Float64Array(mL.length);
  const jacobian = new Matrix(mL.length, parameters.length);
  const onCurve: number[] = [];
  const totals: number[] = [];
  for (const [i, distortion] of distortionsAt(parameters, readings, values).entries()) {
    const { slope, offset, drift, lag, before } = distortion;
    const shownAt = (delivered: number): Shown => {
      respond(delivered, response, false);
      const settledAt = 7 + slope * (response.pH - 7) + offset;
      return { pH: lag * before + (1 - lag) * settledAt + drift, slope: (1 - lag) * slope * response.slope };
    };
    const read = { mL: numberAt(mL, i) - distortion.notPoured, pH: numberAt(pH, i) };
    const near = distortion.isFirst ? beforeFirstDrop(shownAt(0), read.pH, u) : nearestOn(shownAt, read, u);
    respond(near.mL, response, true);
    residuals[i] = near.distance;
    onCurve.push(near.pH);
    totals.push(distortion.isFirst ? 0 : near.mL + distortion.notPoured);
    const settled = 1 - lag;
    for (let j = 0; j < parameters.length; j += 1) {
      const { moves } = parameters[j] as FitParameter;
      let moved = near.perPH * settled * slope * numberAt(response.moves, j);
      if (moves.what === 'initialReading') moved = -near.perML;
      else if (moves.what === 'airBubble') moved = isPast(moves, numberAt(mL, i)) ? -near.perML : 0;
      else if (moves.what === 'probeOffset') moved = near.perPH * settled;
      else if (moves.what === 'probeDrift')
        moved = near.perPH * (shareOf(i, mL.length) - lag * shareOf(i - 1, mL.length));
      else if (moves.what === 'probeSlope') moved = (near.perPH * settled * (response.pH - 7)) / 100;
      else if (moves.what === 'readTooSoon' && i > 0)
        moved = near.perPH * (before - 7 - slope * (response.pH - 7) - offset);
      jacobian.set(i, j, -moved);
    }
  }
  return { residuals, jacobian, onCurve, totals };
}
