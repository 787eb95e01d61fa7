import { Matrix } from 'ml-matrix';
import { isIdeal } from '../../equilibrium/system.js';
import { numberAt } from '../../solver/number-at.js';
import type { Readings } from '../readings.js';
import type { ReadingUncertainty } from '../slope-endpoints.js';
import { type Chemistry, chemistryAt } from './chemistry.js';
import { idealResponse } from './ideal-response.js';
import { beforeFirstDrop, nearestOn, type Shown } from './latent-volume.js';
import type { Linearised } from './least-squares.js';
import { realResponse } from './real-response.js';
import { emptyResponse } from './response.js';

/** How the bench alters what the chemistry gives: the pH shown is 7 + slope·(pH − 7) + offset. @internal */
interface Bench {
  readonly offset: number;
  readonly slope: number;
  /** mL delivered before the totals begin. */
  readonly before: number;
}

/** Of each reading, its distance from the curve, and where on the curve it belongs. @internal */
export interface Residuals extends Linearised {
  /** The pH shown there. */
  readonly onCurve: readonly number[];
}

/**
 * The residuals of a titration at some values of its parameters: the distances of latent-volume.ts.
 *
 * A total of zero is the reading before the first drop. Every other volume is that read and what was delivered before.
 *
 * @internal
 */
export function residualsAt(
  chemistry: Chemistry,
  { mL, pH }: Readings,
  u: ReadingUncertainty,
  values: Float64Array,
): Residuals {
  const { parameters } = chemistry;
  const bench = benchAt(chemistry, values);
  const at = chemistryAt(chemistry, values);
  const respond = isIdeal(chemistry.system) ? idealResponse(chemistry, at) : realResponse(chemistry, at);
  const response = emptyResponse(parameters.length);
  const shownAt = (delivered: number): Shown => {
    respond(delivered, response, false);
    return { pH: 7 + bench.slope * (response.pH - 7) + bench.offset, slope: bench.slope * response.slope };
  };
  const residuals = new Float64Array(mL.length);
  const jacobian = new Matrix(mL.length, parameters.length);
  const onCurve: number[] = [];
  for (let i = 0; i < mL.length; i += 1) {
    const total = numberAt(mL, i);
    const read = { mL: total + bench.before, pH: numberAt(pH, i) };
    const near = total === 0 ? beforeFirstDrop(shownAt(0), read.pH, u) : nearestOn(shownAt, read, u);
    respond(near.mL, response, true);
    residuals[i] = near.distance;
    onCurve.push(near.pH);
    for (let j = 0; j < parameters.length; j += 1) {
      const what = parameters[j]?.moves.what;
      let moved = near.perPH * bench.slope * numberAt(response.moves, j);
      if (what === 'probeOffset') moved = near.perPH;
      else if (what === 'probeSlope') moved = near.perPH * (response.pH - 7);
      else if (what === 'initialVolume') moved = near.perML;
      jacobian.set(i, j, -moved);
    }
  }
  return { residuals, jacobian, onCurve };
}

function benchAt({ parameters }: Chemistry, values: Float64Array): Bench {
  const valueAt = (what: string, otherwise: number) => {
    const j = parameters.findIndex(({ moves }) => moves.what === what);
    return j < 0 ? otherwise : numberAt(values, j);
  };
  return {
    offset: valueAt('probeOffset', 0),
    slope: valueAt('probeSlope', 1),
    before: valueAt('initialVolume', 0),
  };
}
