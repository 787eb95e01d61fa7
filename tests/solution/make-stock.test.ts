import { aliquot, makeSolution, makeStock, makeUpTo, molarMassOf, reagents } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';
import { acidWith } from '../make.js';
import { expectPrinted } from '../published/printed.js';

const { hydrochloricAcid } = reagents;

describe('a stock from its bottle', () => {
  test('holds 10·ρ·w/M mol/L, in one litre', () => {
    const { mL, contents } = makeStock({ reagent: hydrochloricAcid, massPercent: 37, density: 1.18 });
    expect(mL).toBe(1000);
    const exact = (10 * 1.18 * 37) / molarMassOf('HCl');
    expect(Math.abs((contents[0]?.mmol ?? 0) / 1000 / exact - 1)).toBeLessThanOrEqual(6 * 2 ** -53);
  });

  // Common practice, as supplier charts and shelf labels round them; from memory.
  test.each([
    ['hydrochloric acid 37 %, 1.18 g/mL', hydrochloricAcid, 37, 1.18, '12'],
    ['sulfuric acid 96 %, 1.84 g/mL', reagents.sulfuricAcid, 96, 1.84, '18'],
    ['nitric acid 68 %, 1.41 g/mL', reagents.nitricAcid, 68, 1.41, '15'],
    ['acetic acid 99.7 %, 1.05 g/mL', reagents.aceticAcid, 99.7, 1.05, '17'],
    ['phosphoric acid 85 %, 1.69 g/mL', reagents.phosphoricAcid, 85, 1.69, '15'],
    ['sodium hydroxide 50 %, 1.53 g/mL', reagents.sodiumHydroxide, 50, 1.53, '19'],
  ])('%s', (_, reagent, massPercent, density, molar) => {
    expectPrinted((makeStock({ reagent, massPercent, density }).contents[0]?.mmol ?? 0) / 1000, molar);
  });

  test('diluted a hundredfold is a hundredth as strong', () => {
    const stock = makeStock({ reagent: hydrochloricAcid, massPercent: 37, density: 1.18 });
    const dilute = makeUpTo(aliquot(stock, { mL: 10 }), { mL: 1000 });
    const molar = (stock.contents[0]?.mmol ?? 0) / 1000 / 100;
    const same = makeSolution({ contents: [{ reagent: hydrochloricAcid, molar }] });
    expect(Math.abs((dilute.contents[0]?.mmol ?? 0) / (same.contents[0]?.mmol ?? 1) - 1)).toBeLessThanOrEqual(
      4 * 2 ** -53,
    );
  });
});

describe('faults', () => {
  const make = (stock: unknown) => () => makeStock(stock as Parameters<typeof makeStock>[0]);
  const good = { reagent: hydrochloricAcid, massPercent: 37, density: 1.18 };

  test.each([
    ['nothing', undefined, ['missing the argument']],
    [
      'a fraction is not told from a percent, but more than 100 % is',
      { ...good, massPercent: 137 },
      ['out-of-range massPercent'],
    ],
    ['a density in kg/m³', { ...good, density: 1180 }, ['out-of-range density']],
    [
      'a reagent without a molar mass',
      { ...good, reagent: acidWith('a', 0, [5]).reagent },
      ['missing reagent.molarMass'],
    ],
    ['more than any liquid holds', { ...good, massPercent: 100, density: 3 }, ['out-of-range massPercent']],
    [
      'several at once',
      { massPercent: 0, density: null, mL: 5 },
      ['unknown-key mL', 'missing reagent', 'out-of-range massPercent', 'wrong-type density'],
    ],
  ])('%s', (_, stock, faults) => expect(listed(make(stock))).toEqual(faults));
});
