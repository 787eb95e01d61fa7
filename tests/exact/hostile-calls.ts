import { acids, air, reagents } from 'protolysis';
import * as exact from 'protolysis/exact';
import type { PublicCall } from '../property/hostile-calls.js';

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
export const good: Record<string, readonly unknown[]> = {
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
export const callables = Object.entries({ ...exact, ...titration }).filter(
  ([name, value]) => typeof value === 'function' && !name.endsWith('Error'),
) as [string, (...args: never[]) => unknown][];

/** The same as a list. */
export const exactCalls: readonly PublicCall[] = callables.map(([name, call]) => ({
  name: `exact ${name}`,
  call,
  examples: [good[name] ?? []],
}));
