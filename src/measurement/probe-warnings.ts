import { fixed } from '../print-number.js';
import { type ProbeCalibration, probeDefaults } from './probe-calibration.js';
import type { StandardTable } from './standard-ph.js';

/** A standard in which a probe was read. @internal */
export interface ReadPoint {
  readonly table: StandardTable;
  readonly celsius: number;
  /** Of the standard at its temperature. */
  readonly pH: number;
  /** What the probe showed, on the scale of an ideal one. */
  readonly shown: number;
}

/** What looks wrong with a calibration. @internal */
export function probeWarnings(
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
        `${(points[k] as ReadPoint).table.name} lies ${fixed(residual, 2)} pH off the line: a spoiled buffer, or one not settled.`,
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
