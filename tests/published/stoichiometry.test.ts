import { type Ingredient, makeSolution, molarMassOf, type Reagent, reagents, titrate } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { expectPrinted } from './printed.js';

// Volumes at equivalence depend on amounts alone, so the catalogue's constants serve every book. Old books reckoned with
// old atomic weights: where that shows, the test says by how much.
const { hydrochloricAcid, sodiumHydroxide, sodiumCarbonate, sodiumHydrogenCarbonate } = reagents;

const equivalences = (mL: number, contents: readonly Ingredient[], titrant: Reagent, molar: number) =>
  titrate({
    analyte: makeSolution({ mL, contents }),
    titrant: makeSolution({ contents: [{ reagent: titrant, molar }] }),
  }).equivalencePoints;

const volumes = (...setup: Parameters<typeof equivalences>) => equivalences(...setup).map(({ mL }) => mL);
const last = (values: readonly number[]) => values.at(-1) ?? Number.NaN;

/** A sum of a few products and one division: ten roundings. */
const expectExact = (value: number, exact: number) =>
  expect(Math.abs(value / exact - 1)).toBeLessThanOrEqual(10 * 2 ** -53);

describe('H. P. Talbot, Quantitative Chemical Analysis, 6th ed. (Project Gutenberg 12787)', () => {
  test('problem 8: 1.216 g of Na2CO3 takes 47.26 mL of HCl to methyl orange, printed 0.4855 N', () => {
    const atUnit = last(volumes(50, [{ reagent: sodiumCarbonate, grams: 1.216 }], hydrochloricAcid, 1));
    expectExact(atUnit, (2 * 1216) / 105.9875);
    expectPrinted(atUnit / 47.26, '0.4855');
    expectPrinted(atUnit / 47.26, '0.48553');
  });

  test('problem 23: NaOH and Na2CO3, 28.85 mL to phenolphthalein and 23.85 mL more to methyl orange', () => {
    // the further 23.85 mL take HCO3- from the carbonate alone; 0.5 N, 1.500 g
    const carbonate = 23.85 * 0.5;
    const hydroxide = (28.85 - 23.85) * 0.5;
    const sample = [
      { reagent: sodiumHydroxide, mmol: hydroxide },
      { reagent: sodiumCarbonate, mmol: carbonate },
    ];
    const points = equivalences(50, sample, hydrochloricAcid, 0.5);
    expect(points.map(({ reaction }) => reaction)).toEqual([
      'H⁺ + OH⁻ → H₂O',
      'CO₃²⁻ + H⁺ → HCO₃⁻',
      'HCO₃⁻ + H⁺ → CO₂(aq) + H₂O',
    ]);
    const [, first, second] = points.map(({ mL }) => mL);
    expectExact(first ?? 0, 28.85);
    expectExact(second ?? 0, 28.85 + 23.85);
    expectPrinted((100 * hydroxide * molarMassOf('NaOH')) / 1500, '6.67');
    const percent = (100 * carbonate * molarMassOf('Na2CO3')) / 1500;
    expectPrinted(percent, '84.26');
    expectPrinted(84.28 - percent, '0.02'); // printed 84.28, with the atomic weights of the day
  });

  test('problem 25: Na2CO3 and NaHCO3, 26.40 mL to phenolphthalein, 67.10 mL in all', () => {
    const carbonate = 26.4 * 0.25;
    const hydrogenCarbonate = (67.1 - 2 * 26.4) * 0.25;
    const sample = [
      { reagent: sodiumCarbonate, mmol: carbonate },
      { reagent: sodiumHydrogenCarbonate, mmol: hydrogenCarbonate },
    ];
    const [first, second] = volumes(50, sample, hydrochloricAcid, 0.25);
    expectExact(first ?? 0, 26.4);
    expectExact(second ?? 0, 67.1);
    expectPrinted((100 * carbonate * molarMassOf('Na2CO3')) / 1000, '69.95');
    const percent = (100 * hydrogenCarbonate * molarMassOf('NaHCO3')) / 1000;
    expectPrinted(percent, '30.03');
    expectPrinted(percent - 30.02, '0.01'); // printed 30.02
  });

  describe('problem 37: which base is it', () => {
    const with01 = (contents: readonly Ingredient[]) => volumes(50, contents, hydrochloricAcid, 0.1);

    test('I: NaHCO3 alone has no end point at phenolphthalein, only the later one', () => {
      const points = equivalences(50, [{ reagent: sodiumHydrogenCarbonate, mmol: 2 }], hydrochloricAcid, 0.1);
      expect(points.map(({ reaction }) => reaction)).toEqual(['HCO₃⁻ + H⁺ → CO₂(aq) + H₂O']);
    });

    test('II: 15.26 mL, then 17.90 mL more, is carbonate with hydrogencarbonate', () => {
      const sample = [
        { reagent: sodiumCarbonate, mmol: 1.526 },
        { reagent: sodiumHydrogenCarbonate, mmol: 1.79 - 1.526 },
      ];
      const [first, second] = with01(sample);
      expectExact(first ?? 0, 15.26);
      expectExact(second ?? 0, 15.26 + 17.9);
    });

    test('III: NaOH has a single end point for both indicators', () => {
      expect(with01([{ reagent: sodiumHydroxide, mmol: 2 }])).toHaveLength(1);
    });

    test('IV: 15.00 mL to phenolphthalein and 30 mL in all is carbonate', () => {
      const [first, second] = with01([{ reagent: sodiumCarbonate, mmol: 1.5 }]);
      expectExact(first ?? 0, 15);
      expectExact(second ?? 0, 30);
    });
  });
});

