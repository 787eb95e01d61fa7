import { molarMassOf } from 'protolysis';
import {
  alkalinityFromEndpoints,
  assay,
  backTitratedAmount,
  compositionFromEndpoints,
  printResult,
  propagateDistributions,
  standardiseTitrant,
  summariseReplicates,
  titratedAmount,
  uncertaintyBudget,
  validateBudget,
} from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';
import { expectPrinted } from './printed.js';

const estimate = (value: number, standardUncertainty: number, degreesOfFreedom: number | null = null) => ({
  value,
  standardUncertainty,
  degreesOfFreedom,
});

describe('EURACHEM/CITAC CG 4, Quantifying Uncertainty in Analytical Measurement, 3rd ed. (2012); from memory', () => {
  const phthalate = {
    mass: estimate(0.3888, 0.00013),
    purity: estimate(1, 0.00029),
    molarMass: estimate(204.2212, 0.0038),
  };

  test('example A2: NaOH standardised with potassium hydrogen phthalate, 0.10214 mol/L, u = 0.00010, U = 0.0002', () => {
    const inputs = { repeatability: estimate(1, 0.0005), ...phthalate, mL: estimate(18.64, 0.013) };
    const molar = uncertaintyBudget(
      inputs,
      ({ repeatability, mass, purity, molarMass, mL }) =>
        (repeatability * 1000 * mass * purity) / (molarMass * mL),
    );
    expectPrinted(molar.value, '0.10214');
    expectPrinted(molar.standardUncertainty, '0.00010');
    expectPrinted(2 * molar.standardUncertainty, '0.0002'); // k = 2 in the guide, 1.96 here
    expect(printResult(molar, 'mol/L')).toBe('(0.10214 ± 0.00019) mol/L, k = 2.0 for 95 %');
    // as in the diagram of the guide: the volume contributes most, the molar mass least
    const sorted = [...molar.contributions].sort((a, b) => b.contribution - a.contribution);
    expect(sorted.map(({ input }) => input)).toEqual(['mL', 'repeatability', 'mass', 'purity', 'molarMass']);
  });

  const hydrochloric = {
    repeatability: estimate(1, 0.001),
    ...phthalate,
    second: estimate(14.89, 0.015),
    first: estimate(18.64, 0.016),
    aliquot: estimate(15, 0.011),
  };
  const concentration = (x: Readonly<Record<keyof typeof hydrochloric, number>>) =>
    (x.repeatability * 1000 * x.mass * x.purity * x.second) / (x.first * x.molarMass * x.aliquot);

  test('example A3: HCl against that NaOH, 0.10139 mol/L, u = 0.00018, U = 0.0004', () => {
    const molar = uncertaintyBudget(hydrochloric, concentration);
    expectPrinted(molar.value, '0.10139');
    // the guide goes on with u/c = 0.0018; of its own six parts it is 0.00187
    expectPrinted(molar.standardUncertainty / molar.value, '0.00187');
    expectPrinted(2 * molar.standardUncertainty, '0.0004');
  });

  test('example A3: a simulation bears the budget out', async () => {
    const simulated = await propagateDistributions(hydrochloric, concentration, { draws: 50_000 });
    expect(validateBudget(uncertaintyBudget(hydrochloric, concentration), simulated)).toMatchObject({
      agrees: true,
    });
  });
});

test('JCGM 100:2008 (GUM), G.4.1, example, from memory: u = 1.03 %, ν = 19.0, U = 2.2 %', () => {
  const inputs = { x: estimate(1, 0.0025, 9), y: estimate(1, 0.0057, 4), z: estimate(1, 0.0082, 14) };
  const product = uncertaintyBudget(inputs, ({ x, y, z }) => x * y * z);
  expectPrinted(100 * product.standardUncertainty, '1.03');
  expectPrinted(product.degreesOfFreedom ?? 0, '19.0');
  expectPrinted(product.coverageFactor, '2.09');
  expectPrinted(100 * product.expandedUncertainty, '2.2');
});

