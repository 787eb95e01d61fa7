import fc from 'fast-check';
import { reagents } from 'protolysis';
import {
  addWater,
  aliquot,
  compareWithExact,
  exactEquilibrium,
  exactTitration,
  makeSolution,
  makeUpTo,
  mix,
} from 'protolysis/exact';
import { describe, expect, test } from 'vitest';
import { answerOrInputError, hostile, spoiled } from '../property/hostile.js';

const recipe = {
  mL: '20',
  contents: [
    { reagent: reagents.sodiumCarbonate, grams: '0.1', purity: 0.95 },
    { reagent: reagents.sodiumChloride, molar: '1/30' },
  ],
};
const solution = makeSolution(recipe);
const part = { mL: '5' };
const digits = { digits: 5 };

/** Each with one good call and the arguments to spoil. */
const calls: readonly [string, (...args: never[]) => unknown, readonly object[]][] = [
  ['makeSolution', makeSolution, [recipe]],
  ['mix', mix, [solution, solution]],
  ['aliquot', aliquot, [solution, part]],
  ['addWater', addWater, [solution, part]],
  ['makeUpTo', makeUpTo, [solution, { mL: '50' }]],
  ['exactEquilibrium', exactEquilibrium, [solution, digits]],
  [
    'exactTitration',
    exactTitration,
    [{ analyte: solution, titrant: solution, conditions: { pKw: '14' } }, digits],
  ],
  ['compareWithExact', compareWithExact, [solution, { pKw: 13.9 }]],
];

describe('hostile input meets an InputError or an answer', () => {
  test.each(calls)('in %s', (_, call, args) => {
    expect(() => call(...(args as never[]))).not.toThrow();
    const arg = args.map((good) => fc.oneof(hostile, spoiled(good), fc.constant(good)));
    fc.assert(
      fc.property(fc.tuple(...arg), (given) => void answerOrInputError(() => call(...(given as never[])))),
    );
  });

  test.each(['pHAt', 'slopeAt', 'volumeAt'] as const)('in %s of a titration', (method) => {
    const titration = exactTitration({ analyte: solution, titrant: solution }, digits);
    fc.assert(
      fc.property(hostile, (value) => void answerOrInputError(() => titration[method](value as never))),
      { numRuns: 50 },
    );
  });
});
