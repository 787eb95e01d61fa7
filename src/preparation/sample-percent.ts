import type { ReadSample } from './read-sample.js';
import type { SamplePercent } from './sample-plan.js';
import { volumePercent } from './volume-percent.js';

/**
 * Standard uncertainties of the result. A mass is the difference of two weighings, a volume that of two readings, each
 * √2 times as uncertain as one.
 *
 * @param volume - of titrant at the point, mL
 * @internal
 */
export function samplePercent(
  { sample, glass, buretteVessel, ...read }: ReadSample,
  grams: number,
  volume: number,
): SamplePercent {
  const { aliquot: vessels } = sample;
  const weighing = (100 * Math.SQRT2 * read.weighing) / (1000 * grams);
  const reading = (100 * Math.SQRT2 * read.reading) / volume;
  const burette = buretteVessel ? volumePercent(buretteVessel, glass, volume) : 0;
  const aliquot = vessels
    ? Math.hypot(volumePercent(vessels.flask, glass), volumePercent(vessels.pipette, glass))
    : 0;
  return { weighing, reading, burette, aliquot, together: Math.hypot(weighing, reading, burette, aliquot) };
}
