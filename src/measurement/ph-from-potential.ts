import { Faults } from '../input/faults.js';
import { readProbeLine } from './correct-readings.js';
import { nernstSlope } from './nernst-slope.js';
import type { ProbeCalibration } from './probe-calibration.js';

/**
 * The pH that a potential means by a calibration: pH = 7 − (E/k + offset)/slope, k = ln 10·R·T/F.
 *
 * @param mV - potential of the probe, mV
 * @param options.celsius - temperature of the sample, °C
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { pHStandards } from 'protolysis';
 * import { calibrateProbe, pHFromPotential } from 'protolysis/measurement';
 *
 * const calibration = calibrateProbe([
 *   { standard: pHStandards.phthalate, celsius: 25, mV: 172.6 },
 *   { standard: pHStandards.phosphateEqual, celsius: 25, mV: 6.2 },
 * ]);
 * pHFromPotential(calibration, 172.6, { celsius: 25 }); // => 4.005
 * ```
 */
export function pHFromPotential(
  calibration: ProbeCalibration,
  mV: number,
  options: { readonly celsius: number },
): number {
  const faults = new Faults('pHFromPotential');
  const { slope, offset } = readProbeLine(calibration, 'calibration', faults);
  const potential = faults.number(mV, 'mV', 'a potential in mV', { from: -2000, to: 2000 });
  const { celsius } = faults.object(options, 'options', 'options { celsius }', ['celsius']);
  const t = faults.number(celsius, 'options.celsius', 'a temperature in °C', { from: 0, to: 100 });
  faults.done();
  return 7 - (potential / nernstSlope(t) + offset) / slope;
}
