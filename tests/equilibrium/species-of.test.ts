import {
  type ActivityModel,
  davies,
  equilibrate,
  makeSolution,
  pHOf,
  pHsOf,
  reagents,
  type Source,
  titrate,
} from 'protolysis';
import { describe, expect, test } from 'vitest';

const source: Source = { kind: 'commonPractice', note: 'an input of this test' };
const soda = makeSolution({ contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.02 }] });
const formsOf = (conditions: object, solution = soda) => {
  const { species, ionicStrength } = equilibrate(solution, conditions);
  const of = (label: string) => species.find(({ formula }) => formula === label) as (typeof species)[number];
  return { of, ionicStrength, gas: species.filter(({ protolyteId }) => protolyteId === 'carbonic') };
};

describe('the forms of a gas at a fixed pressure', () => {
  test('have shares that are their concentrations over the sum', () => {
    const { gas } = formsOf({ carbonDioxide: { atm: 1e-3 } });
    const total = gas.reduce((sum, { molar }) => sum + molar, 0);
    expect(gas).toHaveLength(3);
    for (const { molar, fraction } of gas)
      expect(Math.abs((fraction as number) * total - molar)).toBeLessThanOrEqual(1e-15 * molar);
  });

  test('have shares of 0 where there is no gas', () => {
    const { gas } = formsOf({ carbonDioxide: { atm: 0 } });
    expect(gas.map(({ molar, fraction }) => [molar, fraction])).toEqual([
      [0, 0],
      [0, 0],
      [0, 0],
    ]);
  });

  test('have the coefficients of the law', () => {
    const { of, ionicStrength } = formsOf({ carbonDioxide: { atm: 1e-3 }, activity: davies });
    for (const [label, charge] of [
      ['HCO3-', -1],
      ['CO3(2-)', -2],
    ] as const) {
      const { activity, molar } = of(label);
      const expected = davies.log10Gamma(charge, ionicStrength, 25, label);
      expect(Math.abs(Math.log10(activity / molar) - expected)).toBeLessThan(1e-12);
    }
  });

  test('have the activity of Henry’s law, so that a salt drives the gas out', () => {
    // log10 γ = 0.1·I of what has no charge
    const model: ActivityModel = {
      name: 'salting out',
      source,
      log10Gamma: (charge, strength) => (charge === 0 ? 0.1 * strength : 0),
    };
    const { of, ionicStrength } = formsOf({ carbonDioxide: { atm: 1e-3, pKH: 1.5 }, activity: model });
    const { activity, molar } = of('CO2(aq)');
    expect(Math.abs(activity / 10 ** -4.5 - 1)).toBeLessThan(1e-14);
    expect(Math.abs(Math.log10(activity / molar) - 0.1 * ionicStrength)).toBeLessThan(1e-12);
    expect(ionicStrength).toBeGreaterThan(0.03);
  });
});

test('forms and ions of a solution have the coefficients of the law', () => {
  const { of, ionicStrength } = formsOf({ activity: davies });
  for (const label of ['H+', 'OH-', 'Na+', 'CO2(aq)', 'HCO3-', 'CO3(2-)']) {
    const { activity, molar, charge } = of(label);
    const expected = davies.log10Gamma(charge, ionicStrength, 25, label);
    expect(Math.abs(Math.log10(activity / molar) - expected)).toBeLessThan(1e-12);
  }
});

test('a titration lists no form of the titrant before its first drop', () => {
  const { equilibriumAt } = titrate({
    analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] }),
    titrant: makeSolution({ contents: [{ reagent: reagents.ammonia, molar: 0.1 }] }),
  });
  const ids = (mL: number) => [...new Set(equilibriumAt(mL).species.map(({ protolyteId }) => protolyteId))];
  expect(ids(0)).toEqual([null, 'acetic']);
  expect(ids(1)).toHaveLength(3);
});

test('the charges of a buffer cancel', () => {
  const buffer = makeSolution({ contents: [{ reagent: reagents.disodiumHydrogenPhosphate, molar: 0.1 }] });
  // each of a few concentrations near 0.1 mol/L, twice charged, is rounded to 2⁻⁵³ of itself a few times
  expect(Math.abs(equilibrate(buffer).chargeImbalance)).toBeLessThan(10 * 0.2 * 2 ** -53);
});

test('a row with a law of activity from which CO2 escapes is that of pHOf', () => {
  const contents = [
    { reagent: reagents.sodiumCarbonate, molar: [0.02] },
    { reagent: reagents.hydrochloricAcid, molar: [0.035] },
  ];
  const conditions = { activity: davies, carbonDioxide: { atm: 1e-3, escape: 0.5 } };
  const one = makeSolution({
    contents: contents.map(({ reagent, molar: [molar = 0] }) => ({ reagent, molar })),
  });
  expect(Math.abs((pHsOf({ contents }, conditions)[0] as number) - pHOf(one, conditions))).toBeLessThan(
    1e-12,
  );
});
