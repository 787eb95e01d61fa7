import { describe, expect, test } from 'vitest';
import { balanceOf } from '../../src/equilibrium/charge-balance.js';
import { familyOf } from '../../src/equilibrium/family.js';
import { emptyRoot, hydrogenIon } from '../../src/equilibrium/hydrogen-ion.js';
import { acidWith } from '../make.js';

describe('water and strong ions', () => {
  test('h − Kw/h + s = 0 is solved without cancellation for either sign', () => {
    const root = (charge: number) =>
      hydrogenIon(balanceOf(1e-14, []), { volume: 1, charge, amounts: [] }, 0, emptyRoot()).h;
    // with s = 1 and Kw = 1e-14: h = Kw/s·(1 − Kw/s² + …), and −s·(…) mirrored
    expect(Math.abs(root(1) / 1e-14 - 1)).toBeLessThanOrEqual(1.1e-14);
    expect(Math.abs(root(-1) - 1)).toBeLessThanOrEqual(1.1e-14);
    expect(Math.abs(root(0) / 1e-7 - 1)).toBeLessThanOrEqual(2 ** -51);
  });
});

describe('a first guess', () => {
  const balance = balanceOf(1e-14, [familyOf(acidWith('a', 0, [2.1, 7.2, 12.4]).protolyte)]);
  const column = { volume: 1, charge: 0.05, amounts: [0.1] };
  const cold = hydrogenIon(balance, column, 0, emptyRoot());

  test('anywhere, even outside the bracket or no number, leads to the same root', () => {
    for (const guess of [1e-30, 1e-13, 1e-7, 0.1, 1e30, Number.NaN, -1, Number.POSITIVE_INFINITY]) {
      const { h } = hydrogenIon(balance, column, guess, emptyRoot());
      expect(Math.abs(h / cold.h - 1)).toBeLessThanOrEqual(8 * 2 ** -52);
    }
  });

  test('at the root costs one look and one to make sure', () => {
    expect(hydrogenIon(balance, column, cold.h, emptyRoot()).evaluations).toBeLessThanOrEqual(2);
  });
});
