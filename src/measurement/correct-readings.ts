import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { numberAt } from '../solver/number-at.js';
import { plausiblePH } from './plausible-ph.js';
import type { ProbeCalibration } from './probe-calibration.js';
import { readReadingColumns } from './read-reading-columns.js';
import type { Readings } from './readings.js';

/** The calibrations about a run. */
export interface CorrectionOptions {
  readonly before: ProbeCalibration;
  /** The check after the run, in the same way; without it the probe is taken as steady. */
  readonly after?: ProbeCalibration;
}

/** The line of a calibration that has been read. @internal */
export interface ProbeLine {
  /** As a fraction of the ideal slope. */
  readonly slope: number;
  /** In pH at pH 7. */
  readonly offset: number;
}

/**
 * Readings of a meter as they would be with a perfect probe: pH = 7 + (shown − 7 − offset)/slope.
 *
 * With a check after the run, slope and offset go on a straight line from the calibration before to the check after: by
 * the time of each reading where there are times, otherwise by the number of readings; `notes` say which.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { pHStandards } from 'protolysis';
 * import { calibrateProbe, correctReadings } from 'protolysis/measurement';
 *
 * const before = calibrateProbe([
 *   { standard: pHStandards.phthalate, celsius: 25, pH: 4.105 },
 *   { standard: pHStandards.borax, celsius: 25, pH: 9.28 },
 * ]);
 * correctReadings({ mL: [0, 10, 20], pH: [3.1, 5.1, 7.1], notes: [] }, { before }).pH; // => [3.00, 5.00, 7.00]
 * ```
 */
export function correctReadings(readings: Readings, options: CorrectionOptions): Readings {
  const faults = new Faults('correctReadings');
  const given = readReadingColumns(readings, 'readings', faults, { least: 1, rising: false });
  const unread = faults.object(options, 'options', 'the calibrations { before, after }', ['before', 'after']);
  const before = readProbeLine(unread.before, 'options.before', faults);
  const after = unread.after === undefined ? before : readProbeLine(unread.after, 'options.after', faults);
  faults.done();
  const { seconds } = given;
  const shares = sharesOf(seconds ?? given.mL.map((_, k) => k));
  const pH = given.pH.map((shown, k) => {
    const share = numberAt(shares, k);
    const slope = before.slope + share * (after.slope - before.slope);
    const offset = before.offset + share * (after.offset - before.offset);
    return 7 + (shown - 7 - offset) / slope;
  });
  const how =
    unread.after === undefined
      ? 'The pH is corrected by the calibration before the run.'
      : `The pH is corrected by the calibration before and the check after, drift spread by ${seconds ? 'time' : 'number of reading'}.`;
  const { from, to } = plausiblePH;
  const beyond = pH.filter((each) => each < from || each > to).length;
  const off =
    beyond > 0 ? [`${beyond} of ${pH.length} lie outside ${from} to ${to} then: doubt the calibration.`] : [];
  return frozen({ mL: given.mL, pH, ...(seconds ? { seconds } : {}), notes: [...given.notes, how, ...off] });
}

/** Reads the line of a calibration. @internal */
export function readProbeLine(value: unknown, path: string, faults: Faults): ProbeLine {
  const unread = faults.object(value, path, 'a calibration, as from calibrateProbe');
  const valueIn = (key: 'slope' | 'offset') =>
    faults.object(unread[key], `${path}.${key}`, 'an estimate').value;
  return {
    slope:
      faults.number(valueIn('slope'), `${path}.slope.value`, 'a slope in %', { from: 10, to: 1000 }) / 100,
    offset: faults.number(valueIn('offset'), `${path}.offset.value`, 'an offset in pH', {
      from: -20,
      to: 20,
    }),
  };
}

/** How much of the run has passed at each reading, from 0 to 1. */
function sharesOf(times: readonly number[]): readonly number[] {
  const [from, to] = [Math.min(...times), Math.max(...times)];
  return times.map((time) => (to > from ? (time - from) / (to - from) : 0));
}
