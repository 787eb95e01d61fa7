import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { studentTCdf, studentTQuantile } from '../../src/solver/students-t.js';

/** By mpmath's regularised incomplete beta function, and erfc, at 30 digits: the P below −t. */
const tails: readonly (readonly [freedom: number | null, t: number, tail: number])[] = [
  [1.5, 1.2, 0.192982463056858],
  [3, 0.3, 0.39188164601996],
  [10, 2.5, 0.0157234221183044],
  [30, 20, 3.37454183288564e-19],
  [100, 7, 1.4917833018046e-10],
  [1000, 1.8, 0.0360809697351947],
  [null, 1.96, 0.0249978951482204],
  [null, 7, 1.27981254388584e-12],
];

describe('studentTCdf', () => {
  test.each(tails)('with %s degrees of freedom, of −%s', (freedom, t, tail) => {
    // 1e-13 is stated; the last digits are lost in the exponential of a large number
    expect(Math.abs(studentTCdf(-t, freedom) / tail - 1)).toBeLessThan(1e-13);
    expect(studentTCdf(t, freedom)).toBeCloseTo(1 - tail, 14);
  });

  test('is that of Cauchy with one degree of freedom, and t/√(2 + t²) with two', () => {
    for (const t of [-30, -2, -0.1, 0, 0.1, 0.7, 3, 30]) {
      expect(studentTCdf(t, 1)).toBeCloseTo(0.5 + Math.atan(t) / Math.PI, 15);
      expect(studentTCdf(t, 2)).toBeCloseTo(0.5 + t / (2 * Math.sqrt(2 + t * t)), 15);
    }
  });

  test('runs in distribution', () => {
    for (const t of [-4, -1, 0.5, 2]) {
      const steps = [1e3, 1e5, 1e7, 4e8].map((freedom) => studentTCdf(t, freedom) - studentTCdf(t, null));
      // the difference is density·(t³ + t)/4ν to first order
      const density = Math.exp((-t * t) / 2) / Math.sqrt(2 * Math.PI);
      for (const [k, freedom] of [1e3, 1e5].entries())
        expect(steps[k]).toBeCloseTo((-density * (t ** 3 + t)) / (4 * freedom), 6 + 2 * k);
      expect(Math.abs(steps[3] as number)).toBeLessThan(1e-9);
    }
  });
});

describe('studentTQuantile', () => {
  // JCGM 100:2008 (GUM), table G.2, p = 95 %; from memory
  test.each([
    [1, '12.71'],
    [2, '4.30'],
    [3, '3.18'],
    [4, '2.78'],
    [5, '2.57'],
    [6, '2.45'],
    [7, '2.36'],
    [8, '2.31'],
    [9, '2.26'],
    [10, '2.23'],
    [12, '2.18'],
    [15, '2.13'],
    [20, '2.09'],
    [30, '2.04'],
    [50, '2.01'],
    [100, '1.984'],
    [null, '1.960'],
  ] as const)('prints as in the GUM with %s degrees of freedom', (freedom, printed) => {
    const decimals = printed.split('.')[1]?.length ?? 0;
    expect(studentTQuantile(0.975, freedom).toFixed(decimals)).toBe(printed);
  });

  test('is the tangent with one degree of freedom', () => {
    for (const p of [1e-6, 0.01, 0.3, 0.5, 0.8, 0.975])
      expect(studentTQuantile(p, 1)).toBeCloseTo(Math.tan(Math.PI * (p - 0.5)), p < 1e-3 ? 4 : 10);
  });

  test('is nought for p = ½', () => {
    for (const freedom of [1, 2.5, 7, 1e4, null]) expect(studentTQuantile(0.5, freedom)).toBe(0);
  });

  test('is the normal one beyond the degrees of freedom that can be told from infinitely many', () =>
    expect(studentTQuantile(0.975, 1e15)).toBe(studentTQuantile(0.975, null)));

  test('undoes the distribution', () => {
    const freedoms = fc.oneof(fc.double({ min: 1, max: 1e4, noNaN: true }), fc.constant(null));
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 0.999, noNaN: true }), freedoms, (p, freedom) => {
        const back = studentTCdf(studentTQuantile(p, freedom), freedom);
        expect(Math.abs(back - p)).toBeLessThan(1e-12 * p + 1e-15); // the rounding of (1) at 1e4 degrees, and of 1 − p
      }),
    );
  });
});
