import {
  acids,
  davies,
  equilibrate,
  type Ingredient,
  makeSolution,
  type Protolyte,
  prepareBuffer,
  type Reagent,
  reagents,
  sourcesOf,
  titrate,
} from 'protolysis';
import { expect, test } from 'vitest';
import * as solids from '../../src/catalogue/sparingly-soluble.js';
import { noteOnSolid, precipitatesOf } from '../../src/equilibrium/precipitates.js';

const sparinglySoluble = Object.values(solids);
const { potassiumHydrogenTartrate, calciumHydroxide, calciumChloride, potassiumChloride } = reagents;
const held = (...contents: Ingredient[]) =>
  precipitatesOf(equilibrate(makeSolution({ contents }))).map(({ solid }) => solid.name);

const potassiumPerchlorate: Reagent = {
  id: 'potassiumPerchlorate',
  name: 'potassium perchlorate',
  protolytes: [],
  ions: [
    { ion: { formula: 'K+', charge: 1 }, count: 1 },
    { ion: { formula: 'ClO4-', charge: -1 }, count: 1 },
  ],
};
const salicylicAcid: Reagent = {
  id: 'salicylicAcid',
  name: 'salicylic acid',
  protolytes: [{ protolyte: acids.salicylic, count: 1 }],
  ions: [],
};

// what dissolves, mol/L, as the source of each row says
const saturated: readonly (readonly [string, Reagent, number])[] = [
  ['potassium perchlorate', potassiumPerchlorate, 0.147],
  ['potassium hydrogen tartrate', potassiumHydrogenTartrate, 0.0341],
  ['calcium hydroxide', calciumHydroxide, 0.0203],
  ['barium hydroxide', reagents.bariumHydroxideOctahydrate, 0.273],
  ['borax', reagents.borax, 0.156],
  ['boric acid', reagents.boricAcid, 0.899],
  ['benzoic acid', reagents.benzoicAcid, 0.0282],
  ['salicylic acid', salicylicAcid, 0.018],
  ['succinic acid', reagents.succinicAcid, 0.665],
  ['oxalic acid', reagents.oxalicAcidDihydrate, 1.31],
  ['sodium oxalate', reagents.sodiumOxalate, 0.271],
  ['potassium tetroxalate', reagents.potassiumTetroxalateDihydrate, 0.0708],
  ['potassium hydrogen phthalate', reagents.potassiumHydrogenPhthalate, 0.392],
  ['disodium hydrogen phosphate', reagents.disodiumHydrogenPhosphate, 0.817],
  ['trisodium phosphate', reagents.trisodiumPhosphateDodecahydrate, 0.868],
  ['potassium dihydrogen phosphate', reagents.potassiumDihydrogenPhosphate, 1.67],
  ['sodium hydrogen carbonate', reagents.sodiumHydrogenCarbonate, 1.185],
  ['sodium carbonate', reagents.sodiumCarbonate, 2.66],
  ['sodium sulfate', reagents.sodiumSulfateDecahydrate, 1.85],
  ['disodium EDTA', reagents.disodiumEdtaDihydrate, 0.269],
];

test('every row of a saturated solution is checked here', () =>
  expect(saturated.map(([name]) => name).sort()).toEqual(
    sparinglySoluble.flatMap(({ name, of }) => (of === 'concentrations' ? [name] : [])).sort(),
  ));

// the products have three decimals, so a solution is told from the saturated one within a percent
test.each(saturated)('%s: as much as dissolves, and not more', (name, reagent, molar) => {
  expect(held({ reagent, molar })).not.toContain(name);
  expect(held({ reagent, molar: molar * 1.01 })).toContain(name);
  expect(sparinglySoluble.find((one) => one.name === name)?.source).toMatchObject({
    note: expect.stringContaining(`${molar} mol`),
  });
});

test('each solid belongs to a protolyte of the catalogue whose form it holds, or to strong ions alone', () => {
  const owned = Object.values<Protolyte>(acids).flatMap(({ species, solids: own = [] }) =>
    own.map(({ name, forms }) => {
      expect(
        species.some(({ formula }) => forms[formula] !== undefined),
        name,
      ).toBe(true);
      return name;
    }),
  );
  const ofStrongIons = ['calcium hydroxide', 'barium hydroxide', 'potassium perchlorate'];
  expect([...owned, ...ofStrongIons].sort()).toEqual(sparinglySoluble.map(({ name }) => name).sort());
});

test('the ions of each solid make it neutral', () => {
  const charges = new Map([
    ...Object.values(acids).flatMap(({ species }) =>
      species.map(({ formula, charge }) => [formula, charge] as const),
    ),
    ...Object.values(reagents).flatMap(({ ions }) =>
      ions.map(({ ion }) => [ion.formula, ion.charge] as const),
    ),
    ['OH-', -1] as const,
  ]);
  for (const { name, forms } of sparinglySoluble) {
    const charge = Object.entries(forms).reduce(
      (sum, [label, count]) => sum + count * (charges.get(label) ?? Number.NaN),
      0,
    );
    expect(charge, name).toBe(0);
  }
});