test('AP EAMCET 2013: 20 mL of 0.1 mol/L HCl to phenolphthalein and 60 mL in all is 0.1 mol/L of each carbonate in 20 mL', () => {
  const sample = [
    { reagent: sodiumCarbonate, molar: 0.1 },
    { reagent: sodiumHydrogenCarbonate, molar: 0.1 },
  ];
  const [first, second] = volumes(20, sample, hydrochloricAcid, 0.1);
  expectExact(first ?? 0, 20);
  expectExact(second ?? 0, 60);
});

describe('OpenStax, Chemistry 2e, section 4.5', () => {
  test('40.00 mL of 0.0656 mol/L H3PO4 to HPO4(2-) takes 34.99 mL of 0.1500 mol/L KOH', () => {
    const sample = [{ reagent: reagents.phosphoricAcid, molar: 0.0656 }];
    const second = volumes(40, sample, reagents.potassiumHydroxide, 0.15)[1] ?? 0;
    expectExact(second, (2 * 40 * 0.0656) / 0.15);
    expectPrinted(second, '34.99');
  });

  test('0.3420 g of potassium hydrogen phthalate takes 35.73 mL of NaOH: 0.04687 mol/L (the book prints no answer)', () => {
    const sample = [{ reagent: reagents.potassiumHydrogenPhthalate, grams: 0.342 }];
    const atUnit = last(volumes(50, sample, sodiumHydroxide, 1));
    expectExact(atUnit, 342 / molarMassOf('C8H5KO4'));
    expectPrinted(atUnit / 35.73, '0.04687');
  });

  test('50.00 mL of HCl takes 35.23 mL of 0.250 mol/L NaOH: printed 0.176 mol/L', () => {
    const sample = [{ reagent: hydrochloricAcid, molar: (35.23 * 0.25) / 50 }];
    expectExact(last(volumes(50, sample, sodiumHydroxide, 0.25)), 35.23);
    expectPrinted((35.23 * 0.25) / 50, '0.176');
  });

  test('15.00 mL of 0.1500 mol/L oxalic acid takes 13.64 mL of 0.3300 mol/L NaOH', () => {
    const sample = [{ reagent: reagents.oxalicAcid, molar: 0.15 }];
    expectPrinted(last(volumes(15, sample, sodiumHydroxide, 0.33)), '13.64');
  });

  test('75.00 mL of Ca(OH)2 takes 36.6 mL of 0.0500 mol/L HCl: printed 0.0122 mol/L', () => {
    const sample = [{ reagent: reagents.calciumHydroxide, molar: (36.6 * 0.05) / 2 / 75 }];
    expectExact(last(volumes(75, sample, hydrochloricAcid, 0.05)), 36.6);
    expectPrinted((36.6 * 0.05) / 2 / 75, '0.0122');
  });
});
