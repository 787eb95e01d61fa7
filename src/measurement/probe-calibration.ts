import { frozen } from '../frozen.js';
import type { Source } from '../source.js';
import type { Estimate } from './estimate.js';

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
