import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { randomFrom, seedLimits } from '../../../src/measurement/statistics/random.js';
import rows from '../../reference/random-numbers.json' with { type: 'json' };

const draws = (count: number, next: () => number) => Array.from({ length: count }, () => next());
const mean = (values: readonly number[]) => values.reduce((sum, x) => sum + x, 0) / values.length;

// Python's whole numbers and floats, by tests/reference/random-numbers.py: to the last bit.
test.each(rows)(
  'the seed $seed gives the numbers that another language gives',
  ({ seed, uniform, normal }) => {
    expect(draws(uniform.length, randomFrom(seed).uniform)).toEqual(uniform);
    expect(draws(normal.length, randomFrom(seed).normal)).toEqual(normal);
  },
);

test('each seed has its own numbers, and each generator its own place among them', () =>
  fc.assert(
    fc.property(fc.integer({ min: 0, max: seedLimits.to - 1 }), (seed) => {
      const [first, again, next] = [randomFrom(seed), randomFrom(seed), randomFrom(seed + 1)];
      const numbers = draws(5, first.normal);
      expect(draws(5, again.normal)).toEqual(numbers);
      expect(draws(5, next.normal)).not.toEqual(numbers);
    }),
  ));

const many = 200_000;

/** Within five standard errors of a mean over so many: the draws are fixed, and one honest seed in a million misses. */
const within = (value: number, expected: number, deviation: number): void =>
  expect(Math.abs(value - expected)).toBeLessThan((5 * deviation) / Math.sqrt(many));

test('uniform numbers fill [0, 1) evenly', () => {
  const numbers = draws(many, randomFrom(3).uniform);
  expect(numbers.every((u) => u >= 0 && u < 1)).toBe(true);
  for (let k = 0; k < 10; k += 1)
    within(mean(numbers.map((u) => (Math.floor(10 * u) === k ? 1 : 0))), 0.1, 0.3);
  within(mean(numbers.slice(1).map((u, k) => u * (numbers[k] as number))), 0.25, 0.22); // neighbours are independent
});

describe('normal numbers', () => {
  const numbers = draws(many, randomFrom(4).normal);

  // Moments of the normal distribution: 0, 1, 0, 3, 0, 15; the deviation of xⁿ is √(m₂ₙ − mₙ²), with m₈ = 105, m₁₂ = 10395.
  test.each([
    [1, 0, 1],
    [2, 1, Math.sqrt(2)],
    [3, 0, Math.sqrt(15)],
    [4, 3, Math.sqrt(96)],
    [6, 15, Math.sqrt(10170)],
  ])('have the moment of order %d', (order, moment, deviation) =>
    within(mean(numbers.map((x) => x ** order)), moment, deviation),
  );

  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1, the normal distribution's cumulative table.
  test.each([
    [0.5, 0.69146],
    [1, 0.84134],
    [1.5, 0.93319],
    [2, 0.97725],
    [3, 0.99865],
  ])('lie below %d as often as the table says', (x, share) => {
    within(mean(numbers.map((z) => (z < x ? 1 : 0))), share, Math.sqrt(share * (1 - share)));
    within(mean(numbers.map((z) => (z < -x ? 1 : 0))), 1 - share, Math.sqrt(share * (1 - share)));
  });
});
