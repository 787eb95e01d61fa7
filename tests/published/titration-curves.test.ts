import { type Ingredient, makeSolution, type Reagent, type Titration, titrate } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { acidWith, saltOf, sodium, strongIon } from '../make.js';
import { exactOf } from './exact.js';
import { expectPrinted } from './printed.js';

// The books' own constants and pKw.
const hydrochloric = strongIon('Cl-', -1);
const hydroxide = strongIon('Na+', 1);
const Ka = (value: number) => -Math.log10(value);

function titration(mL: number, analyte: Ingredient, titrant: Reagent, molar: number, pKw = 14): Titration {
  return titrate({
    analyte: makeSolution({ mL, contents: [analyte] }),
    titrant: makeSolution({ contents: [{ reagent: titrant, molar }] }),
    conditions: { pKw },
  });
}

/** Every point of exact.json; the printed ones at the same volumes, null where the book differs by more than rounding. */
function expectCurve(curve: Titration, name: string, printed: readonly (string | null)[] = []): void {
  for (const [k, { mL, pH, tolerance }] of exactOf(name).entries()) {
    const own = curve.pHAt(mL);
    expect(Math.abs(own - pH), `${name} at ${mL} mL`).toBeLessThanOrEqual(tolerance);
    const text = printed[k];
    if (text) expectPrinted(own, text);
  }
}

describe('OpenStax, Chemistry 2e, section 14.7', () => {
  const tail = ['10.30', '11.29', '11.96', '12.52'];
  const acetic = acidWith('acetic', 0, [Ka(1.8e-5)]).reagent;

  test('25.00 mL of 0.100 mol/L HCl with 0.100 mol/L NaOH', () => {
    const curve = titration(25, { reagent: hydrochloric, molar: 0.1 }, hydroxide, 0.1);
    const printed = ['1.00', '1.37', '1.95', '2.69', '3.70', '7.00', ...tail];
    expectCurve(curve, '11 hydrochloric acid', printed);
    expect(exactOf('11 hydrochloric acid')).toHaveLength(printed.length);
  });

  test('25.00 mL of 0.100 mol/L acetic acid; 2.87 at 0 mL drops x, and 2.875 is exact', () => {
    const curve = titration(25, { reagent: acetic, molar: 0.1 }, hydroxide, 0.1);
    const printed = [null, '4.57', '5.35', '6.13', '7.14', '8.72', ...tail];
    expectCurve(curve, '11 acetic acid', printed);
    expect(exactOf('11 acetic acid')).toHaveLength(printed.length);
    expectPrinted(-Math.log10(Math.sqrt(1.8e-5 * 0.1)), '2.87');
  });

  test('50.0 mL of 0.100 mol/L HNO3 with 0.200 mol/L NaOH; 1.5111 at 15.0 mL is a slip for 1.5119', () => {
    const nitric = strongIon('NO3-', -1);
    const curve = titration(50, { reagent: nitric, molar: 0.1 }, hydroxide, 0.2);
    expectCurve(curve, '12 nitric acid', ['1.000', null, '7', '12.523']);
    // (50.0·0.100 − 15.0·0.200) mmol in 65.0 mL is 0.0308 mol/L, and its logarithm is not 1.5111
    expectPrinted(-Math.log10((50 * 0.1 - 15 * 0.2) / 65), '1.5119');
    expectPrinted(curve.pHAt(15), '1.5119');
  });

  test('50.0 mL of 0.100 mol/L formic acid with 0.200 mol/L NaOH', () => {
    const formic = acidWith('formic', 0, [Ka(1.8e-4)]).reagent;
    const curve = titration(50, { reagent: formic, molar: 0.1 }, hydroxide, 0.2);
    expectCurve(curve, '13 formic acid', [null, '3.92', null, '12.097']);
    // printed 2.37 at 0 mL drops x against 0.100: 0.009 too low
    const dropped = -Math.log10(Math.sqrt(1.8e-4 * 0.1));
    expectPrinted(dropped, '2.37');
    expectPrinted(curve.pHAt(0) - dropped, '0.009');
    // printed 8.29 at equivalence is what Kb of formate, rounded to 5.6e-11, gives: 0.001 above 8.285, which rounds to 8.28
    const roundedKb = 14 + Math.log10(Math.sqrt(5.6e-11 * (5 / 75)));
    expectPrinted(roundedKb, '8.29');
    expectPrinted(roundedKb - curve.pHAt(25), '0.001');
  });
});