describe('H. P. Talbot, Quantitative Chemical Analysis, 6th ed. (Project Gutenberg 12787)', () => {
  test('problem 8: 1.216 g of Na2CO3 takes 47.26 mL, printed 0.4855 N', () => {
    const standard = { molarMass: molarMassOf('Na2CO3'), ratio: 2 };
    expectPrinted(standardiseTitrant({ standard, runs: [{ grams: 1.216, mL: 47.26 }] }).value, '0.4855');
  });

  // atomic weights of the day: 84.28 printed
  test('problem 23: 6.67 % NaOH, 84.26 % Na2CO3', () => {
    const { hydroxide, carbonate, hydrogencarbonate } = compositionFromEndpoints({
      first: 28.85,
      second: 52.7,
      molar: 0.5,
    });
    expectPrinted(((hydroxide?.value ?? 0) * molarMassOf('NaOH')) / 15, '6.67');
    expectPrinted(((carbonate?.value ?? 0) * molarMassOf('Na2CO3')) / 15, '84.26');
    expect(hydrogencarbonate).toBeNull();
  });

  test('problem 25: 69.95 % Na2CO3, 30.03 % NaHCO3', () => {
    const found = compositionFromEndpoints({ first: 26.4, second: 67.1, molar: 0.25 });
    expectPrinted(((found.carbonate?.value ?? 0) * molarMassOf('Na2CO3')) / 10, '69.95');
    expectPrinted(((found.hydrogencarbonate?.value ?? 0) * molarMassOf('NaHCO3')) / 10, '30.03');
  });

  test.each([
    ['I', 0, 20, ['hydrogencarbonate']],
    ['II', 15.26, 33.16, ['carbonate', 'hydrogencarbonate']],
    ['III', 20, 20, ['hydroxide']],
    ['IV', 15, 30, ['carbonate']],
  ])('problem 37, %s: which base it is', (_, first, second, parts) => {
    const { notes, ...found } = compositionFromEndpoints({ first, second, molar: 0.1 });
    expect(notes).toEqual([]);
    expect(Object.entries(found).flatMap(([part, amount]) => (amount ? [part] : []))).toEqual(parts);
  });
});

describe('OpenStax Chemistry 2e, section 4.5', () => {
  test('0.3420 g of potassium hydrogen phthalate by 35.73 mL of NaOH; no answer printed, 0.046870 by hand', () => {
    const standard = { molarMass: molarMassOf('KHC8H4O4'), ratio: 1 };
    const { value } = standardiseTitrant({ standard, runs: [{ grams: 0.342, mL: 35.73 }] });
    expect(Math.abs(value - 0.04687)).toBeLessThan(5e-6); // of the molar mass, 204.22 or 204.23
  });

  test('50.00 mL of HCl by 35.23 mL of 0.250 mol/L NaOH: 0.176 mol/L', () =>
    expectPrinted(titratedAmount({ mL: 35.23, molar: 0.25 }).value / 50, '0.176'));

  test('75.00 mL of Ca(OH)2 by 36.6 mL of 0.0500 mol/L HCl: 0.0122 mol/L', () =>
    expectPrinted(titratedAmount({ mL: 36.6, molar: 0.05, ratio: 2 }).value / 75, '0.0122'));
});

test('AP EAMCET 2013: 20 mL to phenolphthalein and 60 mL in all of 0.1 mol/L HCl, 20 mL of sample: 0.1 mol/L of each salt', () => {
  const { carbonate, hydrogencarbonate } = compositionFromEndpoints({ first: 20, second: 60, molar: 0.1 });
  expectPrinted((carbonate?.value ?? 0) / 20, '0.1');
  expectPrinted((hydrogencarbonate?.value ?? 0) / 20, '0.1');
});

