import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as acids from '../../src/acids.js';
import type { InputError } from '../../src/input/input-error.js';
import * as reagents from '../../src/reagents.js';
import { defineReagent, type Reagent } from '../../src/substance/reagent.js';
import { answerOrInputError, hostile, spoiled } from '../property/hostile.js';

const sodium = { formula: 'Na+', charge: 1 };
const propanoate: Reagent = {
  id: 'sodiumPropanoate',
  name: 'sodium propanoate',
  formula: 'C2H5COONa',
  protolytes: [{ protolyte: acids.propanoic, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
};

const faultsOf = (value: unknown): (readonly [string, string])[] => {
  try {
    defineReagent(value as Reagent);
    return [];
  } catch (error) {
    return (error as InputError).issues.map(({ code, path }) => [code, path] as const);
  }
};

test('the molar mass comes from the formula, unless it is given', () => {
  expect(defineReagent(propanoate)).toEqual({ ...propanoate, molarMass: 96.0608 });
  expect(defineReagent({ ...propanoate, molarMass: 96.1 }).molarMass).toBe(96.1);
});

test('nothing is lighter than hydrogen', () => {
  expect(faultsOf({ ...propanoate, molarMass: 0.9 })).toEqual([['out-of-range', 'molarMass']]);
  expect(faultsOf({ ...propanoate, molarMass: 1 })).toEqual([]);
});

test('a reagent known by its molar mass alone may have any label as formula', () => {
  const { formula: _, ...rest } = propanoate;
  expect(defineReagent(rest)).not.toHaveProperty('molarMass');
  expect(defineReagent({ ...rest, formula: 'technical grade', molarMass: 96 }).molarMass).toBe(96);
});

test('every reagent of the catalogue, which nothing reads at import, is sound, and as good after a trip through JSON', () => {
  for (const reagent of Object.values(reagents)) {
    const copy = JSON.parse(JSON.stringify(reagent));
    expect(copy).toEqual(reagent);
    expect(defineReagent(copy)).toEqual(reagent);
  }
});

test('every molar mass that the catalogue writes out is that of its formula', () => {
  for (const reagent of Object.values(reagents)) {
    const { molarMass: _, ...rest } = reagent;
    expect(defineReagent(rest)).toEqual(reagent);
  }
});

test('all faults of a call are listed together', () => {
  const bad = {
    id: 'x',
    name: '',
    formula: 'C2H5COONq',
    protolytes: [{ protolyte: { ...acids.propanoic, steps: [] }, count: 0 }],
    ions: [{ ion: { formula: 'Na+', charge: 0.5 }, count: Number.POSITIVE_INFINITY }, { count: 1 }],
    hazard: 3,
    colour: 'white',
  };
  expect(faultsOf(bad).sort()).toEqual(
    [
      ['unknown-key', 'colour'],
      ['out-of-range', 'name'],
      ['bad-formula', 'formula'],
      ['out-of-range', 'protolytes[0].protolyte.steps'],
      ['out-of-range', 'protolytes[0].count'],
      ['out-of-range', 'ions[0].ion.charge'],
      ['not-finite', 'ions[0].count'],
      ['missing', 'ions[1].ion'],
      ['wrong-type', 'hazard'],
    ].sort(),
  );
});

test('limits of a hazard fall, from no more than 100 %, and have a source', () => {
  const hazard = {
    limits: [
      { percent: 120, effect: 'a' },
      { percent: 10, effect: 'b' },
      { percent: 20, effect: '' },
    ],
    words: 'w',
  };
  expect(faultsOf({ ...propanoate, hazard })).toEqual([
    ['out-of-range', 'hazard.limits[0].percent'],
    ['out-of-range', 'hazard.limits[2].percent'],
    ['out-of-range', 'hazard.limits[2].effect'],
    ['missing', 'hazard.source'],
  ]);
  const { hazard: good = '' } = reagents.aceticAcid;
  expect(defineReagent({ ...propanoate, hazard: good }).hazard).toEqual(good);
});

test('anything, or a good reagent with anything in it, is answered or an InputError', () => {
  const good = reagents.trisHydrochloride;
  fc.assert(
    fc.property(fc.oneof(hostile, spoiled(good), spoiled(propanoate)), (value) => {
      const answer = answerOrInputError(() => defineReagent(value as Reagent));
      if (answer?.molarMass !== undefined) expect(answer.molarMass).toBeGreaterThan(0);
    }),
    { numRuns: 500 },
  );
});
