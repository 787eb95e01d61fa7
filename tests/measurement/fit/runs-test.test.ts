import { describe, expect, test } from 'vitest';
import { runsTest } from '../../../src/measurement/fit/runs-test.js';

/** Every order of so many positive and so many negative signs. */
function ordersOf(above: number, below: number): number[][] {
  if (above === 0 && below === 0) return [[]];
  return [
    ...(above > 0 ? ordersOf(above - 1, below).map((rest) => [1, ...rest]) : []),
    ...(below > 0 ? ordersOf(above, below - 1).map((rest) => [-1, ...rest]) : []),
  ];
}

describe('runsTest', () => {
  test('counts the orders of three and four signs that have so many runs or fewer', () => {
    const orders = ordersOf(3, 4);
    const counts = orders.map((signs) => signs.filter((sign, k) => k === 0 || sign !== signs[k - 1]).length);
    expect(orders).toHaveLength(35);
    for (const [k, signs] of orders.entries()) {
      const { runs, probability, expected } = runsTest(signs);
      expect(runs).toBe(counts[k]);
      expect(probability).toBeCloseTo(counts.filter((count) => count <= runs).length / 35, 12);
      expect(expected).toBeCloseTo(counts.reduce((sum, count) => sum + count, 0) / 35, 12);
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