// Standard Methods for the Examination of Water and Wastewater, 2320 B, table of alkalinity relationships; from memory
describe('Standard Methods 2320 B', () => {
  const report = (P: number, T: number) =>
    Object.fromEntries(
      alkalinityFromEndpoints({ first: P, second: T, molar: 2 / molarMassOf('CaCO3'), mL: 1000 }).map(
        ({ of, mgCaCO3 }) => [of, Number(mgCaCO3.toFixed(6))],
      ),
    );

  test.each([
    [0, 80, { hydrogencarbonate: 80 }],
    [30, 80, { carbonate: 60, hydrogencarbonate: 20 }],
    [40, 80, { carbonate: 80 }],
    [50, 80, { hydroxide: 20, carbonate: 60 }], // a course on water treatment prints the same case
    [80, 80, { hydroxide: 80 }],
  ])('P = %d and T = %d mg/L', (P, T, parts) => expect(report(P, T)).toEqual({ P, T, ...parts }));
});

test('USGS National Field Manual, 6.6: 0.8686 g of Na2CO3 in 1 L is 0.01639 N', () => {
  const { value } = titratedAmount({ mL: 1000, molar: 0.8686 / molarMassOf('Na2CO3'), ratio: 0.5 });
  expectPrinted(value / 1000, '0.01639');
});

describe('NIST StRD, univariate summary statistics, certified values; from memory', () => {
  const alternating = (first: number, low: number, high: number) => [
    first,
    ...Array.from({ length: 1000 }, (_, k) => (k % 2 === 0 ? low : high)),
  ];
  /** −log10 of the relative error: the digits that agree. */
  const digits = (value: number, certified: number) =>
    -Math.log10(Math.max(Math.abs(value / certified - 1), 1e-16));
  const michelso = [
    850, 740, 900, 1070, 930, 850, 950, 980, 980, 880, 1000, 980, 930, 650, 760, 810, 1000, 1000, 960, 960,
    960, 940, 960, 940, 880, 800, 850, 880, 900, 840, 830, 790, 810, 880, 880, 830, 800, 790, 760, 800, 880,
    880, 880, 860, 720, 720, 620, 860, 970, 950, 880, 910, 850, 870, 840, 840, 850, 840, 840, 840, 890, 810,
    810, 820, 800, 770, 760, 740, 750, 760, 910, 920, 890, 860, 880, 720, 840, 850, 850, 780, 890, 840, 780,
    810, 760, 810, 790, 810, 820, 850, 870, 870, 810, 740, 810, 940, 950, 800, 810, 870,
  ].map((metres) => 299 + metres / 1000);

  // what is lost of s is in the data: 10000000.3 has no more than 9 digits behind its mean
  test.each([
    ['NumAcc1', [10_000_001, 10_000_003, 10_000_002], 10_000_002, 1, 15],
    ['NumAcc2', alternating(1.2, 1.1, 1.3), 1.2, 0.1, 14],
    ['NumAcc3', alternating(1_000_000.2, 1_000_000.1, 1_000_000.3), 1_000_000.2, 0.1, 9],
    ['NumAcc4', alternating(10_000_000.2, 10_000_000.1, 10_000_000.3), 10_000_000.2, 0.1, 8],
    ['Michelso', michelso, 299.8524, 0.0790105478190518, 12],
  ])('%s', (_, values, mean, s, agreed) => {
    const summary = summariseReplicates(values);
    expect(digits(summary.mean.value, mean)).toBeGreaterThan(14.5);
    expect(digits(summary.standardDeviation, s)).toBeGreaterThan(agreed);
  });
});

// by hand: 2.3 mmol of carbonate is 243.8 mg
test('an assay, and the same by back titration, with round numbers', () => {
  const [molar, molarMass] = [0.1, 105.988];
  const { value } = assay({ runs: [{ grams: 0.25, mL: 46 }], molar, molarMass, ratio: 2 });
  expectPrinted(value, '0.97509');
  const back = backTitratedAmount({ excess: { mL: 50, molar }, mL: 4, molar, ratio: 2 });
  expectPrinted((back.value * molarMass) / 250, '0.97509');
});
