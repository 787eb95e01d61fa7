import {
  acids,
  defineProtolyte,
  defineReagent,
  equilibrate,
  makeSolution,
  reagents,
  type Source,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { withFamily, withoutFamily } from '../../src/equilibrium/carbon-dioxide-escape.js';
import { readConditions } from '../../src/equilibrium/conditions.js';
import { systemOf } from '../../src/equilibrium/system.js';
import { Faults } from '../../src/input/faults.js';

const source: Source = { kind: 'commonPractice', note: 'an input of this test' };
const water = makeSolution({ contents: [] });

test('a protolyte of two solutions is the one that stands first', () => {
  const [first, second] = ['a note', 'another note'].map((note) =>
    defineProtolyte({ ...acids.acetic, notes: [note] }),
  );
  const solutions = [first, second].map((protolyte, k) => ({
    mL: 1,
    contents: [
      {
        reagent: defineReagent({
          id: `${k}`,
          name: 'acid',
          protolytes: [{ protolyte, count: 1 } as never],
          ions: [],
        }),
        mmol: 1,
      },
    ],
  }));
  const { notes, protolytes } = systemOf(solutions, readConditions(undefined, '', new Faults('test')));
  expect(protolytes).toHaveLength(1);
  expect(notes).toEqual(['a note']);
});

test('the notes tell of a gas whose constants do not follow the temperature', () => {
  const gas = defineProtolyte({
    id: 'carbonic',
    name: 'a gas',
    species: [
      { formula: 'CO2(aq)', charge: 0 },
      { formula: 'HCO3-', charge: -1 },
    ],
    steps: [{ pKa: 6.35, source }],
  });
  const notes = (celsius: number) =>
    equilibrate(water, { celsius, carbonDioxide: { atm: 1e-3, protolyte: gas } }).notes;
  expect(notes(40)).toEqual(['a gas: no enthalpy is given for step 1, so its pKa is that of 25 °C.']);
  expect(notes(25)).toEqual([]);
});

test('Henry’s constant is listed where it was used', () => {
  const names = (carbonDioxide: object) =>
    equilibrate(water, { carbonDioxide: { atm: 1e-3, ...carbonDioxide } }).constants.map(({ name }) => name);
  const henry = 'Henry’s constant of carbon dioxide, pKH';
  expect(names({})).toContain(henry);
  expect(names({ pKH: 1.5 })).not.toContain(henry);
});

describe('a column', () => {
  const column = { volume: 1, charge: 2, squares: 3, amounts: [5, 6, 7] };

  test('without one of its families', () => {
    expect(withoutFamily(column, 1)).toEqual({ ...column, amounts: [5, 7] });
  });

  test('with another amount of one', () => {
    expect(withFamily(column, 1, 9)).toEqual({ ...column, amounts: [5, 9, 7] });
  });
});

test('CO2 that escapes leaves the other acids as they are', () => {
  const contents = [
    { reagent: reagents.aceticAcid, molar: 0.1 },
    { reagent: reagents.sodiumHydrogenCarbonate, molar: 0.05 },
  ];
  // at no pressure all of it leaves: sodium acetate with the rest of its acid stays
  const after = equilibrate(makeSolution({ contents }), { carbonDioxide: { atm: 0, escape: 1 } });
  const buffer = makeSolution({
    contents: [
      { reagent: reagents.aceticAcid, molar: 0.05 },
      { reagent: reagents.sodiumAcetate, molar: 0.05 },
    ],
  });
  expect(Math.abs(after.pH - equilibrate(buffer).pH)).toBeLessThan(1e-12);
});
