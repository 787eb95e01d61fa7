import { describe, expect, test } from 'vitest';
import { continuedFraction } from '../../src/solver/continued-fraction.js';

describe('continuedFraction', () => {
  test('is the golden section where every term is one', () =>
    expect(continuedFraction(() => ({ a: 1, b: 1 }))).toBeCloseTo((Math.sqrt(5) - 1) / 2, 14)); // a rounding a term, of about forty

  test('is the tangent of one by the fraction of Lambert, 1/(1 − 1/(3 − 1/(5 − …)))', () => {
    const term = (k: number) => ({ a: k === 1 ? 1 : -1, b: 2 * k - 1 });
    expect(continuedFraction(term)).toBeCloseTo(Math.tan(1), 14);
  });

  test('goes on where a denominator vanishes on the way: 1/(1 − 1/(1 + 1/(1 + 0))) = 2', () => {
    const tops = [1, -1, 1];
    expect(continuedFraction((k) => ({ a: tops[k - 1] ?? 0, b: 1 }))).toBeCloseTo(2, 14);
  });
});
