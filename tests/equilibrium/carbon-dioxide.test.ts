import fc from 'fast-check';
import {
  acids,
  air,
  davies,
  debyeHuckelExtended,
  defineProtolyte,
  equilibrate,
  makeSolution,
  molarOf,
  pHOf,
  reagents,
  type Source,
  waters,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import reference from '../reference/carbonate.json' with { type: 'json' };

const water = makeSolution({ contents: [] });
const soda = (molar: number) => makeSolution({ contents: [{ reagent: reagents.sodiumCarbonate, molar }] });

describe('water in equilibrium with air', () => {
  test('has pH 5.6', () => {
    expect(pHOf(water, { carbonDioxide: air })).toBeCloseTo(5.6, 2);
  });

  test.each(reference.water_in_equilibrium_with_air.computed_25C)('worked values: $CO2_ppm ppm', (row) => {
    const equilibrium = equilibrate(water, { carbonDioxide: { atm: row.pCO2_atm } });
    // Half a unit of the last digit, and half of the 0.0009 between the catalogue's pKa and the equation's.
    expect(Math.abs(equilibrium.pH - row.pH)).toBeLessThanOrEqual(0.00095);
    expect(molarOf(equilibrium, acids.carbonic, 'CO2(aq)') / row.H2CO3_mol_per_L).toBeCloseTo(1, 3);
  });

  test.each(reference.water_in_equilibrium_with_air.computed_other_T)('worked values: $t_C °C', (row) => {
    expect(pHOf(water, { celsius: row.t_C, carbonDioxide: { atm: row.pCO2_atm } })).toBeCloseTo(row.pH, 2);
  });

  test('has the composition of the lecture slide, 350 ppm: pH 5.64', () => {
    // James Cook University, CH3041, lecture 5: KH 3.38e-2 mol/(L·atm), pKa1 6.35; [CO2] 1.183e-5, [H+] 2.29e-6
    const source: Source = { kind: 'commonPractice', note: 'the constants of a lecture slide' };
    const gas = defineProtolyte({
      id: 'carbonic',
      name: 'carbonic acid',
      species: [
        { formula: 'CO2(aq)', charge: 0 },
        { formula: 'HCO3-', charge: -1 },
      ],
      steps: [{ pKa: 6.35, source }],
    });
    const result = equilibrate(water, {
      pKw: 14,
      carbonDioxide: { atm: 350e-6, pKH: -Math.log10(0.0338), protolyte: gas },
    });
    expect(result.pH).toBeCloseTo(5.64, 2);
    expect(molarOf(result, gas, 'CO2(aq)')).toBeCloseTo(1.183e-5, 8);
    expect(molarOf(result, gas, 'HCO3-')).toBeCloseTo(2.3e-6, 7);
  });

  test('is what the ingredient of that name holds', () => {
    const open = equilibrate(water, { carbonDioxide: air });
    const total = open.species
      .filter(({ protolyteId }) => protolyteId === 'carbonic')
      .reduce((sum, { molar }) => sum + molar, 0);
    expect(total).toBeCloseTo(16.5e-6, 7);
    expect(pHOf(waters.inAir)).toBeCloseTo(5.6, 2);
    expect(pHOf(waters.stoodInBottle)).toBeCloseTo(5.42, 2); // carbonate.json: 5.417 for 1000 ppm
    expect(pHOf(waters.tapLike)).toBeCloseTo(7.3, 1);
    expect(pHOf(waters.freshDeionised)).toBeCloseTo(6.9975, 12);
  });
});

describe('a solution open to a fixed pressure', () => {
  test('has the activity of CO2 that Henry’s law gives, whatever else is in it', () => {
    const equilibrium = equilibrate(soda(0.05), { carbonDioxide: air, activity: davies });
    const gas = equilibrium.species.find(({ formula }) => formula === 'CO2(aq)');
    expect(gas?.activity).toBeCloseTo(air.atm * 10 ** -1.4679, 8);
  });

  test('does not depend on how much carbonate went in, only on what ions came with it', () => {
    const mixed = makeSolution({
      contents: [
        { reagent: reagents.sodiumCarbonate, molar: 0.01 },
        { reagent: reagents.carbonDioxide, molar: 0.05 },
      ],
    });
    expect(pHOf(mixed, { carbonDioxide: air })).toBeCloseTo(pHOf(soda(0.01), { carbonDioxide: air }), 12);
  });

  test('has a pH that falls with the pressure, and is continuous in it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -7, max: 1.9, noNaN: true }),
        fc.constantFrom(0, 1e-4, 0.1),
        (exponent, molar) => {
          const pHAt = (atm: number) => pHOf(soda(molar), { carbonDioxide: { atm }, activity: davies });
          const atm = 10 ** exponent;
          expect(pHAt(atm * 1.01)).toBeLessThan(pHAt(atm));
          expect(pHAt(atm) - pHAt(atm * 1.0001)).toBeLessThan(1e-4); // at most one pH per decade: 4.3e-5
        },
      ),
    );
  });
});

describe('CO2 that escapes', () => {
  const acidified = makeSolution({
    mL: 100,
    contents: [
      { reagent: reagents.sodiumCarbonate, molar: 0.02 },
      { reagent: reagents.hydrochloricAcid, molar: 0.035 },
    ],
  });
  const pHAt = (sample: typeof acidified, share: number, atm: number = air.atm, activity = davies) =>
    pHOf(sample, { activity, carbonDioxide: { atm, escape: share } });

  test('is none at 0 and leaves the open solution at 1', () => {
    expect(pHAt(acidified, 0)).toBeCloseTo(pHOf(acidified, { activity: davies }), 12);
    expect(pHAt(acidified, 1)).toBeCloseTo(pHOf(acidified, { activity: davies, carbonDioxide: air }), 10);
  });

  test('leaves a solution alone that is not supersaturated: it takes nothing up', () => {
    expect(pHAt(soda(0.05), 1)).toBe(pHOf(soda(0.05), { activity: davies }));
  });

  test('raises pH, continuously', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.999, noNaN: true }),
        fc.constantFrom(davies, debyeHuckelExtended),
        (share, activity) => {
          const [low, high] = [
            pHAt(acidified, share, air.atm, activity),
            pHAt(acidified, share + 0.001, air.atm, activity),
          ];
          expect(high).toBeGreaterThan(low);
          expect(high - low).toBeLessThan(0.01 / (1.001 - share) + 0.01);
        },
      ),
    );
  });

  test('is continuous where the solution stops being supersaturated', () => {
    // The pressure at which this solution is just saturated: its own [CO2] by Henry's law.
    const closed = equilibrate(acidified, { activity: davies });
    const saturated =
      (closed.species.find(({ formula }) => formula === 'CO2(aq)')?.activity ?? 0) * 10 ** 1.46787;
    const [below, above] = [pHAt(acidified, 1, saturated * 0.9999), pHAt(acidified, 1, saturated * 1.0001)];
    expect(Math.abs(below - above)).toBeLessThan(1e-4);
  });
});
