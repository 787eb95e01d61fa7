import { equilibrate, makeSolution, molarOf, pHOf, type Reagent } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { acidWith, chloride, saltOf, sodium } from '../make.js';
import { exactOf } from './exact.js';
import { expectPrinted } from './printed.js';

// The books' own constants, with their pKw of 14.00. Where the exact answer does not round to the printed one, the test
// computes the book's approximation beside it. `Kb` is that of the base: Ka = Kw/Kb.
const conditions = { pKw: 14 };
const Ka = (value: number) => -Math.log10(value);
const Kb = (value: number) => 14 + Math.log10(value);
const potassium = { formula: 'K+', charge: 1 };

const pHAt = (reagent: Reagent, molar: number) =>
  pHOf(makeSolution({ contents: [{ reagent, molar }] }), conditions);

function expectExact(pH: number, name: string): void {
  const [exact] = exactOf(name);
  expect(Math.abs(pH - (exact?.pH ?? Number.NaN))).toBeLessThanOrEqual(exact?.tolerance ?? 0);
}

describe('OpenStax, Chemistry 2e', () => {
  test('section 14.7: acetic acid 0.100 mol/L, printed 2.87, which drops x against 0.100', () => {
    const pH = pHAt(acidWith('acetic', 0, [Ka(1.8e-5)]).reagent, 0.1);
    expectExact(pH, '1 acetic acid');
    const approximate = -Math.log10(Math.sqrt(1.8e-5 * 0.1));
    expectPrinted(approximate, '2.87');
    expectPrinted(pH - approximate, '0.003');
  });

  test('section 14.3: formic acid 0.534 mol/L, printed 9.8e-3 mol/L (drops x) and pH 2.01', () => {
    const pH = pHAt(acidWith('formic', 0, [Ka(1.8e-4)]).reagent, 0.534);
    expectExact(pH, '2 formic acid');
    expectPrinted(pH, '2.01');
    const approximate = Math.sqrt(1.8e-4 * 0.534);
    expectPrinted(approximate, '9.8e-3');
    expectPrinted(approximate - 10 ** -pH, '9.0e-5');
  });

  test('section 14.3: sodium hydrogen sulfate 0.50 mol/L, printed 0.072 mol/L and pH 1.14', () => {
    const pH = pHAt(saltOf(acidWith('hydrogensulfate', -1, [Ka(1.2e-2)]), sodium), 0.5);
    expectExact(pH, '3 sodium hydrogen sulfate');
    expectPrinted(10 ** -pH, '0.072');
    expectPrinted(pH, '1.14');
  });

  test.each([
    ['trimethylamine', '4 trimethylamine', 6.3e-5, 0.25, '11.60'],
    ['caffeine', '4 caffeine', 2.5e-4, 0.01, '11.16'],
  ])('section 14.3: %s', (name, exact, base, molar, printed) => {
    const pH = pHAt(acidWith(name, 1, [Kb(base)]).reagent, molar);
    expectExact(pH, exact);
    expectPrinted(pH, printed);
  });

  test('section 14.4: anilinium chloride 0.233 mol/L, printed 2.64', () => {
    const pH = pHAt(saltOf(acidWith('anilinium', 1, [Kb(4.3e-10)]), chloride), 0.233);
    expectExact(pH, '5 anilinium chloride');
    expectPrinted(pH, '2.64');
  });

  test('section 14.4: ammonium nitrate 0.100 mol/L, printed 7.5e-6 mol/L', () => {
    const pH = pHAt(saltOf(acidWith('ammonium', 1, [Kb(1.8e-5)]), { formula: 'NO3-', charge: -1 }), 0.1);
    expectExact(pH, '5 ammonium nitrate');
    expectPrinted(10 ** -pH, '7.5e-6');
  });

  test('section 14.4: sodium cyanide 0.083 mol/L, printed 11.11', () => {
    const pH = pHAt(saltOf(acidWith('hydrocyanic', 0, [Ka(4.9e-10)]), sodium), 0.083);
    expectExact(pH, '5 sodium cyanide');
    expectPrinted(pH, '11.11');
  });

  test('section 14.5: carbon dioxide 0.033 mol/L, printed 1.2e-4, 1.2e-4 and 4.7e-11 mol/L', () => {
    const { protolyte, reagent } = acidWith('carbonic', 0, [Ka(4.3e-7), Ka(4.7e-11)]);
    const at = equilibrate(makeSolution({ contents: [{ reagent, molar: 0.033 }] }), conditions);
    expectExact(at.pH, '6 carbon dioxide');
    expectPrinted(10 ** -at.pH, '1.2e-4');
    expectPrinted(molarOf(at, protolyte, 'carbonic(-1)'), '1.2e-4');
    expectPrinted(molarOf(at, protolyte, 'carbonic(-2)'), '4.7e-11');
  });

  test('section 14.5, exercise: phthalic acid 0.010 mol/L, printed 7.2e-3, 2.8e-3, 2.8e-3 and 3.9e-6 mol/L', () => {
    const { protolyte, reagent } = acidWith('phthalic', 0, [Ka(1.1e-3), Ka(3.9e-6)]);
    const at = equilibrate(makeSolution({ contents: [{ reagent, molar: 0.01 }] }), conditions);
    expectExact(at.pH, '7 phthalic acid');
    expectPrinted(molarOf(at, protolyte, 'phthalic(0)'), '7.2e-3');
    expectPrinted(molarOf(at, protolyte, 'phthalic(-1)'), '2.8e-3');
    expectPrinted(10 ** -at.pH, '2.8e-3');
    expectPrinted(molarOf(at, protolyte, 'phthalic(-2)'), '3.9e-6');
  });
});

describe('amphiprotic salts by the mean of two pKa', () => {
  // School exercise site chim.lu, exercise 13.
  test.each([
    ['potassium hydrogencarbonate', 0, [6.3, 10.32], 1, 0.877, '8.31'],
    ['potassium dihydrogenphosphate', 0, [2.12, 7.2], 1, 0.64, '4.66'],
  ])('chim.lu, exercise 13: %s', (name, topCharge, pKa, count, molar, printed) => {
    const pH = pHAt(saltOf(acidWith('acid', topCharge, pKa), potassium, count), molar);
    expectExact(pH, `8 ${name}`);
    expectPrinted(pH, printed);
  });

  test('chim.lu, exercise 13: dipotassium hydrogenphosphate, printed 9.75, 0.013 too high: water counts', () => {
    const pH = pHAt(saltOf(acidWith('acid', -1, [7.2, 12.3]), potassium, 2), 0.328);
    expectExact(pH, '8 dipotassium hydrogenphosphate');
    const mean = (7.2 + 12.3) / 2;
    expectPrinted(mean, '9.75');
    expectPrinted(mean - pH, '0.013');
  });

  test('examination question (BYJU’S archive): sodium dihydrogenphosphate 0.010 mol/L, printed 4.675, 0.117 too low', () => {
    const pH = pHAt(saltOf(acidWith('phosphoric', 0, [2.15, 7.2, 12.35]), sodium), 0.01);
    expectExact(pH, '9 sodium dihydrogenphosphate');
    const mean = (2.15 + 7.2) / 2; // good where C is far above Ka1, which is 0.0071 mol/L here
    expectPrinted(mean, '4.675');
    expectPrinted(pH - mean, '0.117');
  });
});
