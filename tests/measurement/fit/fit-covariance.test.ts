import { Matrix } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import { fitCovariance } from '../../../src/measurement/fit/fit-covariance.js';

const sum = (numbers: readonly number[]) => numbers.reduce((total, each) => total + each, 0);

// y = a + b·x with one uncertainty u of each y: the closed forms are those of any book on least squares.
describe('a straight line', () => {
  const x = [0, 1, 2, 4, 7, 11];
  const u = 0.3;
  const line = fitCovariance(new Matrix(x.map((each) => [1 / u, each / u])));
  const mean = sum(x) / x.length;
  const sxx = sum(x.map((each) => (each - mean) ** 2));
  const squares = sum(x.map((each) => each * each));

  test('has the standard uncertainties of its height and slope', () => {
    const [a, b] = line.deviations;
    expect(a).toBeCloseTo(u * Math.sqrt(squares / (x.length * sxx)), 14);
    expect(b).toBeCloseTo(u / Math.sqrt(sxx), 14);
  });

  test('has their correlation, −Σx/√(n·Σx²)', () => {
    const expected = -sum(x) / Math.sqrt(x.length * squares);
    expect(line.correlation[0]?.[1]).toBeCloseTo(expected, 13);
    expect(line.correlation[1]?.[0]).toBeCloseTo(expected, 13);
    expect(line.correlation.map((row, k) => row[k])).toEqual([1, 1]);
  });

  test.each([-3, 0, mean, 20])('has the standard uncertainty of its height at %d', (at) =>
    expect(line.deviationOf([1, at])).toBeCloseTo(u * Math.sqrt(1 / x.length + (at - mean) ** 2 / sxx), 13),
  );

  // two columns of length 1 whose product is r have the singular values √(1 ± r)
  test('has the condition index √((1 + r)/(1 − r)) of its two columns', () => {
    const r = sum(x) / Math.sqrt(x.length * squares);
    expect(line.condition).toBeCloseTo(Math.sqrt((1 + r) / (1 - r)), 12);
    expect(line.inseparable).toEqual([]);
  });

  test('has uncertainties in the unit of each parameter, and all else in none', () => {
    const other = fitCovariance(new Matrix(x.map((each) => [1 / u, (1e6 * each) / u])));
    expect((other.deviations[1] ?? 0) * 1e6).toBeCloseTo(line.deviations[1] ?? 1, 14);
    expect(other.correlation[0]?.[1]).toBeCloseTo(line.correlation[0]?.[1] ?? 1, 13);
    expect(other.condition).toBeCloseTo(line.condition, 12);
  });
});

/** Two columns of length 1 at an angle of which the cosine is r, and one at right angles to both. */
const twoAlike = (r: number) =>
  new Matrix([
    [1, r, 0],
    [0, Math.sqrt(1 - r * r), 0],
    [0, 0, 1],
  ]);

// η = √((1 + r)/(1 − r)) is 30 at r = (30² − 1)/(30² + 1)
test.each([
  { eta: 29.9, groups: [] },
  { eta: 30.1, groups: [[0, 1]] },
])('parameters of condition index $eta: $groups cannot be told apart', ({ eta, groups }) => {
  const found = fitCovariance(twoAlike((eta ** 2 - 1) / (eta ** 2 + 1)));
  expect(found.condition).toBeCloseTo(eta, 9);
  expect(found.inseparable).toEqual(groups);
  expect(found.deviations[0]).toBeCloseTo((eta ** 2 + 1) / (2 * eta), 9); // 1/√(1 − r²)
  expect(found.deviations[2]).toBeCloseTo(1, 12);
});

test('a parameter that moves nothing, and two that move the same, have no uncertainty; the others keep theirs', () => {
  const found = fitCovariance(
    new Matrix([
      [2, 0, 1, 0],
      [0, 0, 0, 0],
      [0, 0, 0, 4],
      [0, 0, 0, 0],
    ]),
  );
  expect(found.deviations).toEqual([null, null, null, expect.closeTo(1 / 4, 14)]);
  expect(found.correlation[0]).toEqual([1, 0, 0, 0]);
  expect(found.inseparable).toContainEqual([0, 2]);
  expect(found.deviationOf([0, 0, 0, 3])).toBeCloseTo(3 / 4, 14);
  expect(found.deviationOf([1, 0, 0, 3])).toBeNull();
});

test('readings that tell nothing of any parameter leave each of them open, by numbers', () => {
  for (const nothing of [0, 5e-324, 1e-200]) {
    const { deviations, correlation, condition } = fitCovariance(
      new Matrix([
        [nothing, 0],
        [0, nothing],
      ]),
    );
    expect(deviations).toEqual([null, null]);
    expect(correlation).toEqual([
      [1, 0],
      [0, 1],
    ]);
    expect(condition).toBe(1e10); // the end of the scale: what rounding alone leaves
  }
});
