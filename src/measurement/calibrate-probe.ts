import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { fieldsOf } from '../input/safe-read.js';
import type { PHStandard } from '../substance/ph-standard.js';
import { nernstSlope } from './nernst-slope.js';
import { type ProbeCalibration, probeDefaults } from './probe-calibration.js';
import { probeWarnings, type ReadPoint } from './probe-warnings.js';
import { pHIn, readStandard, readTemperature, type StandardTable } from './standard-ph.js';

/** What a probe showed in one standard: its potential, or the pH that a meter made of it. */
export interface CalibrationPoint {
  /** One of `pHStandards`, or one of your own. */
  readonly standard: PHStandard;
  /** Temperature of the standard, °C. */
  readonly celsius: number;
  /** mV, of the probe; falls as the pH rises. */
  readonly mV?: number;
  /** As the meter showed it. */
  readonly pH?: number;
}

/** What a calibration is judged by. */
export interface CalibrationOptions {
  /** Temperature of what will be measured, °C; by default not compared. */
  readonly sample?: { readonly celsius: number };
}

/**
 * The slope and offset of a probe from what it showed in two standards or more, by the least-squares line
 *
 *   y = 7 + offset + slope·(pH(S) − 7)        y the pH shown, or 7 − E/k with k = ln 10·R·T/F
 *
 * With two standards the uncertainty is that of the standards; with more it is the scatter about the line, which
 * `residuals` show, but no less than that of the standards: a few readings lie on a line by chance. The potential at pH 7 is
 * taken as the same at every temperature, as meters take it.
 *
 * Source: R. P. Buck et al., Pure Appl. Chem. 74, 2169–2200 (2002), doi:10.1351/pac200274112169 (multi-point
 * calibration).
 *
 * @param points - two to twenty standards, each with `mV` or each with `pH`
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { pHStandards } from 'protolysis';
 * import { calibrateProbe } from 'protolysis/measurement';
 *
 * const { slope, offsetMV, warnings } = calibrateProbe([
 *   { standard: pHStandards.phthalate, celsius: 25, mV: 172.6 },
 *   { standard: pHStandards.phosphateEqual, celsius: 25, mV: 6.2 },
 * ]);
 * slope.value; // => 98.3
 * offsetMV; // => -1.7
 * warnings; // => []
 * ```
 */
export function calibrateProbe(
  points: readonly CalibrationPoint[],
  options: CalibrationOptions = {},
): ProbeCalibration {
  const faults = new Faults('calibrateProbe');
  const list = faults.list(points, 'points', 'a list of standards', 2, 20);
  const kind = kindOf(list[0]);
  const read = list.map((point, k) => readPoint(point, `points[${k}]`, kind, faults));
  const { sample } = faults.object(options, 'options', 'options', ['sample']);
  const sampleCelsius = sample === undefined ? undefined : readSampleCelsius(sample, faults);
  if (!faults.any && new Set(read.map(({ pH }) => pH)).size < 2)
    faults.add('conflict', 'points', 'standards of at least two pH', list);
  if (!faults.any && read.every(({ table }) => isSame(table, read[0]?.table)))
    faults.add(
      'conflict',
      'points',
      'at least two different standards: one at two temperatures tells no slope',
      list,
    );
  faults.done();
  const calibration = lineThrough(read, kind);
  if (!(calibration.slope.value > 0)) {
    faults.add(
      'conflict',
      'points',
      'mV that fall, or pH that rise, from the acid standard to the basic one',
      list,
    );
    faults.done();
  }
  return frozen({ ...calibration, warnings: probeWarnings(calibration, read, sampleCelsius) });
}

/** By their tables: a standard out of JSON is another object. */
const isSame = (a: StandardTable, b: StandardTable | undefined): boolean =>
  a.name === b?.name && a.pH.length === b.pH.length && Array.from(a.pH).every((pH, k) => pH === b.pH[k]);

/** What the first standard was read as: then the others are too. */
const kindOf = (first: unknown): 'mV' | 'pH' => (fieldsOf(first)?.mV === undefined ? 'pH' : 'mV');

function readSampleCelsius(value: unknown, faults: Faults): number {
  const path = 'options.sample';
  const { celsius } = faults.object(value, path, 'a sample { celsius }', ['celsius']);
  return faults.number(celsius, `${path}.celsius`, 'a temperature in °C', { from: 0, to: 100 });
}

function readPoint(value: unknown, path: string, kind: 'mV' | 'pH', faults: Faults): ReadPoint {
  const unread = faults.object(value, path, `{ standard, celsius, ${kind} }`, ['standard', 'celsius', kind]);
  const table = readStandard(unread.standard, `${path}.standard`, faults);
  const celsius = readTemperature(unread.celsius, `${path}.celsius`, table, faults);
  const shown =
    kind === 'mV'
      ? 7 -
        faults.number(unread.mV, `${path}.mV`, 'a potential in mV', { from: -2000, to: 2000 }) /
          nernstSlope(celsius)
      : faults.number(unread.pH, `${path}.pH`, 'a pH', { from: -2, to: 16 });
  return { table, celsius, pH: pHIn(table, celsius), shown };
}

/** The line, about the mean; the offset is its height at pH 7. */
function lineThrough(points: readonly ReadPoint[], reads: 'mV' | 'pH'): Omit<ProbeCalibration, 'warnings'> {
  const n = points.length;
  const mean = (of: (point: ReadPoint) => number) => points.reduce((sum, point) => sum + of(point), 0) / n;
  const [pHMean, shownMean, celsius] = [
    mean(({ pH }) => pH),
    mean(({ shown }) => shown),
    mean((point) => point.celsius),
  ];
  const sxx = n * mean(({ pH }) => (pH - pHMean) ** 2);
  const slope = (n * mean(({ pH, shown }) => (pH - pHMean) * (shown - shownMean))) / sxx;
  const offset = shownMean - 7 + slope * (7 - pHMean);
  const residuals = points.map(({ pH, shown }) => (shown - shownMean) / slope + pHMean - pH);
  const freedom = n - 2;
  const squares = residuals.reduce((sum, each) => sum + (slope * each) ** 2, 0);
  const scatter = freedom > 0 ? Math.sqrt(squares / freedom) : 0;
  const s = Math.max(scatter, probeDefaults.standardUncertainty);
  const degreesOfFreedom = scatter === s ? freedom : null;
  const ofOffset = s * Math.sqrt(1 / n + (7 - pHMean) ** 2 / sxx);
  const at = points.map(({ pH }) => pH);
  return {
    reads,
    slope: { value: 100 * slope, standardUncertainty: (100 * s) / Math.sqrt(sxx), degreesOfFreedom },
    offset: { value: offset, standardUncertainty: ofOffset, degreesOfFreedom },
    offsetMV: -offset * nernstSlope(celsius),
    residuals,
    range: { from: Math.min(...at), to: Math.max(...at), celsius },
    source: probeDefaults.source,
  };
}
