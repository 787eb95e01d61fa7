import { describe, expect, test } from 'vitest';
import { balanceOf as balanceWith, chargeAt, emptyCharge } from '../../src/equilibrium/charge-balance.js';
import { familyOf } from '../../src/equilibrium/family.js';
import { acidWith } from '../make.js';

const balanceOf = (...acids: readonly (readonly [topCharge: number, pKa: readonly number[]])[]) =>
  balanceWith(
    1e-14,
    acids.map(([topCharge, pKa], i) => familyOf(acidWith(`a${i}`, topCharge, pKa).protolyte)),
  );
const charge = (
  balance: ReturnType<typeof balanceOf>,
  amounts: readonly number[],
  strong: number,
  h: number,
) => ({
  ...chargeAt(balance, { volume: 1, charge: strong, amounts }, h, emptyCharge()),
});

describe('the net charge', () => {
  test('of water is h − Kw/h', () => {
    expect(charge(balanceOf(), [], 0, 1e-3).net).toBe(1e-3 - 1e-11);
  });

  test('of a neutral make-up is what the small terms leave, to the last digit', () => {
    // hydrogencarbonate: one Na+ a molecule. All that is left of 20 mol/L at h is h − Kw/h + C·(α₀ − α₂).
    const h = 1e-8;
    const { net } = charge(balanceOf([0, [6, 10]]), [20], 20, h);
    const [t0, t2] = [1e-8 / 1e-6, 1e-10 / 1e-8];
    expect(Math.abs(net - (1e-8 - 1e-6) - (20 * (t0 - t2)) / (1 + t0 + t2))).toBeLessThanOrEqual(
      2 ** -52 * 0.5,
    );
  });

  test('has the slope and bend of its own differences', () => {
    // five-point differences in x = ln h, step 1e-3: truncation h⁴/30·F⁽⁵⁾ and h⁴/90·F⁽⁶⁾, with moments of up to 3 protons
    // below 3⁶ mol; rounding 2⁻⁵²·|F|/step and …/step²
    const balance = balanceOf([0, [2.1, 2.3, 7]], [1, [6.9, 9]]);
    const step = 1e-3;
    for (let pH = 0; pH <= 14; pH += 0.37) {
      const at = (k: number) => charge(balance, [0.3, 0.2], 0.05, Math.exp(-pH * Math.LN10 + k * step));
      const [m2, m1, zero, p1, p2] = [-2, -1, 0, 1, 2].map((k) => at(k).net) as [
        number,
        number,
        number,
        number,
        number,
      ];
      const slope = (m2 - 8 * m1 + 8 * p1 - p2) / (12 * step);
      const bend = (-m2 + 16 * m1 - 30 * zero + 16 * p1 - p2) / (12 * step * step);
      const size = 3 ** 6 * 0.5 + Math.abs(zero);
      expect(Math.abs(at(0).slope - slope)).toBeLessThanOrEqual(size * (step ** 4 / 30 + 2 ** -50 / step));
      expect(Math.abs(at(0).bend - bend)).toBeLessThanOrEqual(size * (step ** 4 / 90 + 2 ** -48 / step ** 2));
    }
  });
});
