import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { integral } from '../../src/solver/integral.js';

const all = Number.POSITIVE_INFINITY; // a tolerance that one pass of the rule always meets

describe('integral', () => {
  // A rule of 15 points with 7 of Gauss among them is exact to degree 22 (QUADPACK, table of the pairs).
  test.each(Array.from({ length: 23 }, (_, n) => n))('is exact for x^%d in one pass', (n) =>
    expect(integral((x) => x ** n, [0, 1], all).value).toBeCloseTo(1 / (n + 1), 14),
  );

  test('is not exact for x^24: the weights are those of this rule', () =>
    expect(Math.abs(integral((x) => x ** 24, [-1, 1], all).value - 2 / 25)).toBeGreaterThan(1e-14));

  test.each([
    ['√x on [0, 1]', Math.sqrt, [0, 1], 2 / 3],
    ['1/(1 + x²) from −1e4 to 1e4', (x: number) => 1 / (1 + x * x), [-1e4, 1e4], 2 * Math.atan(1e4)],
    ['|x − 0.3| with its kink unnamed', (x: number) => Math.abs(x - 0.3), [0, 1], 0.29],
    ['a jump unnamed', (x: number) => (x > 1 / 3 ? 1 : 0), [0, 1], 2 / 3],
  ])('gives %s within the error it states, and states no more than asked', (_, f, breaks, exact) => {
    const { value, error } = integral(f, breaks, 1e-9);
    expect(error).toBeLessThanOrEqual(1e-9);
    expect(Math.abs(value - exact)).toBeLessThanOrEqual(1e-9);
  });

  test('says what it reached where it cannot reach what was asked', () => {
    const wild = (x: number) => Math.sin(1 / x) / Math.sqrt(x);
    expect(integral(wild, [1e-9, 1], 1e-14).error).toBeGreaterThan(1e-14);
  });

  /** How often f is asked: 15 times for each piece that was looked at. */
  const pieces = (f: (x: number) => number, breaks: readonly number[], tolerance: number) => {
    let asked = 0;
    integral((x) => f(x) + 0 * ++asked, breaks, tolerance);
    return asked / 15;
  };

  test('halves nothing where the error is the tolerance already', () =>
    expect(pieces(() => 0, [0, 1], 0)).toBe(1));

  test('ends with 500 pieces, each halving of which looks at two', () =>
    expect(pieces((x) => Math.sin(1 / x), [1e-9, 1], 0)).toBe(1 + 2 * 499));

  test('ends where no double is left to halve at, whichever end the middle is rounded to', () => {
    const [one, two] = [1 + Number.EPSILON, 1 + 2 * Number.EPSILON];
    const never = -1; // a tolerance that no error meets
    expect(pieces(Math.sqrt, [1, one], never)).toBe(1);
    expect(pieces(Math.sqrt, [one, two], never)).toBe(1);
  });

  test('adds over its breaks, wherever they stand', () =>
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 3, noNaN: true }), { maxLength: 6 }), (inner) => {
        const breaks = [0, ...inner.sort((a, b) => a - b), 3];
        // exact: 1 − e⁻³; rounding of a sum of at most 8 pieces
        expect(
          Math.abs(integral((x) => Math.exp(-x), breaks, 1e-10).value - (1 - Math.exp(-3))),
        ).toBeLessThan(1e-14);
      }),
    ));
});
