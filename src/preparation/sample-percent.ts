import type { Vessel } from '../catalogue/glassware.js';
import { triangular } from './amounts-of.js';
import type { ReadSample } from './read-sample.js';
import type { SamplePercent } from './sample-plan.js';

/**
 * Standard uncertainties of the result. A mass is the difference of two weighings, a volume that of two readings, each √2 times as
 * uncertain as one.
 *
 * @param volume - of titrant at the point, mL
 * @internal
 */
export function samplePercent(
  { sample, glass, buretteVessel, ...read }: ReadSample,
  grams: number,
  volume: number,
): SamplePercent {
  const limitOf = (vessel: Vessel, mL: number) => (100 * triangular * vessel.tolerance[glass]) / mL;
  const { aliquot: vessels } = sample;
  const weighing = (100 * Math.SQRT2 * read.weighing) / (1000 * grams);
  const reading = (100 * Math.SQRT2 * read.reading) / volume;
  const burette = buretteVessel ? limitOf(buretteVessel, volume) : 0;
  const aliquot = vessels
    ? Math.hypot(limitOf(vessels.flask, vessels.flask.mL), limitOf(vessels.pipette, vessels.pipette.mL))
    : 0;
  return { weighing, reading, burette, aliquot, together: Math.hypot(weighing, reading, burette, aliquot) };
}
