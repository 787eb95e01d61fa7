import { gasConstant, zeroCelsius } from '../equilibrium/temperature/kelvin.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { fixed } from '../print-number.js';
import type { Source } from '../source.js';
import type { PHStandard } from '../substance/ph-standard.js';
import type { Estimate } from './estimate.js';
import { pHIn, readStandard, readTemperature } from './standard-ph.js';

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

/** A straight line through standards, and what to think of it. Plain data: it survives JSON. */
export interface ProbeCalibration {
  /** What the probe gave: `mV`, or the `pH` of a meter. */
  readonly reads: 'mV' | 'pH';
  /** % of the Nernst slope. */
  readonly slope: Estimate;
  /** In pH, what the probe shows too much at pH 7; positive where it shows a pH too high. */
  readonly offset: Estimate;
  /** The offset as a potential, mV: what the probe gives at pH 7 and the mean temperature. */
  readonly offsetMV: number;
  /** pH that the line gives less that of the standard, in the order given. */
  readonly residuals: readonly number[];
  /** Of the standards, the lowest and highest pH, and the mean temperature, °C. */
  readonly range: { readonly from: number; readonly to: number; readonly celsius: number };
  /** What looks wrong, in words; empty where nothing does. */
  readonly warnings: readonly string[];
  readonly source: Source;
}

/** When a calibration is doubted. */
export const probeDefaults = /*#__PURE__*/ frozen({
  /** % of the Nernst slope. */
  slope: { from: 95, to: 105 },
  /** mV at pH 7. */
  offset: 30,
  /** In pH, between the lowest and the highest standard. */
  span: 2,
  /** In pH, of one standard from the line. */
  residual: 0.05,
  /** °C, between standards, or standards and sample. */
  celsius: 3,
  /** In pH, between the calibration and a later check. */
  drift: 0.05,
  /** In pH, the standard uncertainty of one standard with its convention. */
  standardUncertainty: 0.005,
  source: {
    kind: 'commonPractice',
    note: 'limits of teaching laboratories; the uncertainty of a standard is half of the expanded 0.01 of the IUPAC recommendations of 2002, from memory',
  },
} as const);

/** mV per pH of an ideal probe: ln 10·R·T/F, with F as fixed in the SI of 2019. @internal */
export const nernstSlope = (celsius: number): number =>
  (1000 * Math.LN10 * gasConstant * (celsius + zeroCelsius)) / 96485.33212331;

/**
 * The slope and offset of a probe from what it showed in two standards or more, by the least-squares line
 *
 *   y = 7 + offset + slope·(pH(S) − 7)        y the pH shown, or 7 − E/k with k = ln 10·R·T/F
 *
 * With two standards the uncertainty is that of the standards; with more it is the scatter about the line, and
 * `residuals` show it. That the potential is the same at every temperature where pH is 7 is assumed, as meters do.
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
  const t =
    sample === undefined
      ? undefined
      : faults.number(
          faults.object(sample, 'options.sample', 'a sample { celsius }', ['celsius']).celsius,
          'options.sample.celsius',
          'a temperature in °C',
          { from: 0, to: 100 },
        );
  if (!faults.any && new Set(read.map(({ pH }) => pH)).size < 2)
    faults.add('conflict', 'points', 'standards of at least two pH', list);
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
  return frozen({ ...calibration, warnings: warningsOf(calibration, read, t) });
}

interface ReadPoint {
  readonly name: string;
  readonly celsius: number;
  /** Of the standard at its temperature. */
  readonly pH: number;
  /** What the probe showed, on the scale of an ideal one. */
  readonly shown: number;
}

const kindOf = (first: unknown): 'mV' | 'pH' => {
  try {
    return (first as CalibrationPoint | undefined)?.mV === undefined ? 'pH' : 'mV';
  } catch {
    return 'pH';
  }
};

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
  return { name: table.name, celsius, pH: pHIn(table, celsius), shown };
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
  const s = freedom > 0 ? Math.sqrt(squares / freedom) : probeDefaults.standardUncertainty;
  const degreesOfFreedom = freedom > 0 ? freedom : null;
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

function warningsOf(
  { slope, offsetMV, residuals, range }: Omit<ProbeCalibration, 'warnings'>,
  points: readonly ReadPoint[],
  sample: number | undefined,
): readonly string[] {
  const limits = probeDefaults;
  const warnings: string[] = [];
  const percent = fixed(slope.value, 1);
  if (slope.value < limits.slope.from)
    warnings.push(
      `The slope is ${percent} % of the ideal one, under ${limits.slope.from} %: clean or replace the probe, or use fresh buffers.`,
    );
  if (slope.value > limits.slope.to)
    warnings.push(
      `The slope is ${percent} % of the ideal one, over ${limits.slope.to} %: a buffer is spoiled or exchanged for another.`,
    );
  if (Math.abs(offsetMV) > limits.offset)
    warnings.push(
      `The probe gives ${fixed(offsetMV, 0)} mV at pH 7, more than ${limits.offset} mV from zero: check its filling and its junction.`,
    );
  if (range.to - range.from < limits.span)
    warnings.push(
      `The standards lie only ${fixed(range.to - range.from, 2)} pH apart: the slope is poorly known beyond them.`,
    );
  for (const [k, residual] of residuals.entries())
    if (Math.abs(residual) > limits.residual)
      warnings.push(
        `${(points[k] as ReadPoint).name} lies ${fixed(residual, 2)} pH off the line: a spoiled buffer, or one not settled.`,
      );
  const temperatures = points.map(({ celsius }) => celsius);
  const [cold, warm] = [Math.min(...temperatures), Math.max(...temperatures)];
  if (warm - cold > limits.celsius)
    warnings.push(`The standards were at ${cold} to ${warm} °C: bring them to one temperature.`);
  if (sample !== undefined && Math.abs(sample - range.celsius) > limits.celsius)
    warnings.push(
      `The sample is at ${sample} °C, the standards at ${fixed(range.celsius, 1)} °C: calibrate at the temperature of the sample.`,
    );
  return warnings;
}
