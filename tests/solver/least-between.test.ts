import { describe, expect, test } from 'vitest';
import { leastBetween } from '../../src/solver/least-between.js';

describe('leastBetween', () => {
  test('finds the bottom of a parabola, and an end where the function has none', () => {
    const bottom = leastBetween((x) => (x - 0.3) ** 2, 0, 1);
    expect(bottom.status === 'found' && bottom.x).toBeCloseTo(0.3, 7);
    const end = leastBetween((x) => x, 0, 1);
    expect(end.status === 'found' && end.x).toBeCloseTo(0, 7);
  });

  test('begins at the golden sections of the bracket, and asks once a pass', () => {
    const asked: number[] = [];
    const found = leastBetween(
      (x) => {
        asked.push(x);
        return (x - 3.7) ** 2;
      },
      2,
      10,
    );
    const golden = (Math.sqrt(5) - 1) / 2;
    expect(asked[0]).toBeCloseTo(10 - 8 * golden, 14);
    expect(asked[1]).toBeCloseTo(2 + 8 * golden, 14);
    expect(asked).toHaveLength(2 + 40);
    // 8·0.618⁴⁰ is left of the bracket
    expect(found.status === 'found' && Math.abs(found.x - 3.7)).toBeLessThan(8 * golden ** 40);
  });

  test('says where the function is no number, at either section, and asks no more', () => {
    const golden = (Math.sqrt(5) - 1) / 2;
    const asked: number[] = [];
    const noneFrom = (low: number, high: number) =>
      leastBetween(
        (x) => {
          asked.push(x);
          return x > low && x < high ? Number.NaN : x;
        },
        0,
        1,
      );
    expect(noneFrom(0, 0.5)).toEqual({ status: 'not-finite', at: 1 - golden });
    expect(noneFrom(0.5, 1)).toEqual({ status: 'not-finite', at: golden });
    expect(asked).toHaveLength(2 + 2);
  });

  test('gives no number where the function is none', () => {
    expect(leastBetween(() => Number.NaN, 0, 1).status).toBe('not-finite');
    expect(leastBetween((x) => (x < 0.31 ? Number.POSITIVE_INFINITY : x), 0, 1).status).toBe('not-finite');
  });
});
