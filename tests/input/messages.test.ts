import {
  acids,
  addWater,
  aliquot,
  capacityOf,
  compareModels,
  findById,
  type InputError,
  indicators,
  makeSolution,
  mix,
  molarMassOf,
  overshoot,
  pHOf,
  pHsOf,
  planAdditions,
  prepareBuffer,
  prepareSolution,
  rankIndicators,
  reagents,
  titrate,
} from 'protolysis';
import { expect, test } from 'vitest';
import { acidWith } from '../make.js';

const { sodiumCarbonate, hydrochloricAcid, tris } = reagents;
const titration = titrate({
  analyte: makeSolution({ mL: 20, contents: [{ reagent: sodiumCarbonate, molar: 0.05 }] }),
  titrant: makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] }),
});
const others = [5, 6].map((pKa) => ({ reagent: acidWith('a', 0, [pKa]).reagent, mmol: 1 }));

const water = makeSolution({ mL: 5, contents: [] });
const conditions = 'conditions { celsius, activity, carbonDioxide, pKw }';

/** What the types refuse, as a caller without them would give it. */
const untyped = <T>(value: unknown): T => value as T;

test('a text that would break a printed line is refused, and quoted with its escapes', () => {
  const named = (name: string) => () =>
    makeSolution({ mL: 5, contents: [{ reagent: { ...tris, name }, mmol: 1 }] });
  expect(named('Tris,\u00a0grade é')).not.toThrow();
  expect(named('Tris\u001b[2J')).toThrow(
    "makeSolution: contents[0].reagent.name is 'Tris\\u001b[2J'; give a name in one line, without control characters.",
  );
  expect(() => pHOf(water, untyped({ 'a\nb': 1 }))).toThrow(/conditions\.a\\u000ab is not a key/);
});

test('an id is found whatever its capitals, blanks and hyphens', () => {
  for (const id of ['sodiumCarbonate', 'Sodium carbonate', 'sodium-carbonate', 'Na2CO3', 'Na₂CO₃'])
    expect(findById(reagents, id)).toBe(sodiumCarbonate);
});

test('an acid is found by the formula of each of its forms', () => {
  expect(findById(acids, 'CH3COOH')).toBe(acids.acetic);
  expect(findById(acids, 'HCO3-')).toBe(acids.carbonic);
});

