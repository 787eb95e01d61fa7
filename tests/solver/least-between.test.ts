import { describe, expect, test } from 'vitest';
import { leastBetween } from '../../src/solver/least-between.js';

describe('leastBetween', () => {
  test('finds the bottom of a parabola, and an end where the function has none', () => {
    const bottom = leastBetween((x) => (x - 0.3) ** 2, 0, 1);
    expect(bottom.status === 'found' && bottom.x).toBeCloseTo(0.3, 7);
    const end = leastBetween((x) => x, 0, 1);
    expect(end.status === 'found' && end.x).toBeCloseTo(0, 7);
  });

  test('gives no number where the function is none', () => {
    expect(leastBetween(() => Number.NaN, 0, 1).status).toBe('not-finite');
    expect(leastBetween((x) => (x < 0.31 ? Number.POSITIVE_INFINITY : x), 0, 1).status).toBe('not-finite');
  });
});
