import {
  defineProtolyte,
  defineReagent,
  type Ingredient,
  makeSolution,
  molarMassOf,
  pHOf,
  type Reagent,
  reagents,
  solutionLimits,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { faultsOf, listed } from '../faults-of.js';
import { throughJSON } from '../json.js';
import { acidWith } from '../make.js';

const { sodiumCarbonate, hydrochloricAcid } = reagents;
const mmolOf = (ingredient: Ingredient, mL?: number) =>
  makeSolution({ ...(mL !== undefined && { mL }), contents: [ingredient] }).contents[0]?.mmol;

describe('amounts', () => {
  test('an amount is what it says', () => {
    expect(mmolOf({ reagent: sodiumCarbonate, mmol: 2.5 }, 50)).toBe(2.5);
  });

  test('a concentration is taken in the final volume: n = c·V', () => {
    expect(mmolOf({ reagent: sodiumCarbonate, molar: 0.05 }, 20)).toBe(1);
  });

  test('the final volume is 1000 mL where none is given', () => {
    expect(makeSolution({ contents: [] }).mL).toBe(1000);
    expect(mmolOf({ reagent: sodiumCarbonate, molar: 0.05 })).toBe(50);
  });

  test('a weighed solid brings purity·m/M: the rest is inert', () => {
    // 105.9875 g/mol from the standard atomic weights; three roundings
    const exact = (0.95 * 200) / 105.9875;
    const mmol = mmolOf({ reagent: sodiumCarbonate, grams: 0.2, purity: 0.95 }, 50) ?? 0;
    expect(Math.abs(mmol / exact - 1)).toBeLessThanOrEqual(3 * 2 ** -53);
    expect(mmolOf({ reagent: sodiumCarbonate, grams: 0.2 }, 50)).toBe(200 / molarMassOf('Na2CO3'));
  });

  test('an impure solid makes the same solution as the pure part of it', () => {
    const impure = makeSolution({
      mL: 50,
      contents: [{ reagent: sodiumCarbonate, grams: 0.4, purity: 0.5 }],
    });
    const pure = makeSolution({ mL: 50, contents: [{ reagent: sodiumCarbonate, grams: 0.2 }] });
    expect(impure).toEqual(pure);
  });

  test('a reagent named twice is added up, in the order of first mention', () => {
    const { contents } = makeSolution({
      mL: 10,
      contents: [
        { reagent: sodiumCarbonate, mmol: 1 },
        { reagent: hydrochloricAcid, mmol: 2 },
        { reagent: throughJSON(sodiumCarbonate), mmol: 0.25 },
      ],
    });
    expect(contents.map(({ reagent, mmol }) => [reagent.id, mmol])).toEqual([
      ['sodiumCarbonate', 1.25],
      ['hydrochloricAcid', 2],
    ]);
  });

  test('sums of amounts keep the last digit: ten times 0.1 mmol is 1 mmol', () => {
    const tenth = { reagent: hydrochloricAcid, mmol: 0.1 };
    expect(makeSolution({ mL: 10, contents: Array(10).fill(tenth) }).contents[0]?.mmol).toBe(1);
  });
});

describe('what is legal', () => {
  test('pure water, and nothing of a reagent', () => {
    expect(makeSolution({ mL: 50, contents: [] })).toEqual({ mL: 50, contents: [] });
    expect(mmolOf({ reagent: sodiumCarbonate, molar: 0 }, 50)).toBe(0);
    expect(mmolOf({ reagent: sodiumCarbonate, grams: 1, purity: 0 }, 50)).toBe(0);
  });

  test('the limits themselves', () => {
    for (const mL of [solutionLimits.leastML, solutionLimits.mL])
      expect(mmolOf({ reagent: hydrochloricAcid, molar: solutionLimits.molar }, mL)).toBe(mL * 60);
  });

  test('a reagent without a molar mass, by amount', () => {
    expect(mmolOf({ reagent: acidWith('a', 0, [5]).reagent, mmol: 1 })).toBe(1);
  });
});

describe('a solution is plain data', () => {
  const recipe = { mL: 20, contents: [{ reagent: sodiumCarbonate, molar: 0.1 }] };

  test('that survives JSON', () => {
    const solution = makeSolution(recipe);
    expect(throughJSON(solution)).toEqual(solution);
    expect(pHOf(throughJSON(solution))).toBe(pHOf(solution));
  });

  test('that does not change when a reagent is changed after it', () => {
    const reagent = throughJSON(sodiumCarbonate) as { ions: { count: number }[] } & Reagent;
    const solution = makeSolution({ mL: 20, contents: [{ reagent, molar: 0.1 }] });
    const before = pHOf(solution);
    (reagent.ions[0] as { count: number }).count = 1;
    expect(pHOf(solution)).toBe(before);
  });
});

describe('faults', () => {
  const make = (recipe: unknown) => () => makeSolution(recipe as Parameters<typeof makeSolution>[0]);
  const given = (ingredient: object) =>
    make({ mL: 20, contents: [{ reagent: sodiumCarbonate, ...ingredient }] });

  test.each([
    ['no recipe', make(undefined), ['missing the argument']],
    ['a recipe that is a list', make([]), ['wrong-type the argument']],
    ['a typing slip', make({ ml: 20, contents: [] }), ['unknown-key ml']],
    ['no contents', make({ mL: 20 }), ['missing contents']],
    ['no volume to speak of', make({ mL: 0, contents: [] }), ['out-of-range mL']],
    ['a volume as text', make({ mL: '20', contents: [] }), ['wrong-type mL']],
    ['an infinite volume', make({ mL: Number.POSITIVE_INFINITY, contents: [] }), ['not-finite mL']],
    ['nothing for an ingredient', make({ contents: [null] }), ['wrong-type contents[0]']],
    ['a hole in the list', make({ contents: new Array(1) }), ['missing contents[0]']],
    ['no reagent', make({ contents: [{ mmol: 1 }] }), ['missing contents[0].reagent']],
    ['no quantity', given({}), ['missing contents[0]']],
    ['two quantities', given({ grams: 1, mmol: 1 }), ['conflict contents[0]']],
    ['purity beside an amount', given({ mmol: 1, purity: 0.9 }), ['conflict contents[0].purity']],
    ['purity in percent', given({ grams: 1, purity: 95 }), ['out-of-range contents[0].purity']],
    ['a negative mass', given({ grams: -1 }), ['out-of-range contents[0].grams']],
    ['a negative concentration', given({ molar: -0.1 }), ['out-of-range contents[0].molar']],
    ['not a number', given({ mmol: Number.NaN }), ['not-finite contents[0].mmol']],
    ['more than any liquid holds', given({ grams: 1000 }), ['out-of-range contents[0].grams']],
  ])('%s', (_, call, faults) => expect(listed(call)).toEqual(faults));

  test('a mass of a reagent without a molar mass', () => {
    const call = make({ contents: [{ reagent: acidWith('a', 0, [5]).reagent, grams: 1 }] });
    expect(listed(call)).toEqual(['missing contents[0].reagent.molarMass']);
  });

  test('a reagent named twice exceeds the limit in all', () => {
    const half = { reagent: hydrochloricAcid, molar: 40 };
    expect(listed(make({ contents: [half] }))).toEqual([]);
    expect(listed(make({ contents: [half, half] }))).toEqual(['out-of-range contents']);
  });

  test('one id for two reagents, or for two sets of constants', () => {
    const own = acidWith('a', 0, [5]);
    const other = acidWith('a', 0, [6]);
    const salt = defineReagent({
      id: 'salt',
      name: 'salt',
      protolytes: [{ protolyte: other.protolyte, count: 1 }],
      ions: [],
    });
    const twice = defineReagent({ ...own.reagent, protolytes: [{ protolyte: own.protolyte, count: 2 }] });
    const call = (reagent: Reagent) =>
      make({
        contents: [
          { reagent: own.reagent, mmol: 1 },
          { reagent, mmol: 1 },
        ],
      });
    expect(listed(call(salt))).toEqual(['conflict contents[1].reagent.protolytes[0].protolyte']);
    expect(listed(call(twice))).toEqual(['conflict contents[1].reagent']);
    expect(listed(call(throughJSON(own.reagent)))).toEqual([]);
  });

  test('a name, a source or a hazard may differ: they enter no calculation', () => {
    const own = acidWith('a', 0, [5]);
    const renamed = { ...own.reagent, name: 'by another name', hazard: 'see the safety data sheet' };
    const redefined = defineProtolyte({ ...own.protolyte, name: 'other' });
    const other = { ...renamed, protolytes: [{ protolyte: redefined, count: 1 }] };
    const contents = [own.reagent, renamed, other].map((reagent) => ({ reagent, mmol: 1 }));
    expect(makeSolution({ contents }).contents).toHaveLength(1);
  });

  test('all faults of a call are listed together, each with what was given and what is allowed', () => {
    const call = make({
      mL: -1,
      colour: 'red',
      contents: [
        { reagent: acidWith('a', 0, [5]).reagent, mmol: Number.NaN },
        { reagent: acidWith('a', 0, [6]).reagent, grams: '3' },
        { reagent: { ...sodiumCarbonate, ions: 'none' }, molar: 61 },
        7,
      ],
    });
    expect(listed(call)).toEqual([
      'unknown-key colour',
      'out-of-range mL',
      'not-finite contents[0].mmol',
      'missing contents[1].reagent.molarMass',
      'wrong-type contents[1].grams',
      'wrong-type contents[2].reagent.ions',
      'out-of-range contents[2].molar',
      'wrong-type contents[3]',
      'conflict contents[1].reagent.protolytes[0].protolyte',
    ]);
    expect(faultsOf(call)[1]).toEqual({
      code: 'out-of-range',
      path: 'mL',
      expected: 'a volume in mL, from 1e-9 to 1e9',
      received: '-1',
    });
    expect(call).toThrow(
      /^makeSolution: 9 faults\n- colour is not a key; give one of mL, contents\.\n- mL is -1; give/,
    );
  });
});