test.each([
  [
    'whole numbers and their limits are one phrase',
    () => overshoot(titration, indicators.methylOrange, { drops: 1.5 }),
    'overshoot: drops is 1.5; give a number of drops, a whole number from 0 to 10000.',
  ],
  [
    'what a package has ready is named beside what is asked for',
    () => pHOf(water, { carbonDioxide: untyped('air') }),
    "pHOf: conditions.carbonDioxide is 'air'; give carbon dioxide { atm }, such as air of this package, or { escape, atm }.",
  ],
  [
    'numbers are printed as one reads them',
    () => titration.pHAt(-2e9),
    'pHAt: mL is -2e9; give a volume in mL, from 0 to 1e9.',
  ],
  [
    'minus zero is told from zero',
    () => titration.curve({ every: -0, upTo: 5 }),
    'curve: additions.every is -0; give a volume in mL, above 0 and at most 1e9.',
  ],
  [
    'what limits a volume in all',
    () => addWater(titration.setup.analyte, { mL: 1e9 }),
    'addWater: water.mL is 1e9; give a volume in mL that leaves no more than 1e9 in all.',
  ],
  [
    'what limits an amount',
    () =>
      makeSolution({
        mL: 10,
        contents: [
          { reagent: tris, molar: 40 },
          { reagent: tris, molar: 40 },
        ],
      }),
    'makeSolution: contents is 80 mol/L of Tris in all; give no more than 60 mol/L of one reagent.',
  ],
  [
    'an ingredient without an amount',
    () => makeSolution({ contents: [untyped({ reagent: tris })] }),
    'makeSolution: contents[0] is without an amount; give one of grams, mmol and molar.',
  ],
  [
    'an ingredient with two amounts',
    () => makeSolution({ contents: [untyped({ reagent: tris, grams: 1, molar: 1 })] }),
    'makeSolution: contents[0] is given as grams and molar; give one of grams, mmol and molar.',
  ],
  [
    'one id for two things',
    () => mix(...others.map((content) => ({ mL: 10, contents: [content] }))),
    "mix: solutions[1].contents[0].reagent.protolytes[0].protolyte is another one under the same id; give one set of constants for the protolyte 'a'.",
  ],
  [
    'additions of two kinds',
    () => titration.curve(untyped({ every: 1, maxStep: 1, upTo: 5 })),
    'curve: additions is given as every and maxStep; give additions { every, upTo }, { volumes } or { maxStep, upTo }.',
  ],
  [
    'additions of no kind',
    () => titration.curve(untyped({ upTo: 5 })),
    'curve: additions is without every, volumes or maxStep; give additions { every, upTo }, { volumes } or { maxStep, upTo }.',
  ],
  [
    'too little room',
    () => titration.pHs([1, 2], new Float64Array(1)),
    'pHs: out is a Float64Array of 1; give a Float64Array with room for 2 numbers.',
  ],
  [
    'columns that do not match',
    () =>
      pHsOf({
        contents: [
          { reagent: tris, molar: [1, 2] },
          { reagent: hydrochloricAcid, molar: [1] },
        ],
      }),
    'pHsOf: contents is columns of lengths 2, 1; give columns of one length, at least one of them.',
  ],
  [
    'no column at all',
    () => pHsOf({ contents: [{ reagent: tris, molar: 1 }] }),
    'pHsOf: contents is without a column; give columns of one length, at least one of them.',
  ],
  [
    'a key with a slip',
    () => makeSolution({ mL: 20, contents: [untyped({ reagent: tris, gramms: 1 })] }),
    'makeSolution: 2 faults\n- contents[0].gramms is not a key; give grams, if that is meant, or one of reagent, grams, purity, mmol, molar.\n- contents[0] is without an amount; give one of grams, mmol and molar.',
  ],
  [
    'a key with a capital',
    () => makeSolution(untyped({ ml: 20, contents: [] })),
    'makeSolution: ml is not a key; give mL, if that is meant, or one of mL, contents.',
  ],
  [
    'a key like no other',
    () => pHOf(water, untyped({ pressure: 1 })),
    'pHOf: conditions.pressure is not a key; give one of celsius, activity, carbonDioxide, pKw.',
  ],
  [
    'an acid as a reagent',
    () => makeSolution({ contents: [untyped({ reagent: acids.acetic, molar: 0.1 })] }),
    "makeSolution: contents[0].reagent is the protolyte 'acetic acid'; give a reagent that holds it: findById(reagents, 'acetic acid') finds one or names several.",
  ],
  [
    'a text as a reagent',
    () => makeSolution({ contents: [untyped({ reagent: 'acetic acid', molar: 0.1 })] }),
    "makeSolution: contents[0].reagent is 'acetic acid'; give a reagent, as findById(reagents, id) finds it.",
  ],
  [
    'a reagent as an indicator',
    () => rankIndicators(titration, [untyped(tris)]),
    "rankIndicators: indicators[0] is the reagent 'Tris'; give an indicator, such as indicators.methylOrange.",
  ],
  [
    'a reagent as a solution',
    () => pHOf(untyped(tris)),
    "pHOf: solution is the reagent 'Tris'; give a solution, as makeSolution makes it or a recipe holds it.",
  ],
  [
    'which of two solutions is meant',
    () => titrate({ analyte: water, titrant: untyped({ mL: 5, contents: [{ reagent: tris, mmol: '1' }] }) }),
    "titrate: titrant.contents[0].mmol is '1'; give an amount in mmol (no more than 60 mol/L of one reagent), from 0 to 300.",
  ],
  [
    'a promise as options',
    () => rankIndicators(titration, [indicators.methylOrange], untyped(Promise.resolve({}))),
    'rankIndicators: options is a promise that was not awaited; give options { at, tolerance, dropSize, observer, indicatorDrops, include }.',
  ],
  ['a date', () => pHOf(water, untyped(new Date(0))), `pHOf: conditions is a Date; give ${conditions}.`],
  ['a map', () => pHOf(water, untyped(new Map())), `pHOf: conditions is a Map; give ${conditions}.`],
  [
    'a boxed number',
    () => pHOf(water, untyped(Object(25))),
    `pHOf: conditions is a Number; give ${conditions}.`,
  ],
  [
    'the nearest id',
    () => findById(reagents, 'sodium carbonat'),
    "findById: id is 'sodium carbonat'; give sodiumCarbonate, if that is meant.",
  ],
  [
    'an id like no other',
    () => findById(reagents, 'unobtainium'),
    "findById: id is 'unobtainium'; give the id, name or formula of an entry.",
  ],
  [
    'a catalogue as a list',
    () => rankIndicators(titration, untyped(indicators)),
    'rankIndicators: indicators is a module; give a list of indicators, such as Object.values(indicators).',
  ],
  [
    'a key with a slip where there is but one',
    () => aliquot(water, untyped({ mL: 5, ml: 5 })),
    'aliquot: part.ml is not a key; give mL alone.',
  ],
  [
    'a setup where models are compared',
    () => compareModels(untyped(titration.setup), [{}]),
    'compareModels: titration is a setup; give a titration as titrate returns it.',
  ],
  [
    'a solution where additions are planned',
    () => planAdditions(untyped(water)),
    'planAdditions: titration is a solution; give a titration as titrate returns it.',
  ],
  [
    'a number as conditions of a buffer',
    () => capacityOf(water, untyped(7)),
    `capacityOf: conditions is 7; give ${conditions}.`,
  ],
  [
    'a recipe as a solution',
    () =>
      titrate({ analyte: untyped({ mL: 20, contents: [{ reagent: tris, molar: 0.1 }] }), titrant: water }),
    'titrate: analyte is a recipe; give makeSolution of it, which works out the amounts.',
  ],
  [
    'a recipe as a titrant, whose volume need not be stated',
    () => titrate({ analyte: water, titrant: untyped({ contents: [{ reagent: tris, molar: 0.1 }] }) }),
    'titrate: titrant is a recipe; give makeSolution of it, which works out the amounts.',
  ],
  [
    'a recipe for the bench as a solution',
    () => pHOf(untyped(prepareSolution({ from: tris, molar: 0.1, mL: 100 }))),
    'pHOf: solution is a recipe; give a solution, as makeSolution makes it or a recipe holds it.',
  ],
  [
    'a recipe that is impossible as a solution',
    () =>
      pHOf(
        untyped(
          prepareBuffer({ pH: 10, molar: 0.1, mL: 50, from: [reagents.aceticAcid, reagents.sodiumAcetate] }),
        ),
      ),
    'pHOf: solution is a refusal with its reason; give a solution, as makeSolution makes it or a recipe holds it.',
  ],
  [
    'a reagent as a formula',
    () => molarMassOf(untyped(tris)),
    "molarMassOf: formula is the reagent 'Tris'; give a formula such as Na2CO3·10H2O.",
  ],
  [
    'litres as a key',
    () => makeSolution(untyped({ L: 0.05, contents: [] })),
    'makeSolution: L is not a key; give mL (1000 for 1 L), if that is meant, or one of mL, contents.',
  ],
  [
    'a slip that is no unit beside a key with m before it',
    () => makeSolution({ mL: 5, contents: [untyped({ reagent: tris, molar: 0.1, olar: 0.1 })] }),
    'makeSolution: contents[0].olar is not a key; give one of reagent, grams, purity, mmol, molar.',
  ],
  [
    'a catalogue as an entry of it',
    () => makeSolution({ mL: 5, contents: [untyped({ reagent: reagents, mmol: 1 })] }),
    'makeSolution: contents[0].reagent is a module; give a reagent, such as reagents.sodiumCarbonate.',
  ],
  [
    'a solution as a titration',
    () => rankIndicators(untyped(water), [indicators.methylOrange]),
    'rankIndicators: titration is a solution; give a titration as titrate returns it.',
  ],
  [
    'a setup as a titration',
    () => rankIndicators(untyped(titration.setup), [indicators.methylOrange]),
    'rankIndicators: titration is a setup; give titrate(setup).',
  ],
  [
    'a titration that came through JSON',
    () => rankIndicators(JSON.parse(JSON.stringify(titration)), [indicators.methylOrange]),
    'rankIndicators: titration is without its methods; give titrate(titration.setup), since JSON and copies keep none.',
  ],
  [
    'an entry that only sounds alike',
    () => findById(reagents, 'soda'),
    "findById: id is 'soda'; give the id, name or formula of an entry.",
  ],
  [
    'an acid that several reagents hold',
    () => findById(reagents, 'formic'),
    "findById: id is 'formic'; give one that holds it: formicAcid, sodiumFormate.",
  ],
  [
    'two entries of one name',
    () => findById({ 'tris-a': tris, trisA: tris }, 'Tris A'),
    "findById: id is 'Tris A', which fits 2 entries; give one of tris-a, trisA.",
  ],
] as [string, () => unknown, string][])('a message reads well: %s', (_, call, message) => {
  let told = '';
  try {
    call();
  } catch (error) {
    told = (error as InputError).message;
  }
  expect(told).toBe(message);
});
