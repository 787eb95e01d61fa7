import { describe, expect, test } from 'vitest';
import { familyOf, fractionsOf, prevailing } from '../../src/equilibrium/family.js';
import { acidWith } from '../make.js';

const family = (pKa: readonly number[]) => familyOf(acidWith('a', 0, pKa).protolyte);

describe('the shares of the forms of an acid', () => {
  test('two neighbours are alike at their pKa', () => {
    const [a0 = 0, a1 = 0, a2 = 0] = fractionsOf(family([4, 10]), 1e-4);
    expect(Math.abs(a0 / a1 - 1)).toBeLessThanOrEqual(2 ** -52);
    // a2/a1 = 10^(4 − 10)
    expect(Math.abs(a2 / a1 / 1e-6 - 1)).toBeLessThanOrEqual(4 * 2 ** -52);
  });

  test('rare forms keep their relative precision', () => {
    // pKa −10 and 20 at h = 1e-5: both end forms are 1e-15 and less of the middle one
    const [a0 = 0, a1 = 0, a2 = 0] = fractionsOf(family([-10, 20]), 1e-5);
    expect(Math.abs(a1 - (1 - 2e-15))).toBeLessThanOrEqual(2 ** -52);
    expect(Math.abs(a0 / a1 / 1e-15 - 1)).toBeLessThanOrEqual(4 * 2 ** -52);
    expect(Math.abs(a2 / a1 / 1e-15 - 1)).toBeLessThanOrEqual(4 * 2 ** -52);
  });

  test('of sixteen equal steps are all alike at h = K', () => {
    const shares = fractionsOf(family(Array(16).fill(6)), 1e-6);
    for (const share of shares) expect(Math.abs(share * 17 - 1)).toBeLessThanOrEqual(17 * 2 ** -52); // t_j = 1 each
  });

  test('neither overflow nor vanish where K spans its whole range', () => {
    for (const pKa of [
      Array(16).fill(-10),
      Array(16).fill(20),
      [20, ...Array(15).fill(-10)],
      [...Array(15).fill(20), -10],
    ])
      for (const h of [1e-25, 1e-7, 1e5]) {
        const shares = fractionsOf(family(pKa), h);
        expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true);
        expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1)).toBeLessThanOrEqual(
          17 * 2 ** -52,
        );
      }
  });
});

describe('the prevailing form', () => {
  test('has lost as many protons as there are pKa below the pH', () => {
    const phosphoric = family([2.148, 7.198, 12.35]);
    expect([1, 5, 9, 13].map((pH) => prevailing(phosphoric, 10 ** -pH))).toEqual([0, 1, 2, 3]);
  });

  test('never is the middle one where the second pKa is below the first', () => {
    const odd = family([6, 4]);
    expect([4.9, 5.1].map((pH) => prevailing(odd, 10 ** -pH))).toEqual([0, 2]);
  });
});

test('constants are in order where none is greater than the one before it', () => {
  const inOrder = (...pKa: number[]) => family(pKa).inOrder;
  expect([inOrder(4), inOrder(4, 10), inOrder(2, 7, 7, 12)]).toEqual([true, true, true]);
  expect([inOrder(6, 4), inOrder(2, 12, 7), inOrder(9, 2, 7, 12)]).toEqual([false, false, false]);
});
