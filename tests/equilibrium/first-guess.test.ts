import { describe, expect, test } from 'vitest';
import { balanceOf } from '../../src/equilibrium/charge-balance.js';
import { familyOf } from '../../src/equilibrium/family.js';
import { firstGuess } from '../../src/equilibrium/first-guess.js';
import { acidWith } from '../make.js';

const kw = 1e-14;
/** An acid of so many mol/L: the charge of its most protonated form, and its pKa. */
type Acid = readonly [topCharge: number, pKa: readonly number[], molar: number];

/** The guess for acids and the charge of the strong ions, mol/L; the make-up is that of 50 mL. */
function guess(charge: number, acids: readonly Acid[], low = 1e-300, high = 1e300): number {
  const families = acids.map(([top, pKa], i) => familyOf(acidWith(`${i}`, top, pKa).protolyte));
  const amounts = acids.map(([, , molar]) => 50 * molar);
  return firstGuess(balanceOf(kw, families), { volume: 50, charge: 50 * charge, amounts }, low, high);
}

const [c, Ka, Kb] = [0.02, 1e-4, 1e-9];

// the textbook's formula of each make-up, with the water that textbooks leave out
test.each<[string, number, number, readonly Acid[]]>([
  ['water', Math.sqrt(kw), 0, []],
  ['a strong acid', c, -c, []], // Kw/c² = 2.5e-11 more, within the tolerance
  ['a strong base', kw / c, c, []],
  ['a dilute strong acid', 0.5e-7 + Math.sqrt(0.25e-14 + kw), -1e-7, []],
  ['a dilute strong base', Math.sqrt(0.25e-14 + kw) - 0.5e-7, 1e-7, []],
  ['a weak acid', Math.sqrt(c * Ka + kw), 0, [[0, [4], c]]],
  ['a very dilute weak acid', Math.sqrt(1e-6 * Kb + kw), 0, [[0, [9], 1e-6]]],
  ['its salt', Math.sqrt(kw / (1 + c / Ka)), c, [[0, [4], c]]],
  ['an acid of charge 1', Math.sqrt(c * Kb + kw), -c, [[1, [9], c]]],
  ['an acid of charge 2', Math.sqrt(c * Ka + kw), -2 * c, [[2, [4, 9], c]]],
  ['an ampholyte', Math.sqrt((kw + c * Kb) / (1 + c / Ka)), c, [[0, [4, 9], c]]],
  ['the second salt of an acid with two protons', Math.sqrt(kw / (1 + c / Kb)), 2 * c, [[0, [4, 9], c]]],
  [
    'the salt of a weak acid and a weak base',
    Math.sqrt((kw + 3 * c * Kb) / (1 + c / Ka)),
    c - 3 * c,
    [
      [0, [4], c],
      [1, [9], 3 * c],
    ],
  ],
  [
    'the same in another order',
    Math.sqrt((kw + 3 * c * Kb) / (1 + c / Ka)),
    c - 3 * c,
    [
      [1, [9], 3 * c],
      [0, [4], c],
    ],
  ],
])('%s', (_, expected, charge, acids) => {
  expect(Math.abs(guess(charge, acids) / expected - 1)).toBeLessThanOrEqual(3e-11);
});

describe('a buffer of 0.02 mol/L and pKa 7', () => {
  // h = K·(acid/base); the h and OH- that it leaves out are at most 9e-7 mol/L, of 0.002 mol/L or more
  test.each([0.1, 0.3, 0.49, 0.51, 0.7, 0.9])('with a share of %d of its base', (share) => {
    const h = guess(share * c, [[0, [7], c]]);
    expect(Math.abs(h / (1e-7 * (1 / share - 1)) - 1)).toBeLessThanOrEqual(5e-4);
  });

  test('keeps the charge balance in which h of the acid and OH- of the base are kept', () => {
    const [acid, base] = [0.015, 0.005];
    // with more acid than base: h + [base] = ([acid]·K + Kw)/h
    const sour = guess(base, [[0, [2], acid + base]]);
    expect(Math.abs(((sour + base) * sour) / (acid * 1e-2 + kw) - 1)).toBeLessThanOrEqual(1e-14);
    // with more base than acid: h·(1 + [base]/K) = [acid] + Kw/h
    const h = guess(acid, [[0, [12], acid + base]]);
    expect(Math.abs((h * (1 + acid / 1e-12)) / (base + kw / h) - 1)).toBeLessThanOrEqual(1e-14);
  });
});

describe('a guess that is not inside the bracket', () => {
  const weak: readonly Acid[] = [[0, [4], c]];
  const own = guess(0, weak);

  test.each([
    [own * 4, own * 9],
    [own / 9, own / 4],
    [own, own * 4],
    [own / 4, own],
  ])('gives way to the middle of its logarithm: %d to %d', (low, high) => {
    expect(Math.abs(guess(0, weak, low, high) / Math.sqrt(low * high) - 1)).toBeLessThanOrEqual(1e-15);
  });

  test('stays where it is inside', () => {
    expect(guess(0, weak, own * 0.999, own * 1.001)).toBe(own);
  });
});
