import {
  acids,
  type Equilibrium,
  equilibrate,
  makeSolution,
  molarOf,
  type Protolyte,
  reagents,
} from 'protolysis';
import { expect, test } from 'vitest';
import { faultsOf, listed } from '../faults-of.js';
import { throughJSON } from '../json.js';

const at = equilibrate(
  makeSolution({ contents: [{ reagent: reagents.sodiumHydrogenCarbonate, molar: 0.1 }] }),
);

test('the forms of a protolyte add up to its total', () => {
  const total =
    molarOf(at, acids.carbonic, 'CO2(aq)') +
    molarOf(at, acids.carbonic, 'HCO3-') +
    molarOf(at, acids.carbonic, 'CO3(2-)');
  expect(Math.abs(total - 0.1)).toBeLessThanOrEqual(4 * 2 ** -53 * 0.1);
});

test('hydrogencarbonate makes carbon dioxide and carbonate one for one, but for what water takes', () => {
  // proton condition: [CO2] + [H+] = [CO3(2-)] + [OH-]
  const [h = 0, oh = 0] = at.species.map(({ molar }) => molar);
  const left = molarOf(at, acids.carbonic, 'CO2(aq)') + h - molarOf(at, acids.carbonic, 'CO3(2-)') - oh;
  expect(Math.abs(left)).toBeLessThanOrEqual(2 ** -52 * 0.1); // 0.1 mol/L of sodium cancels in it
});

test('a protolyte that went through JSON names the same species', () => {
  expect(molarOf(at, throughJSON(acids.carbonic), 'HCO3-')).toBe(molarOf(at, acids.carbonic, 'HCO3-'));
});

test('a protolyte that the solution does not hold is named', () => {
  expect(faultsOf(() => molarOf(at, acids.acetic, 'CH3COO-'))).toEqual([
    {
      code: 'unknown-substance',
      path: 'protolyte',
      expected: 'a protolyte that the solution holds',
      received: "'acetic'",
    },
  ]);
});

test('a formula that the protolyte does not have is met with those it has', () => {
  const formula = 'CO3' as 'CO3(2-)';
  expect(faultsOf(() => molarOf(at, acids.carbonic, formula))).toEqual([
    {
      code: 'unknown-substance',
      path: 'formula',
      expected: 'one of CO2(aq), HCO3-, CO3(2-)',
      received: "'CO3'",
    },
  ]);
});

test('faults of all three arguments are listed together', () => {
  const call = () => molarOf({} as Equilibrium, {} as Protolyte, 3 as unknown as string);
  expect(listed(call)).toEqual([
    'missing equilibrium.species',
    'missing protolyte.id',
    'missing protolyte.name',
    'missing protolyte.species',
    'missing protolyte.steps',
    'wrong-type formula',
  ]);
});

test('a concentration that is no number is refused, not returned', () => {
  const species = at.species.map((one) => ({ ...one, molar: 'much' as unknown as number }));
  expect(listed(() => molarOf({ ...at, species }, acids.carbonic, 'HCO3-'))).toContain(
    'wrong-type equilibrium.species[2].molar',
  );
});

test('a species of an equilibrium that was made by hand has no less than nothing of it', () => {
  const [first, ...others] = at.species;
  const of = (molar: number) => ({ ...at, species: [{ ...first, molar }, ...others] }) as Equilibrium;
  expect(listed(() => molarOf(of(-1e-9), acids.carbonic, 'HCO3-'))).toEqual([
    'out-of-range equilibrium.species[0].molar',
  ]);
  expect(listed(() => molarOf(of(0), acids.carbonic, 'HCO3-'))).toEqual([]);
});
