import { describe, expect, test } from 'vitest';
import { runsTest } from '../../../src/measurement/fit/runs-test.js';

describe('runsTest', () => {
  test('counts every order of three and four signs', () => {
    // of the 35 orders of + + + − − − −, those with so many runs or fewer, counted by hand from the formula for C
    const orders = 35;
    const withRuns = [0, 0, 2, 5, 12, 9, 6, 1]; // adds to 35
    const cases = new Map<number, number[]>([
      [2, [1, 1, 1, -1, -1, -1, -1]],
      [3, [1, 1, -1, -1, -1, -1, 1]],
      [4, [1, 1, -1, -1, 1, -1, -1]],
      [7, [-1, 1, -1, 1, -1, 1, -1]],
    ]);
    for (const [runs, signs] of cases) {
      const test = runsTest(signs);
      expect(test.runs).toBe(runs);
      const ways = withRuns.slice(0, runs + 1).reduce((sum, each) => sum + each, 0);
      expect(test.probability).toBeCloseTo(ways / orders, 12);
      expect(test.expected).toBeCloseTo(1 + 24 / 7, 12);
    }
  });

  test('says nothing of residuals of one sign, and leaves out zeros', () => {
    expect(runsTest([1, 2, 3]).probability).toBe(1);
    expect(runsTest([]).probability).toBe(1);
    expect(runsTest([1, 0, 1, -1]).runs).toBe(2);
  });

  test('stays finite for ten thousand readings', () => {
    const signs = Array.from({ length: 10_000 }, (_, k) => (k % 4 < 2 ? 1 : -1));
    const { probability, runs } = runsTest(signs);
    expect(runs).toBe(5000);
    expect(probability).toBeGreaterThan(0.4);
    expect(probability).toBeLessThan(0.6);
  });
});
