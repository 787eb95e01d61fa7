import { aliquot, makeSolution, mix, reagents } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const stock = makeSolution({
  mL: 250,
  contents: [
    { reagent: reagents.sodiumCarbonate, mmol: 12.5 },
    { reagent: reagents.sodiumChloride, mmol: 1 },
  ],
});

describe('an aliquot', () => {
  test('takes the same share of every amount', () => {
    const part = aliquot(stock, { mL: 25 });
    expect(part.mL).toBe(25);
    expect(part.contents.map(({ mmol }) => mmol)).toEqual([1.25, 0.1]);
  });

  test('may be larger than the solution: what is kept is the composition', () => {
    expect(aliquot(stock, { mL: 1000 }).contents.map(({ mmol }) => mmol)).toEqual([50, 4]);
  });

  test('and the rest make the whole', () => {
    expect(mix(aliquot(stock, { mL: 62.5 }), aliquot(stock, { mL: 187.5 }))).toEqual(stock);
  });

  test('of the whole volume is the solution itself', () => {
    expect(aliquot(stock, { mL: 250 })).toEqual(stock);
  });
});

test.each([
  ['no part', undefined, ['missing part']],
  ['a bare number', 25, ['wrong-type part']],
  ['nothing', { mL: 0 }, ['out-of-range part.mL']],
  ['a typing slip', { ml: 25 }, ['unknown-key part.ml', 'missing part.mL']],
  ['less than a picolitre', { mL: 1e-10 }, ['out-of-range part.mL']],
])('%s is refused', (_, part, faults) => {
  expect(listed(() => aliquot(stock, part as { mL: number }))).toEqual(faults);
});

test('faults of both arguments are listed together', () => {
  const call = () => aliquot({ mL: 1 } as typeof stock, { mL: Number.NaN });
  expect(listed(call)).toEqual(['missing solution.contents', 'not-finite part.mL']);
});
