import {
  bufferResponse,
  equilibrate,
  indicators,
  makeSolution,
  rankIndicators,
  reagents,
  rows,
  tabulate,
  titrate,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const points = [
  { mL: 9.5, pH: 11.25, reaction: 'first', useful: { from: 1.5, to: null }, beside: [1, 2] },
  { mL: 10, pH: -0.5, reaction: 'the second', useful: null, beside: [3, 4] },
];
const analyte = makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });

describe('a table', () => {
  test('has a heading, numbers to the right and text to the left, and no trailing blanks', () =>
    expect(tabulate(points, { reaction: 'text', pH: 2, mL: 1 })).toBe(
      ['reaction       pH    mL', 'first       11.25   9.5', 'the second  -0.50  10.0'].join('\n'),
    ));

  test('prints what stands in an object or a list by its path, and a dash for nothing', () =>
    expect(tabulate(points, { 'useful.from': 1, 'useful.to': 1, 'beside.1': 0 })).toBe(
      [
        'useful.from  useful.to  beside.1',
        '        1.5          –         2',
        '          –          –         4',
      ].join('\n'),
    ));

  test('of no rows is its heading', () => {
    const none: { mL: number; pH: number }[] = [];
    expect(tabulate(none, { mL: 2, pH: 2 })).toBe('mL  pH');
  });

  test('is made of a curve as it is', () =>
    expect(tabulate(titrate({ analyte, titrant }).curve({ every: 10, upTo: 10 }), { mL: 1, pH: 1 })).toBe(
      ['  mL    pH', ' 0.0  11.5', '10.0   8.3'].join('\n'),
    ));

  test("is made of a buffer's response with what is beside it", () =>
    expect(
      tabulate(bufferResponse(analyte, { add: titrant, drops: 1, beside: [analyte] }), {
        mL: 2,
        'beside.0': 1,
      }),
    ).toBe(['  mL  beside.0', '0.00      11.5', '0.05      11.5'].join('\n')));

  test('names a column that no row has once, with those there are', () => {
    // @ts-expect-error no such key
    const wrong = () => tabulate(points, { volume: 2 });
    expect(listed(wrong)).toEqual(['unknown-key columns.volume']);
    expect(wrong).toThrow(/volume is in no row; give a key of the rows: mL, pH, reaction/);
  });

  test('names a column of the wrong kind once', () => {
    // @ts-expect-error a number as text, and a text with decimals
    expect(listed(() => tabulate(points, { mL: 'text', reaction: 2 }))).toEqual([
      'wrong-type table[0].mL',
      'wrong-type table[0].reaction',
    ]);
    expect(listed(() => tabulate([{ mL: Number.NaN }], { mL: 1 }))).toEqual(['not-finite table[0].mL']);
  });

  test('without columns prints what csvOf takes then', () =>
    expect(tabulate([{ mL: 9.5, pH: 6.254, of: 'first' }])).toBe('  mL    pH  of\n9.50  6.25  first'));

  test('prints a dash for a key that holds nothing in any row', () =>
    expect(tabulate([{ mL: 1, note: undefined }], { mL: 0, note: 'text' })).toBe('mL  note\n 1  –'));

  test('names the keys of all rows, and never the one that it refuses', () => {
    const ragged: Record<string, number>[] = [{ mL: 1 }, { pH: 7 }];
    expect(() => tabulate(ragged, { ph: 1 })).toThrow(/ph is in no row; give a key of the rows: mL, pH\.$/);
  });

  test('prints what rounds to zero without a sign', () =>
    expect(tabulate([{ pH: -0.001 }, { pH: -0 }, { pH: -0.006 }], { pH: 2 })).toBe(
      '   pH\n 0.00\n 0.00\n-0.01',
    ));

  test('refuses a text that would break its line', () => {
    for (const text of ['two\nlines', '\u001b[31mred', 'end\u2028', '\u202eturned', '\ud800'])
      expect(listed(() => tabulate([{ text }], { text: 'text' }))).toEqual(['wrong-type table[0].text']);
    expect(listed(() => tabulate([{ 'a\tb': 1 }], { 'a\tb': 1 }))).toEqual(['wrong-type columns']);
  });

  test('that no text could hold is refused', () =>
    expect(() =>
      tabulate([{ a: 'x'.repeat(1e6) }, ...Array.from({ length: 1000 }, () => ({ a: '' }))], { a: 'text' }),
    ).toThrow(/^tabulate: table is a table of 1.002002004e9 characters/));

  test('is not made of a ranking or an equilibrium, which hold lists of rows', () => {
    const titration = titrate({ analyte, titrant });
    const ranking = rankIndicators(titration, Object.values(indicators));
    expect(() => tabulate(ranking, {})).toThrow(
      /^tabulate: table is a ranking; give a list of rows, such as its ranking, points, or a result in columns, such as a curve { mL, pH, slope }\.$/,
    );
    expect(() => tabulate(equilibrate(analyte), {})).toThrow(
      /^tabulate: table is an equilibrium; give a list of rows, such as its species, or a result/,
    );
    expect(() => rows(equilibrate(analyte))).toThrow(
      /^rows: the argument is an equilibrium; give a result in columns/,
    );
  });

  test('of more rows than a call has arguments is made', () =>
    expect(tabulate({ a: new Float64Array(130_000) }, { a: 0 }).length).toBe(2 * 130_000 + 1));

  test('takes a key with a dot in it', () =>
    expect(tabulate([{ 'a.b': 3 }], { 'a.b': 1 } as never)).toBe('a.b\n3.0'));

  test('says that a titration is no table', () =>
    expect(() => tabulate(titrate({ analyte, titrant }), {})).toThrow(
      /^tabulate: table is a titration; give a list of rows, such as its equivalencePoints, halfEquivalencePoints, inflectionPoints, or a result/,
    ));

  test('takes decimals that are whole and from 0 to 15', () => {
    for (const decimals of [-1, 16, 1.5, Number.NaN])
      expect(listed(() => tabulate(points, { mL: decimals }))).toHaveLength(1);
  });
});

test('the compiler refuses a path that leads nowhere', () => {
  () => {
    tabulate(points, { mL: 1, 'useful.from': 1, 'beside.0': 1 });
    // @ts-expect-error no such key inside
    tabulate(points, { 'useful.middle': 1 });
    // @ts-expect-error an object is no cell
    tabulate(points, { useful: 1 });
    // @ts-expect-error not a column of a curve
    tabulate(titrate({ analyte, titrant }).curve({ every: 1, upTo: 2 }), { volume: 1 });
  };
});
