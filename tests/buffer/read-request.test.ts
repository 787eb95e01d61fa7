import {
  acids,
  type BufferIngredient,
  makeSolution,
  type Protolyte,
  prepareBuffer,
  type Reagent,
  reagents,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const { aceticAcid, calciumChloride, carbonDioxide, hydrochloricAcid, sodiumAcetate, sodiumHydroxide, tris } =
  reagents;
const stock = (reagent: Reagent, molar: number) => makeSolution({ mL: 1000, contents: [{ reagent, molar }] });
const faults = (more: object) =>
  listed(() => prepareBuffer({ pH: 4.7, mL: 100, molar: 0.1, from: [aceticAcid, sodiumAcetate], ...more }));
const from = (...ingredients: unknown[]) => faults({ from: ingredients });
const nameless = { ...hydrochloricAcid, name: Symbol('none') };
/** Ions that carry nothing: a sugar, say. */
const inert = (ions: Reagent['ions']): Reagent => ({ id: 'inert', name: 'inert', protolytes: [], ions });
const uncharged = inert([{ ion: { formula: 'C6H12O6', charge: 0 }, count: 1 }]);

test('the faults of all parts come at once', () => {
  expect(faults({ pH: 99, salt: hydrochloricAcid, ionicStrength: 0.2 })).toEqual([
    'out-of-range pH',
    'conflict salt',
  ]);
  expect(faults({ pH: 99, from: [aceticAcid, carbonDioxide] })).toEqual([
    'out-of-range pH',
    'conflict from[1]',
    'missing protolyte',
  ]);
  expect(faults({ pH: 99, temperatures: [25, 999], salt: 5, ionicStrength: 0.2 })).toEqual([
    'out-of-range pH',
    'wrong-type salt',
    'out-of-range temperatures[1].celsius',
  ]);
});

test('where two ingredients are missing, each of them is not told as missing too', () => {
  expect(faults({ from: undefined })).toEqual(['missing from']);
  expect(faults({ from: 'both' })).toEqual(['wrong-type from']);
  expect(from(aceticAcid)).toEqual(['out-of-range from']);
});

describe('an ingredient is refused once', () => {
  test.each<[unknown, string]>([
    [5, 'wrong-type from[1]'],
    [nameless, 'wrong-type from[1].name'],
    [{ reagent: nameless, purity: 0.9 }, 'wrong-type from[1].reagent.name'],
    [{ mL: 10, contents: [{ reagent: nameless, mmol: 1 }] }, 'wrong-type from[1].contents[0].reagent.name'],
    [{ mL: -1, contents: [{ reagent: aceticAcid, mmol: 1 }] }, 'out-of-range from[1].mL'],
  ])('%#', (ingredient, fault) => expect(from(aceticAcid, ingredient)).toEqual([fault]));
});

test('a strong acid and a gas come as a stock, and nothing else has to', () => {
  const unknownAcid = { ...hydrochloricAcid, id: 'mine' };
  expect(from(tris, unknownAcid)).toEqual(['conflict from[1]']);
  expect(from(tris, stock(unknownAcid, 1))).toEqual([]);
  expect(from(carbonDioxide, sodiumHydroxide)).toEqual(['conflict from[0]']);
  expect(from(stock(carbonDioxide, 0.03), sodiumHydroxide)).toEqual([]);
  for (const other of [reagents.sodiumChloride, inert([]), uncharged]) expect(from(tris, other)).toEqual([]);
});

test('without a concentration both are stocks', () => {
  const pair: [BufferIngredient, BufferIngredient] = [stock(aceticAcid, 1), sodiumAcetate];
  expect(faults({ molar: undefined, from: pair })).toEqual(['missing molar']);
  expect(faults({ molar: undefined, from: [...pair].reverse() })).toEqual(['missing molar']);
  expect(faults({ molar: undefined, from: [stock(aceticAcid, 1), stock(sodiumAcetate, 1)] })).toEqual([]);
});

test('one set of constants for each protolyte', () => {
  const [step] = acids.acetic.steps;
  const other = { ...acids.acetic, steps: [{ ...step, pKa: 4.7 }] } as unknown as Protolyte;
  const salt = { ...sodiumAcetate, id: 'another', protolytes: [{ protolyte: other, count: 1 }] };
  expect(from(aceticAcid, salt)).toEqual(['conflict from[1].protolytes[0].protolyte']);
});

test('the protolyte is one that is there, and is named where there are two', () => {
  expect(faults({ protolyte: acids.tris })).toEqual(['unknown-substance protolyte']);
  expect(from(aceticAcid, tris)).toEqual(['missing protolyte']);
  expect(faults({ from: [aceticAcid, tris], protolyte: acids.tris })).toEqual([]);
});

test('an ingredient holds enough of it, and no more of an ingredient goes in than can be', () => {
  const least = { mL: 1, contents: [{ reagent: aceticAcid, mmol: 1e-9 }] };
  expect(from(least, sodiumHydroxide)).toEqual([]);
  expect(from(stock(aceticAcid, 1e-10), sodiumHydroxide)).toEqual(['out-of-range from[0]']);
  expect(from(sodiumHydroxide, stock(aceticAcid, 1e-10))).toEqual(['out-of-range from[1]']);
  expect(faults({ molar: 1, from: [stock(aceticAcid, 0.01), sodiumHydroxide] })).toEqual([]);
  const of = (count: number): Reagent => ({
    ...inert([]),
    protolytes: [{ protolyte: acids.boric, count }],
  });
  expect(faults({ molar: 15, from: [of(0.5), sodiumHydroxide] })).toEqual(['out-of-range molar']);
  expect(faults({ molar: 10, from: [of(0.5), sodiumHydroxide] })).toEqual([]);
  expect(faults({ molar: 15, from: [of(4), sodiumHydroxide] })).toEqual([]);
});

test('a salt makes up to as much ionic strength as 20 mol/L of it has: 60 mol/L of calcium chloride', () => {
  expect(faults({ ionicStrength: 60, salt: calciumChloride })).toEqual([]);
  expect(faults({ ionicStrength: 60.1, salt: calciumChloride })).toEqual(['out-of-range ionicStrength']);
});

test('a salt has ions, no protolyte, and no charge left over', () => {
  const sodium = { formula: 'Na+', charge: 1 };
  const chloride = { formula: 'Cl-', charge: -1 };
  const pair = [sodium, chloride].map((ion) => ({ ion, count: 1 }));
  expect(faults({ ionicStrength: 0.2, salt: inert(pair) })).toEqual([]);
  const withAcid = { ...inert(pair), protolytes: [{ protolyte: acids.boric, count: 1 }] };
  for (const salt of [inert([]), uncharged, withAcid, inert(pair.slice(0, 1))])
    expect(faults({ ionicStrength: 0.2, salt })).toEqual(['conflict salt']);
  const unread = { ...calciumChloride, ions: 'none' };
  expect(faults({ ionicStrength: 0.2, salt: unread })).toEqual(['wrong-type salt.ions']);
});

test('a wrong protolyte is named beside ingredients that are too few', () =>
  expect(faults({ from: [aceticAcid], protolyte: 5 })).toEqual([
    'out-of-range from',
    'wrong-type protolyte',
  ]));

test.each([
  [reagents.perchloricAcid, 0.74],
  [hydrochloricAcid, 0.4],
  [reagents.nitricAcid, 0.72],
])('no stronger acid is poured than is sold: $0.name', (reagent, strongest) => {
  expect(from({ reagent, purity: 1 }, tris)).toContain('out-of-range from[0].purity');
  expect(from({ reagent, purity: strongest + 0.01 }, tris)).toContain('out-of-range from[0].purity');
});