describe('carbonate with hydrochloric acid', () => {
  test('laboratory manual question: 20.00 mL of 0.10 mol/L Na2CO3 with 0.20 mol/L HCl, pKa 6.352 and 10.329', () => {
    const carbonate = saltOf(acidWith('carbonic', 0, [6.352, 10.329]), sodium, 2);
    const curve = titration(20, { reagent: carbonate, molar: 0.1 }, hydrochloric, 0.2);
    expectCurve(curve, '15 sodium carbonate');
    expect(exactOf('15 sodium carbonate')).toHaveLength(10);
    const [first, second] = curve.equivalencePoints;
    expectPrinted(first?.mL ?? Number.NaN, '10.00');
    expectPrinted(second?.mL ?? Number.NaN, '20.00');
    expectPrinted(first?.pH ?? Number.NaN, '8.34');
    const [upper, lower] = curve.halfEquivalencePoints.map(({ pH }) => pH);
    expectPrinted(lower ?? Number.NaN, '6.35');
    // printed 10.33 is pKa2 itself; hydrolysis of carbonate takes 0.0044 off it
    expectPrinted(10.329, '10.33');
    expectPrinted(10.329 - (upper ?? Number.NaN), '0.0044');
  });

  test('25 mL of 0.100 mol/L Na2CO3 with 0.100 mol/L HCl, as textbooks print it (from memory of them)', () => {
    const carbonate = saltOf(acidWith('carbonic', 0, [6.351, 10.329]), sodium, 2);
    const curve = titration(25, { reagent: carbonate, molar: 0.1 }, hydrochloric, 0.1, 13.995);
    // 11.6 at 0 mL is 11.652 cut, not rounded
    expectCurve(curve, '15 sodium carbonate, 13.995', [null, '10.3', '8.3', '6.4', '3.9']);
    expect(Math.floor(curve.pHAt(0) * 10) / 10).toBe(11.6);
  });
});

test('Skoog, West, Holler, Crouch, Fundamentals of Analytical Chemistry, 9th ed., chapter 15 (from memory): maleic acid', () => {
  const maleic = acidWith('maleic', 0, [Ka(1.3e-2), Ka(5.9e-7)]).reagent;
  const curve = titration(25, { reagent: maleic, molar: 0.1 }, hydroxide, 0.1);
  expectCurve(curve, '16 maleic acid', [null, null, '4.11', null, '9.38']);
  expect(curve.equivalencePoints.map(({ mL }) => mL)).toEqual([25, 50]);
});

describe('phosphoric acid', () => {
  test('50 mL of 0.100 mol/L with 0.100 mol/L NaOH: end points near 4.7 and 9.7 (textbook statements, from memory)', () => {
    const phosphoric = acidWith('phosphoric', 0, [2.148, 7.198, 12.35]).reagent;
    const curve = titration(50, { reagent: phosphoric, molar: 0.1 }, hydroxide, 0.1);
    expectCurve(curve, '17 phosphoric acid', [null, '4.7', null, '9.7']);
    const [first, second, third] = curve.equivalencePoints;
    expectPrinted(first?.pH ?? Number.NaN, '4.7');
    expectPrinted(second?.pH ?? Number.NaN, '9.7');
    expect(third?.inflection).toBeNull(); // 0.100 mol/L base is too weak to show the third
  });
});

test('G. Gran, Analyst 77, 661 (1952), on the acetic acid row of OpenStax section 14.7, pH to two decimals', () => {
  const acetic = acidWith('acetic', 0, [Ka(1.8e-5)]).reagent;
  const curve = titration(25, { reagent: acetic, molar: 0.1 }, hydroxide, 0.1);
  const printedAt = (mL: number) => Number(curve.pHAt(mL).toFixed(2));

  // before equivalence V·10^−pH = Ka·(Ve − V), after it (V₀ + V)·10^(pH − 14) = c·(V − Ve)
  const before = lineThrough([5, 10, 15, 20, 22, 24, 24.5], (V) => V * 10 ** -printedAt(V));
  expectPrinted(before.zero, '24.97');
  expectPrinted(-before.slope, '1.81e-5');
  const after = lineThrough([25.5, 26, 28, 30, 35, 40, 45, 50], (V) => (25 + V) * 10 ** (printedAt(V) - 14));
  expectPrinted(after.zero, '25.00');
  expectPrinted(after.slope, '0.0998');
});

/** The line of least squares, and where it crosses zero. */
function lineThrough(x: readonly number[], f: (x: number) => number): { slope: number; zero: number } {
  const y = x.map(f);
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [mx, my] = [mean(x), mean(y)];
  const slope =
    x.reduce((sum, value, k) => sum + (value - mx) * ((y[k] as number) - my), 0) /
    x.reduce((sum, value) => sum + (value - mx) ** 2, 0);
  return { slope, zero: mx - my / slope };
}
