import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { studentTQuantile } from '../../solver/students-t.js';
import type { Estimate } from '../estimate.js';
import { levelLimits } from '../uncertainty/budget.js';
import { meanAndDeviation } from './mean-and-deviation.js';
import { dixonTest, grubbsTest, type OutlierLevel, type OutlierTest } from './outliers.js';

/** What replicates tell. Plain data: it survives JSON. */
export interface ReplicateSummary {
  readonly count: number;
  /** The mean, with s/√n as its standard uncertainty and n − 1 degrees of freedom. */
  readonly mean: Estimate;
  /** s, of one value. */
  readonly standardDeviation: number;
  /** s in % of the mean; null where the mean is zero. */
  readonly relativePercent: number | null;
  /** Of the mean: mean ± t·s/√n. */
  readonly interval: { readonly from: number; readonly to: number; readonly level: number };
  /** Dixon's test for 3 to 10 values, Grubbs' for 3 or more. The summary is of all values, whatever they say. */
  readonly outlierTests: readonly OutlierTest[];
  readonly notes: readonly string[];
}

/** How replicates are judged. */
export interface ReplicateOptions {
  /** Of the confidence interval; 0.95 if left out. */
  readonly level?: number;
  /** Of the outlier tests: 0.9, 0.95 or 0.99; 0.95 if left out. */
  readonly outlierLevel?: OutlierLevel;
}

/** What `summariseReplicates` takes by default. */
export const replicateDefaults = /*#__PURE__*/ frozen({ level: 0.95, outlierLevel: 0.95 } as const);

/**
 * Mean, standard deviation, relative standard deviation, confidence interval and outlier tests of replicates.
 *
 *   s² = Σ (x − mean)²/(n − 1),   mean ± t(½(1 + level), n − 1)·s/√n
 *
 * A value that fails a test is named in `notes` and stays in all figures: look for its cause at the bench before you leave
 * it out, and say so in the report.
 *
 * @param values - 2 to 10 000 results of the same measurement, in one unit
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { summariseReplicates } from 'protolysis/measurement';
 *
 * const { mean, interval, notes } = summariseReplicates([24.31, 24.28, 24.33, 24.62]);
 * mean.value; // => 24.385
 * interval.to; // => 24.64
 * notes[0]; // => 'Dixon: 24.62 is an outlier at 95 % (0.853 over 0.830). It stays in all figures.'
 * ```
 */
export function summariseReplicates(
  values: readonly number[],
  options: ReplicateOptions = {},
): ReplicateSummary {
  const faults = new Faults('summariseReplicates');
  const list = faults.list(values, 'values', 'a list of results', 2, 10_000);
  const read = list.map((value, k) =>
    faults.number(value, `values[${k}]`, 'a result', { from: -1e100, to: 1e100 }),
  );
  const { level, outlierLevel } = {
    ...replicateDefaults,
    ...faults.object(options, 'options', 'options', ['level', 'outlierLevel']),
  } as Readonly<Record<string, unknown>>;
  const share = faults.number(level, 'options.level', 'a share', levelLimits);
  const tested = faults.number(outlierLevel, 'options.outlierLevel', 'a level', { from: 0.9, to: 0.99 });
  if (tested !== 0.9 && tested !== 0.95 && tested !== 0.99)
    faults.add('out-of-range', 'options.outlierLevel', '0.9, 0.95 or 0.99', tested);
  faults.done();
  return frozen(summaryOf(read, share, tested as OutlierLevel));
}

/** The same for values and levels that have been read. @internal */
export function summaryOf(
  values: readonly number[],
  level: number,
  outlierLevel: OutlierLevel,
): ReplicateSummary {
  const n = values.length;
  const { mean, s } = meanAndDeviation(values, values[0] ?? 0);
  const standardUncertainty = s / Math.sqrt(n);
  const half = studentTQuantile((1 + level) / 2, n - 1) * standardUncertainty;
  const outlierTests = [
    dixonTest(values, outlierLevel),
    grubbsTest(values, { mean, s }, outlierLevel),
  ].filter((test) => test !== undefined);
  return {
    count: n,
    mean: { value: mean, standardUncertainty, degreesOfFreedom: n - 1 },
    standardDeviation: s,
    relativePercent: mean === 0 ? null : (100 * s) / Math.abs(mean),
    interval: { from: mean - half, to: mean + half, level },
    outlierTests,
    notes: outlierTests
      .filter(({ isOutlier }) => isOutlier)
      .map(
        ({ test, value, statistic, critical }) =>
          `${test}: ${value} is an outlier at ${100 * outlierLevel} % (${statistic.toFixed(3)} over ${critical.toFixed(3)}). It stays in all figures.`,
      ),
  };
}
