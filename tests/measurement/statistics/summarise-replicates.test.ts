import fc from 'fast-check';
import { summariseReplicates } from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';
import dixon from '../../reference/dixon.json' with { type: 'json' };

const outlierOf = (values: readonly number[], test: string, outlierLevel: 0.9 | 0.95 | 0.99 = 0.95) =>
  summariseReplicates(values, { outlierLevel }).outlierTests.find((found) => found.test === test);

describe('summariseReplicates', () => {
  test('mean, s, relative s and interval', () => {
    const { mean, standardDeviation, relativePercent, interval, count } = summariseReplicates([1, 2, 3, 4]);
    expect(count).toBe(4);
    expect(mean).toMatchObject({ value: 2.5, degreesOfFreedom: 3 });
    expect(standardDeviation).toBeCloseTo(Math.sqrt(5 / 3), 15);
    expect(relativePercent).toBeCloseTo((100 * Math.sqrt(5 / 3)) / 2.5, 12);
    expect(interval.to - 2.5).toBeCloseTo((3.1824463 * Math.sqrt(5 / 3)) / 2, 7); // t(0.975, 3) of any table, 3.182
  });

  test('a shift moves the mean and nothing else; a factor scales all', () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 10, max: 20, noNaN: true }), { minLength: 3, maxLength: 10 }),
        (values) => {
          const plain = summariseReplicates(values);
          const moved = summariseReplicates(values.map((x) => x + 64));
          const scaled = summariseReplicates(values.map((x) => 4 * x));
          expect(moved.standardDeviation).toBeCloseTo(plain.standardDeviation, 12);
          expect(moved.mean.value).toBeCloseTo(plain.mean.value + 64, 12);
          expect(scaled.standardDeviation).toBeCloseTo(4 * plain.standardDeviation, 12);
          expect(scaled.outlierTests.map(({ index }) => index)).toEqual(
            plain.outlierTests.map(({ index }) => index),
          );
        },
      ),
    ));

  test('equal values have no scatter, and nothing to test', () => {
    const { standardDeviation, outlierTests, interval } = summariseReplicates([7, 7, 7]);
    expect([standardDeviation, outlierTests, interval.from, interval.to]).toEqual([0, [], 7, 7]);
  });

  test('an outlier is named, and stays in the mean', () => {
    const { mean, notes, outlierTests } = summariseReplicates([10, 10.1, 9.9, 10, 15]);
    expect(mean.value).toBeCloseTo(11, 12);
    expect(outlierTests.every(({ isOutlier, index }) => isOutlier && index === 4)).toBe(true);
    expect(notes).toHaveLength(2);
  });
});

describe('Dixon', () => {
  test.each(dixon)('has the critical values of its distribution for $n values', ({ n, ...critical }) => {
    const values = Array.from({ length: n }, (_, k) => k);
    for (const level of [0.9, 0.95, 0.99] as const)
      expect(outlierOf(values, 'Dixon', level)?.critical).toBeCloseTo(
        critical[level.toFixed(2) as '0.90'],
        4,
      );
  });

  // D. B. Rorabacher, Anal. Chem. 63, 139–146 (1991), table 2 (both ends), from memory; some are interpolated there
  test.each([
    [0.9, [0.941, 0.765, 0.642, 0.56, 0.507, 0.468, 0.437, 0.412]],
    [0.95, [0.97, 0.829, 0.71, 0.625, 0.568, 0.526, 0.493, 0.466]],
    [0.99, [0.994, 0.926, 0.821, 0.74, 0.68, 0.634, 0.598, 0.568]],
  ] as const)('is within 0.006 of the printed table at %s', (level, printed) => {
    for (const [k, value] of printed.entries()) {
      const critical = outlierOf(
        Array.from({ length: k + 3 }, (_, x) => x),
        'Dixon',
        level,
      )?.critical;
      expect(Math.abs((critical ?? 0) - value)).toBeLessThan(0.006);
    }
  });

  test('takes the end with the wider gap', () => {
    expect(outlierOf([5, 1, 4.9, 5.2], 'Dixon')).toMatchObject({ value: 1, index: 1 });
    expect(outlierOf([5, 1, 4.9, 5.2], 'Dixon')?.statistic).toBeCloseTo(3.9 / 4.2, 12);
  });
});

describe('Grubbs', () => {
  // F. E. Grubbs, G. Beck, Technometrics 14, 847–854 (1972), table 1 at 2.5 % one-sided, that is 5 % for both ends; from memory
  test.each([
    [3, 1.155],
    [4, 1.481],
    [5, 1.715],
    [6, 1.887],
    [7, 2.02],
    [8, 2.126],
    [9, 2.215],
    [10, 2.29],
    [15, 2.549],
    [20, 2.709],
  ])('has the critical value of the table for %d values', (n, printed) => {
    const values = Array.from({ length: n }, (_, k) => k);
    // half a unit of the last digit, and one more where the table was rounded twice
    expect(Math.abs((outlierOf(values, 'Grubbs')?.critical ?? 0) - printed)).toBeLessThan(0.0015);
  });

  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1: mass spectrometer, G = 2.46876, critical 2.032; from memory
  test('finds the outlier of the handbook', () => {
    const found = outlierOf([199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57], 'Grubbs');
    expect(found).toMatchObject({ value: 245.57, isOutlier: true });
    expect(found?.statistic).toBeCloseTo(2.46876, 5);
  });
});
