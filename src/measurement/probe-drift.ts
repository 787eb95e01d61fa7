import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { fixed } from '../print-number.js';
import { readProbeLine } from './correct-readings.js';
import { type ProbeCalibration, probeDefaults } from './probe-calibration.js';

/** How far a probe moved between a calibration and a later check. Plain data: it survives JSON. */
export interface ProbeDrift {
  /** By how much the probe shows more at pH 7 than before, in pH. */
  readonly offset: number;
  /** By how much its slope changed, in % of the Nernst slope. */
  readonly slope: number;
  /** In pH, at each pH from 2 to 12 by 1. */
  readonly shifts: readonly { readonly pH: number; readonly shift: number }[];
  /** In pH, the largest shift between pH 4 and 10, sign included. */
  readonly worst: number;
  /** Whether that is more than the tolerance. */
  readonly recalibrate: boolean;
  readonly notes: readonly string[];
}

/**
 * The drift of a probe between the calibration before a run and a check after it, and whether to calibrate again.
 *
 * An end point by slope rests on differences of pH in the minutes about it, and survives a drift; a Gran line and a fit
 * take each pH over the whole run, and the pH of a buffer is read as it stands. So a titration may be corrected afterwards
 * (`correctReadings`), but before buffers the probe is calibrated again.
 *
 * @param options.tolerance - in pH; `probeDefaults.drift` otherwise
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { pHStandards } from 'protolysis';
 * import { calibrateProbe, probeDrift } from 'protolysis/measurement';
 *
 * const { phthalate, borax } = pHStandards;
 * const shown = (low: number, high: number) =>
 *   calibrateProbe([{ standard: phthalate, celsius: 25, pH: low }, { standard: borax, celsius: 25, pH: high }]);
 * const drift = probeDrift(shown(4.0, 9.18), shown(4.08, 9.24));
 * drift.worst; // => 0.08
 * drift.recalibrate; // => true
 * ```
 */
export function probeDrift(
  before: ProbeCalibration,
  after: ProbeCalibration,
  options: { readonly tolerance?: number } = {},
): ProbeDrift {
  const faults = new Faults('probeDrift');
  const [from, to] = [readProbeLine(before, 'before', faults), readProbeLine(after, 'after', faults)];
  const { tolerance = probeDefaults.drift } = faults.object(options, 'options', 'options', ['tolerance']);
  const most = faults.number(tolerance, 'options.tolerance', 'a drift in pH', { above: 0, to: 14 });
  faults.done();
  const shiftAt = (pH: number) => to.offset - from.offset + (to.slope - from.slope) * (pH - 7);
  const shifts = Array.from({ length: 11 }, (_, k) => ({ pH: k + 2, shift: shiftAt(k + 2) }));
  const worst = Math.abs(shiftAt(4)) > Math.abs(shiftAt(10)) ? shiftAt(4) : shiftAt(10);
  const recalibrate = Math.abs(worst) > most;
  const words = `The probe moved by up to ${fixed(Math.abs(worst), 2)} pH between pH 4 and 10`;
  return frozen({
    offset: to.offset - from.offset,
    slope: 100 * (to.slope - from.slope),
    shifts,
    worst,
    recalibrate,
    notes: [
      recalibrate
        ? `${words}: calibrate again before buffers are measured, and correct the readings of the titration.`
        : `${words}, within ${most}: it may stay as it is, and is best checked again before buffers are measured.`,
    ],
  });
}