test.each<[string, Ingredient, Ingredient]>([
  [
    'calcium carbonate',
    { reagent: calciumChloride, molar: 1e-3 },
    { reagent: reagents.sodiumCarbonate, molar: 1e-3 },
  ],
  [
    'barium sulfate',
    { reagent: reagents.bariumHydroxide, molar: 1e-4 },
    { reagent: reagents.sodiumSulfate, molar: 1e-4 },
  ],
  [
    'calcium oxalate',
    { reagent: calciumChloride, molar: 1e-3 },
    { reagent: reagents.sodiumOxalate, molar: 1e-3 },
  ],
  [
    'calcium hydrogen phosphate',
    { reagent: calciumChloride, molar: 0.01 },
    { reagent: reagents.disodiumHydrogenPhosphate, molar: 0.01 },
  ],
  [
    'potassium perchlorate',
    { reagent: reagents.perchloricAcid, molar: 0.5 },
    { reagent: potassiumChloride, molar: 0.5 },
  ],
])('%s falls out of its ions, and the equilibrium says so', (name, one, other) => {
  expect(held(one, other)).toContain(name);
  expect(held({ ...one, molar: 1e-9 } as Ingredient, { ...other, molar: 1e-9 } as Ingredient)).toEqual([]);
  const { notes } = equilibrate(makeSolution({ contents: [one, other] }), { activity: davies });
  expect(notes.join()).toMatch(/may precipitate.*All of it counts as dissolved here/);
});

test('calcium sulfate by its activity product: 0.005 mol/L of each is 0.8 times the ideal product, 0.01 mol/L 3.2 times', () => {
  const both = (molar: number): Ingredient[] => [
    { reagent: calciumChloride, molar },
    { reagent: reagents.sodiumSulfate, molar },
  ];
  expect(held(...both(0.005))).toEqual([]);
  expect(held(...both(0.01))).toEqual(['calcium sulfate']);
  const real = equilibrate(makeSolution({ contents: both(0.01) }), { activity: davies });
  expect(precipitatesOf(real)).toEqual([]);
});

test('an ion in common makes a solid less soluble, a base takes its ion away', () => {
  const tartrate = { reagent: potassiumHydrogenTartrate, molar: 0.03 };
  const potassium = { reagent: potassiumChloride, molar: 0.1 };
  expect(held(tartrate)).toEqual([]);
  expect(held(tartrate, potassium)).toEqual(['potassium hydrogen tartrate']);
  expect(held(tartrate, potassium, { reagent: reagents.sodiumHydroxide, molar: 0.03 })).toEqual([]);
});

test('it makes no difference which reagents brought the ions', () =>
  expect(
    held({ reagent: calciumChloride, molar: 0.05 }, { reagent: reagents.sodiumHydroxide, molar: 0.1 }),
  ).toEqual(['calcium hydroxide']));

test('a titration says which solid may fall out, once and where', () => {
  const { notes } = titrate({
    analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.oxalicAcid, molar: 0.05 }] }),
    titrant: makeSolution({ contents: [{ reagent: calciumHydroxide, molar: 0.02 }] }),
  });
  const told = notes.filter((note) => note.includes('may precipitate'));
  expect(told).toHaveLength(1);
  expect(told[0]).toMatch(
    /^Calcium oxalate may precipitate \(here at \d+\.\d\d mL\): its ions multiply to 10\^\d times/,
  );
  const clear = titrate({
    analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.oxalicAcid, molar: 0.05 }] }),
    titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
  });
  expect(clear.notes.join()).not.toContain('precipitate');
});

test('the recipe that fails for it names its source', () => {
  const answer = prepareBuffer({
    pH: 3.8,
    molar: 0.1,
    mL: 100,
    from: [potassiumHydrogenTartrate, reagents.sodiumHydroxide],
  });
  expect(answer).toMatchObject({ status: 'impossible', because: 'saturated' });
  expect(sourcesOf(answer)[0]?.citation).toContain('0.0341 mol/kg');
});

test('a recipe of more borax than dissolves is refused', () => {
  const answer = prepareBuffer({
    pH: 9.4,
    molar: 0.8,
    mL: 1000,
    from: [reagents.borax, reagents.sodiumHydroxide],
  });
  expect(answer).toMatchObject({ status: 'impossible', because: 'saturated' });
});

test('the carbonate of the air counts, in a solution that was made without it', () => {
  const milk = makeSolution({ contents: [{ reagent: calciumHydroxide, molar: 0.01 }] });
  const names = (conditions?: object) =>
    precipitatesOf(equilibrate(milk, conditions)).map(({ solid }) => solid.name);
  expect(names()).toEqual([]);
  expect(names({ carbonDioxide: { atm: 4e-4 } })).toContain('calcium carbonate');
});

test('what dissolves in pure water is held against concentrations, also with a law of activity', () => {
  // 0.036 mol/L, where 0.0341 dissolve; its activities multiply to less, by the square of a coefficient
  const solution = makeSolution({ contents: [{ reagent: potassiumHydrogenTartrate, molar: 0.036 }] });
  const { species } = equilibrate(solution, { activity: davies });
  const molar = (label: string) => species.find(({ formula }) => formula === label)?.molar ?? 0;
  const [held] = precipitatesOf({ solution, conditions: {}, species });
  expect(held?.solid.name).toBe('potassium hydrogen tartrate');
  expect(held?.excess).toBeCloseTo(Math.log10(molar('K+') * molar('HC4H4O6-')) + 3.091, 12);
});

test('a note says how many times, in two digits, and from a thousand times on in powers of ten', () => {
  const times = (excess: number) =>
    /multiply to (\S+) times/.exec(noteOnSolid({ solid: solids.calciumCarbonate, excess }))?.[1];
  expect([0.5, 2.5, 2.9999, 3, 4.2].map(times)).toEqual(['3.2', '320', '1000', '10^3', '10^4']);
});
