import { addWater, makeSolution, makeUpTo, pHOf, reagents, solutionLimits } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const acid = makeSolution({ mL: 10, contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });

describe('dilution', () => {
  test('adds volume and leaves the amounts', () => {
    expect(addWater(acid, { mL: 90 })).toEqual({ mL: 100, contents: acid.contents });
    expect(makeUpTo(acid, { mL: 100 })).toEqual({ mL: 100, contents: acid.contents });
  });

  test('tenfold raises the pH of a strong acid by one', () => {
    // 0.1 and 0.01 mol/L in pKw 13.995: water adds Kw/c² relative to h, 1e-10 at most, and 4e-11 in pH
    const rise = pHOf(makeUpTo(acid, { mL: 100 })) - pHOf(acid);
    expect(Math.abs(rise - 1)).toBeLessThanOrEqual(5e-11);
  });

  test('by nothing is no change', () => {
    expect(addWater(acid, { mL: 0 })).toEqual(acid);
    expect(makeUpTo(acid, { mL: 10 })).toEqual(acid);
  });
});

describe('faults', () => {
  test.each([
    ['no water', undefined, ['missing water']],
    ['water taken away', { mL: -1 }, ['out-of-range water.mL']],
    ['more than the limit in all', { mL: solutionLimits.mL }, ['out-of-range water.mL']],
  ])('addWater: %s', (_, water, faults) => {
    expect(listed(() => addWater(acid, water as { mL: number }))).toEqual(faults);
  });

  test.each([
    ['no mark', null, ['wrong-type mark']],
    ['a mark below the present volume', { mL: 9.99 }, ['out-of-range mark.mL']],
    ['a mark above the limit', { mL: 2e9 }, ['out-of-range mark.mL']],
  ])('makeUpTo: %s', (_, mark, faults) => {
    expect(listed(() => makeUpTo(acid, mark as { mL: number }))).toEqual(faults);
  });

  test('a bad solution does not hide a bad mark', () => {
    const call = () => makeUpTo({ ...acid, mL: '10' as unknown as number }, { mL: Number.NaN });
    expect(listed(call)).toEqual(['wrong-type solution.mL', 'not-finite mark.mL']);
  });
});
