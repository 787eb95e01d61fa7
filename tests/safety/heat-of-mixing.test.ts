import { makeSolution, makeStock, type Reagent, reagents, type Solution } from 'protolysis';
import { expect, test } from 'vitest';
import { asSold } from '../../src/catalogue/as-sold.js';
import { heatsOfDilution, heatsOfSolution } from '../../src/catalogue/heats.js';
import { heatOfMixing } from '../../src/safety/heat-of-mixing.js';

const { hydrochloricAcid, sodiumHydroxide, ammonia, sulfuricAcid, sodiumCarbonate, aceticAcid } = reagents;
const mixed = ({ contents, mL }: Solution) => ({ contents, mL, water: null });
const dilute = (reagent: Reagent, molar: number) => makeSolution({ mL: 500, contents: [{ reagent, molar }] });
const both = (one: Solution, other: Solution): Solution => ({
  mL: one.mL + other.mL,
  contents: [...one.contents, ...other.contents],
});

// Dilute enough that dilution itself gives off next to nothing: of HCl at 0.01 mol/L less than 0.2 kJ/mol.
test.each([
  ['hydrochloric acid and sodium hydroxide: 55.84 kJ/mol', hydrochloricAcid, sodiumHydroxide, 55.84],
  [
    'ammonia and hydrochloric acid: 51.95 kJ/mol, the enthalpy of ionisation of ammonium',
    ammonia,
    hydrochloricAcid,
    51.95,
  ],
  ['acetic acid and sodium hydroxide: 55.84 + 0.41 kJ/mol', aceticAcid, sodiumHydroxide, 56.25],
])('%s', (_, acid, base, kJ) => {
  const [one, other] = [dilute(acid, 0.01), dilute(base, 0.01)];
  const { kJ: given } = heatOfMixing([mixed(one), mixed(other)], both(one, other), 1000);
  // 5 mmol; ammonia and acetic acid are ionised to 4 % before they meet, and HCl of 0.01 mol/L keeps 0.1 kJ/mol
  expect(Math.abs(given / 0.005 - kJ)).toBeLessThan(0.05 * kJ);
});

test('a mole of solid sodium hydroxide in a litre: 44.51 kJ, 11 K', () => {
  const solution = makeSolution({ contents: [{ reagent: sodiumHydroxide, molar: 1 }] });
  const heat = heatOfMixing([{ contents: solution.contents, mL: null, water: null }], solution, 1000);
  expect(heat.kJ).toBeCloseTo(44.51, 6);
  expect(heat.kelvin).toBeCloseTo(44.51 / 4, 6);
});

test('a mole of 96 % sulfuric acid to a litre: about 65 kJ, as the table of mixing has it', () => {
  const stock = makeStock({ reagent: sulfuricAcid, massPercent: 96, density: 1.84 });
  const [held] = stock.contents;
  const share = 1000 / (held?.mmol as number);
  const contents = stock.contents.map(({ reagent, mmol }) => ({ reagent, mmol: mmol * share }));
  const { kJ } = heatOfMixing(
    [{ contents, mL: stock.mL * share, water: null }],
    { mL: 1000, contents },
    1000,
  );
  // -73.4 at n = 54 less -8 of the 96 % acid, itself interpolated: good to a few kJ
  expect(Math.abs(kJ - 65)).toBeLessThan(6);
});

test('dilution of an acid that is already dilute gives off next to nothing, and no mixing gives off nothing', () => {
  const one = dilute(hydrochloricAcid, 0.1);
  expect(heatOfMixing([mixed(one)], one, 500).kJ).toBeCloseTo(0, 12);
  expect(Math.abs(heatOfMixing([mixed(one)], { ...one, mL: 1000 }, 1000).kJ)).toBeLessThan(0.05 * 0.5);
});

test('says what it has no heat for', () => {
  const solution = makeSolution({ contents: [{ reagent: reagents.sodiumSulfate, molar: 1 }] });
  const { notCounted } = heatOfMixing(
    [{ contents: solution.contents, mL: null, water: null }],
    solution,
    1000,
  );
  expect(notCounted).toEqual(['dissolving sodium sulfate']);
  expect(
    heatOfMixing(
      [{ contents: [{ reagent: sodiumCarbonate, mmol: 1 }], mL: null, water: null }],
      makeSolution({ contents: [{ reagent: sodiumCarbonate, mmol: 1 }] }),
      1000,
    ).notCounted,
  ).toEqual([]);
});

test('the tables are keyed by reagents of the catalogue, and heat of dilution falls with water', () => {
  for (const table of [asSold, heatsOfSolution, heatsOfDilution])
    for (const id of Object.keys(table)) expect(Object.keys(reagents)).toContain(id);
  for (const { givenOff } of Object.values(heatsOfDilution))
    for (const [k, [water, kJ]] of givenOff.entries()) {
      const [before, more] = givenOff[k - 1] ?? [0, Number.POSITIVE_INFINITY];
      expect(water).toBeGreaterThan(before);
      expect(kJ).toBeLessThan(more);
    }
});
