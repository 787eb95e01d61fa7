import fc from 'fast-check';
import { acids, air, reagents } from 'protolysis';
import * as exact from 'protolysis/exact';
import { describe, expect, test } from 'vitest';
import { changeable } from '../property/changeable.js';
import { answerOrInputError, hostileArguments, spoiled } from '../property/hostile.js';

const recipe = {
  mL: '20',
  contents: [
    { reagent: reagents.sodiumCarbonate, grams: '0.1', purity: 0.95 },
    { reagent: reagents.sodiumChloride, molar: '1/30' },
  ],
};
const solution = exact.makeSolution(recipe);
const part = { mL: '5' };
const digits = { digits: 5 };
const carbonDioxide = { ...air, pKH: '1.5', protolyte: acids.carbonic };
const titration = exact.exactTitration({ analyte: solution, titrant: solution }, digits);

/** Good arguments of every function and method, to be spoiled. */
const good: Record<string, readonly unknown[]> = {
  makeSolution: [recipe],
  mix: [solution, solution],
  aliquot: [solution, part],
  addWater: [solution, part],
  makeUpTo: [solution, { mL: '50' }],
  exactPH: [solution, { digits: 5, pKw: '14', activity: exact.debyeHuckelExtended }],
  exactEquilibrium: [solution, { digits: 5, activity: exact.davies }],
  exactTitration: [
    { analyte: solution, titrant: solution, conditions: { pKw: '14', carbonDioxide } },
    digits,
  ],
  compareWithExact: [solution, { celsius: '30', carbonDioxide, activity: exact.davies }],
  pHAt: ['1'],
  slopeAt: ['1'],
  volumeAt: ['7'],
};
const callables = Object.entries({ ...exact, ...titration }).filter(
  ([name, value]) => typeof value === 'function' && !name.endsWith('Error'),
) as [string, (...args: never[]) => unknown][];

test('every function of the entry, and every method of a titration, is met here', () => {
  expect(callables.map(([name]) => name).sort()).toEqual(Object.keys(good).sort());
});

describe.each(callables)('%s', (name, call) => {
  const run = (values: readonly unknown[]) => call(...(values as never[]));
  const values = good[name] ?? [];

  test('answers to good arguments', () => {
    expect(changeable(run(values), 'result')).toEqual([]);
  });

  test('answers to anything else with an InputError and nothing else', () => {
    fc.assert(
      fc.property(hostileArguments, (make) => void answerOrInputError(() => run(make()))),
      { numRuns: 100 },
    );
  });

  test('answers to good arguments with one thing spoiled likewise', () => {
    fc.assert(
      fc.property(spoiled(values), (bad) => void answerOrInputError(() => run(bad))),
      { numRuns: 100 },
    );
  });
});
