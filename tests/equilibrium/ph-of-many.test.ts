import { air, davies, makeSolution, pHOf, pHsOf, reagents } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { faultsOf } from '../faults-of.js';

const made = { reagent: reagents.sodiumCarbonate, molar: [0.05, 0.01, 0] };
const columns = {
  contents: [
    made,
    { reagent: reagents.hydrochloricAcid, molar: [0.08, 0, 0.03] },
    { reagent: reagents.sodiumChloride, molar: 0.1 },
  ],
};

describe('pHsOf', () => {
  test('gives each row the pH that pHOf gives it', () => {
    const rows = Array.from(pHsOf(columns));
    const each = [0, 1, 2].map((row) =>
      pHOf(
        makeSolution({
          contents: columns.contents.map(({ reagent, molar }) => ({
            reagent,
            molar: typeof molar === 'number' ? molar : (molar[row] as number),
          })),
        }),
      ),
    );
    // a few roundings of the amounts, and of the pH itself
    for (const [row, pH] of each.entries()) expect(Math.abs((rows[row] as number) - pH)).toBeLessThan(1e-13);
  });

  test('takes typed arrays as well as lists', () => {
    const typed = columns.contents.map(({ reagent, molar }) => ({
      reagent,
      molar: typeof molar === 'number' ? molar : Float64Array.from(molar),
    }));
    expect(pHsOf({ contents: typed })).toEqual(pHsOf(columns));
  });

  test('takes other conditions', () => {
    const [neutral] = pHsOf({ contents: [{ reagent: reagents.sodiumChloride, molar: [0.1] }] }, { pKw: 13 });
    expect(neutral).toBe(6.5);
  });

  test.each([
    ['with activity', { activity: davies, celsius: 37 }],
    ['open to the air', { carbonDioxide: air }],
    ['with some of the CO2 escaping', { carbonDioxide: { ...air, escape: 0.5 } }],
  ])('gives each row the pH that pHOf gives it %s', (_, conditions) => {
    const rows = pHsOf(columns, conditions);
    for (const row of [0, 1, 2]) {
      const contents = columns.contents.map(({ reagent, molar }) => ({
        reagent,
        molar: typeof molar === 'number' ? molar : (molar[row] as number),
      }));
      const pH = pHOf(makeSolution({ contents }), conditions);
      expect(Math.abs((rows[row] as number) - pH)).toBeLessThan(1e-12);
      if (row === 0) expect(Math.abs(pH - pHOf(makeSolution({ contents })))).toBeGreaterThan(1e-3);
    }
  });

  test('gives nothing for columns of no rows', () => {
    expect(pHsOf({ contents: [{ reagent: reagents.aceticAcid, molar: [] }] })).toHaveLength(0);
  });

  test('goes to a worker and back: its argument survives structuredClone', () => {
    expect(pHsOf(structuredClone(columns))).toEqual(pHsOf(columns));
  });

  test('refuses columns of different lengths, and contents without a column', () => {
    const { reagent } = made;
    expect(() => pHsOf({ contents: [made, { reagent: reagents.aceticAcid, molar: [1] }] })).toThrow(
      'columns of one length',
    );
    expect(() => pHsOf({ contents: [{ reagent, molar: 0.1 }] })).toThrow('columns of one length');
  });

  test('tells columns of several lengths from none, and says neither of a number that is at fault', () => {
    const { reagent } = made;
    const faults = (contents: unknown) =>
      faultsOf(() => pHsOf({ contents } as never)).map(({ code, path, received }) => [code, path, received]);
    expect(faults([{ reagent, molar: 0.1 }])).toEqual([['missing', 'contents', 'without a column']]);
    expect(faults([made, { reagent: reagents.aceticAcid, molar: [1] }])).toEqual([
      ['conflict', 'contents', 'columns of lengths 3, 1'],
    ]);
    expect(faults([{ reagent, molar: -1 }])).toEqual([['out-of-range', 'contents[0].molar', '-1']]);
  });

  test('names the first ten of many bad numbers', () => {
    const molar = new Array<number>(1e5).fill(Number.NaN);
    expect(() => pHsOf({ contents: [{ reagent: made.reagent, molar }] })).toThrow('10 faults');
  });
});
