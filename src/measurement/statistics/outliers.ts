import { entryOf } from '../../entry-of.js';
import { studentTQuantile } from '../../solver/students-t.js';
import type { Source } from '../../source.js';

/** A test of the value that lies farthest out. It tells; nobody removes. */
export interface OutlierTest {
  readonly test: 'Dixon' | 'Grubbs';
  /** The value that is tested. */
  readonly value: number;
  /** Where it stands in the values given, from 0. */
  readonly index: number;
  /** Q of Dixon or G of Grubbs. */
  readonly statistic: number;
  /** What the statistic exceeds by chance with the probability 1 − level. */
  readonly critical: number;
  readonly level: number;
  /** Whether the statistic is larger. */
  readonly isOutlier: boolean;
  readonly source: Source;
}

/** The confidence levels that the table of Dixon's critical values has. */
export type OutlierLevel = 0.9 | 0.95 | 0.99;

const dixonSource: Source = {
  kind: 'published',
  work: 'dixon-1951',
  where: 'the density of r10, integrated numerically (tests/reference/dixon.py), both ends suspect',
  checked:
    'D. B. Rorabacher, Anal. Chem. 63, 139–146 (1991), table 2, from memory: the same within 0.006, since some of his are interpolated',
};

const grubbsSource: Source = {
  kind: 'fromMemory',
  work: 'grubbs-1969',
  note: 'the critical value by Student’s t, two-sided, as in the NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1',
};

/** Of Dixon's Q for 3 to 10 values. */
const dixonCritical: Readonly<Record<string, readonly number[]>> = {
  '0.9': [0.9413, 0.7655, 0.6424, 0.5624, 0.5073, 0.4671, 0.4363, 0.4119],
  '0.95': [0.9702, 0.8298, 0.7102, 0.6275, 0.569, 0.5256, 0.4922, 0.4656],
  '0.99': [0.994, 0.9207, 0.8232, 0.7427, 0.6811, 0.6336, 0.5963, 0.5661],
};

/**
 * Dixon's Q, gap over range, of the end of 3 to 10 values that has the wider gap; undefined for other numbers of values,
 * and where all are equal.
 *
 *   Q = |x_suspect − its neighbour|/(largest − smallest)
 *
 * @internal
 */
export function dixonTest(values: readonly number[], level: OutlierLevel): OutlierTest | undefined {
  const sorted = [...values].sort((a, b) => a - b);
  const critical = entryOf(dixonCritical, String(level))?.[values.length - 3];
  const [low = 0, second = 0] = sorted;
  const [beforeLast = 0, high = 0] = sorted.slice(-2);
  if (critical === undefined || !(high > low)) return undefined;
  const isHigh = high - beforeLast > second - low;
  const value = isHigh ? high : low;
  const statistic = (isHigh ? high - beforeLast : second - low) / (high - low);
  return testOf('Dixon', values.indexOf(value), value, { statistic, critical, level, source: dixonSource });
}

/**
 * Grubbs' G, the largest distance from the mean in standard deviations; undefined for fewer than three values, and where
 * all are equal.
 *
 *   G = max |x − mean|/s,   critical (n − 1)/√n · √(t²/(n − 2 + t²)),   t = t(1 − (1 − level)/2n, n − 2)
 *
 * @internal
 */
export function grubbsTest(
  values: readonly number[],
  { mean, s }: { readonly mean: number; readonly s: number },
  level: OutlierLevel,
): OutlierTest | undefined {
  const n = values.length;
  if (n < 3 || !(s > 0)) return undefined;
  const distances = values.map((value) => Math.abs(value - mean));
  const index = distances.reduce((most, d, k) => (d > (distances[most] as number) ? k : most), 0);
  const t = studentTQuantile(1 - (1 - level) / (2 * n), n - 2);
  const critical = ((n - 1) / Math.sqrt(n)) * Math.sqrt((t * t) / (n - 2 + t * t));
  const statistic = (distances[index] as number) / s;
  return testOf('Grubbs', index, values[index] as number, {
    statistic,
    critical,
    level,
    source: grubbsSource,
  });
}

const testOf = (
  test: OutlierTest['test'],
  index: number,
  value: number,
  found: Pick<OutlierTest, 'statistic' | 'critical' | 'level' | 'source'>,
): OutlierTest => ({ test, value, index, ...found, isOutlier: found.statistic > found.critical });
