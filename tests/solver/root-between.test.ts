import { describe, expect, test } from 'vitest';
import { rootBetween } from '../../src/solver/root-between.js';

/** How the search ended, and how often the function was asked. */
function searched(f: (x: number) => number, low: number, high: number) {
  let evaluations = 0;
  const counting = (x: number) => {
    evaluations += 1;
    return f(x);
  };
  return { found: rootBetween(counting, low, high), evaluations };
}

/** The root, and how often the function was asked. */
function solve(f: (x: number) => number, low: number, high: number) {
  const { found, evaluations } = searched(f, low, high);
  return { root: found.status === 'found' ? found.x : Number.NaN, evaluations };
}

describe('rootBetween', () => {
  test.each([
    ['a line', (x: number) => x - 0.3, 0, 1, 0.3],
    ['falling', (x: number) => 0.3 - x, 0, 1, 0.3],
    ['x² − 2', (x: number) => x * x - 2, 0, 2, Math.SQRT2],
    ['ends the other way round', (x: number) => x * x - 2, 2, 0, Math.SQRT2],
    ['an exponential over 20 decades', (x: number) => Math.exp(x) - 1e-10, -46, 0, Math.log(1e-10)],
    ['a step', (x: number) => (x < 1 / 3 ? -1 : 1), 0, 1, 1 / 3],
    ['a triple root', (x: number) => (x - 0.1) ** 3, 0, 1, 0.1],
  ])('finds the root of %s to the last two doubles', (_, f, low, high, expected) => {
    const { root, evaluations } = solve(f, low, high);
    // f is rounded once or twice, so its sign is certain only a few doubles from the root
    expect(Math.abs(root / expected - 1)).toBeLessThanOrEqual(4 * Number.EPSILON);
    expect(evaluations).toBeLessThanOrEqual(2 + 2 * 60); // two a pass, and each pass halves the bracket
  });

  test('a root at an end needs no search', () => {
    expect(solve((x) => x, 0, 1)).toEqual({ root: 0, evaluations: 2 });
    expect(solve((x) => x - 1, 0, 1)).toEqual({ root: 1, evaluations: 2 });
  });

  test('a smooth function takes a dozen and a half evaluations, not fifty', () => {
    // each pass doubles the bits that are right: six go from 1 to 53, two more close the bracket from both sides
    expect(solve((x) => x * x - 2, 0, 2).evaluations).toBeLessThanOrEqual(2 + 2 * 8);
  });

  test('gives no number where the signs at the ends are alike', () => {
    expect(rootBetween((x) => x * x + 1, -1, 2)).toEqual({ status: 'no-sign-change', nearest: -1 });
    expect(rootBetween((x) => -1 - x * x, -2, 1)).toEqual({ status: 'no-sign-change', nearest: 1 });
  });

  test.each([
    ['the lower end', (x: number) => Math.log(x), -1, 2, -1, 2],
    ['the upper end', (x: number) => (x < 1 ? -1 : 1 / 0), 0, 1, 1, 2],
    ['the middle', (x: number) => (x === 0.5 ? Number.NaN : x - 0.3), 0, 1, 0.5, 3],
    ["where Ridders' step leads", (x: number) => (x === 0.25 ? Number.NaN : x - 0.25), 0, 1, 0.25, 4],
  ])('says where the function is no number, and asks no more: %s', (_, f, low, high, at, asked) => {
    const { found, evaluations } = searched(f, low, high);
    expect(found).toEqual({ status: 'not-finite', at });
    expect(evaluations).toBe(asked);
  });

  test('ends at the first exact root: of a line the middle, or the step of Ridders', () => {
    expect(solve((x) => x - 0.5, 0, 1)).toEqual({ root: 0.5, evaluations: 3 });
    expect(solve((x) => x - 0.25, 0, 1)).toEqual({ root: 0.25, evaluations: 4 });
  });

  test('bisects though products of values are beyond the range of doubles', () => {
    expect(solve((x) => (x - 0.3) * 1e-300, 0, 1).root).toBeCloseTo(0.3, 12);
    expect(solve((x) => (x - 0.3) * 1e300, 0, 1).root).toBeCloseTo(0.3, 12);
  });
});
