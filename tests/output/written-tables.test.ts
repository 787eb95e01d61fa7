import Papa from 'papaparse';
import {
  bufferResponse,
  capacityOver,
  csvOf,
  htmlOf,
  indicators,
  jsonOf,
  makeSolution,
  markdownOf,
  overshoot,
  planAdditions,
  rankIndicators,
  reagents,
  titrate,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const analyte = makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const titration = titrate({ analyte, titrant });

const results: Readonly<Record<string, object>> = {
  'a curve': titration.curve({ every: 5, upTo: 30 }),
  'equivalence points': titration.equivalencePoints,
  'inflection points': titration.inflectionPoints,
  "a buffer's response": bufferResponse(analyte, { add: titrant, drops: 3, beside: [analyte] }),
  'a capacity': capacityOver(analyte, { from: 5, to: 7, every: 0.5 }),
  'a plan of additions': planAdditions(titration),
  'drops too many': overshoot(titration, indicators.methylOrange),
  'a ranking': rankIndicators(titration, [indicators.methylOrange, indicators.phenolphthalein]).ranking,
  'the species of an equilibrium': titration.equilibriumAt(5).species,
};

const cellsOf = (csv: string, delimiter = ',') => {
  const { data, errors } = Papa.parse(csv, { delimiter, newline: '\r\n' });
  expect(errors).toEqual([]);
  return (data as string[][]).slice(0, -1); // after the last line ending there is nothing
};

describe.each(Object.entries(results))('%s', (_, result) => {
  const rows = cellsOf(csvOf(result));
  const records = JSON.parse(jsonOf(result)) as Record<string, unknown>[];

  test('has a heading of its own over every column, in every form', () => {
    const [headings = []] = rows;
    expect(new Set(headings).size).toBe(headings.length);
    expect(headings).toHaveLength(Object.keys(records[0] ?? {}).length);
    expect(markdownOf(result).split('\n')[0]).toBe(`| ${headings.join(' | ')} |`);
    for (const heading of headings) expect(htmlOf(result)).toContain(`>${heading}</th>`);
  });

  test('keeps every row, and its numbers are numbers to a spreadsheet', () => {
    expect(rows).toHaveLength(records.length + 1);
    for (const [k, record] of records.entries())
      for (const [j, value] of Object.values(record).entries())
        if (typeof value === 'number') {
          const shown = rows[k + 1]?.[j] ?? '';
          expect(shown).toMatch(/^-?\d+(\.\d+)?(e[+-]\d+)?$/);
          // half a unit of the last digit shown
          const [digits = '', exponent = '0'] = shown.split('e');
          const unit = 10 ** (Number(exponent) - (digits.split('.')[1]?.length ?? 0));
          expect(Math.abs(Number(shown) - value)).toBeLessThanOrEqual(unit * (0.5 + 1e-9));
        }
  });

  test('is JSON in full', () => {
    if (Array.isArray(result)) expect(records).toHaveLength(result.length);
    for (const [key, value] of Object.entries((Array.isArray(result) ? result[0] : {}) as object))
      if (typeof value === 'number') expect(records[0]?.[key]).toBe(value);
  });
});

describe('headings', () => {
  test('name the unit', () =>
    expect(
      cellsOf(csvOf([{ mL: 1, pH: 7, slope: 0.1, molar: 0.1, mmol: 2, grams: 1, celsius: 25 }]))[0],
    ).toEqual([
      'volume, mL',
      'pH',
      'slope dpH/dV, per mL',
      'concentration, mol/L',
      'amount, mmol',
      'mass, g',
      'temperature, °C',
    ]));

  test('say of what a value inside is', () =>
    expect(cellsOf(csvOf([{ titrationError: { mL: 0.1 }, change: { from: 1 }, beside: [7, 8] }]))[0]).toEqual(
      ['titration error: volume, mL', 'change from, mL', 'beside, pH (1)', 'beside, pH (2)'],
    ));

  test('are those given, where columns bring them', () => {
    const columns = { mL: { as: 1, heading: 'burette, mL' } } as const;
    expect(csvOf([{ mL: 1, pH: 7 }], columns)).toBe('"burette, mL"\r\n1.0\r\n');
    expect(htmlOf([{ mL: 1 }], columns)).toContain('>burette, mL</th>');
  });
});

describe('CSV', () => {
  test.each(['=1+1', '+cmd', '-2+3', '@sum', ' =1', '＝1', '=HYPERLINK("x","y")'])(
    'makes the text %j harmless to a spreadsheet',
    (of) => expect(cellsOf(csvOf([{ of }]))[1]).toEqual([`'${of}`]),
  );

  test.each(['-0.5', '+3', '-1e-7', '-0,5'])('leaves the number %j in a text as it is', (of) =>
    expect(cellsOf(csvOf([{ of }]))[1]).toEqual([of]),
  );

  test('keeps a key that is no words run together, such as pKa, as it stands', () => {
    const row = { pKa: 4.756, pKIn: 3.4, NaCl: 1, isAtLimit: 2 };
    expect(csvOf([{ ...row, pKa: { value: 1 } }]).split('\r\n')[0]).toBe('pKa: value,pKIn,NaCl,is at limit');
    expect(csvOf([row]).split('\r\n')[0]).toBe('pKa,pKIn,NaCl,is at limit');
  });

  test('makes a heading harmless too', () => expect(csvOf([{ '=x': 1 }])).toBe("'=x\r\n1\r\n"));

  test('keeps commas and quotation marks in a text, by RFC 4180', () =>
    expect(csvOf([{ of: 'a, "b"' }])).toBe('of\r\n"a, ""b"""\r\n'));

  test('has nothing where there is no value', () =>
    expect(
      csvOf([
        { mL: 1, of: 'x' },
        { mL: null, of: null },
      ]),
    ).toBe('"volume, mL",of\r\n1.00,x\r\n,\r\n'));

  test('has commas in numbers and semicolons between for a country that writes so', () =>
    expect(csvOf([{ mL: -1.5, of: 'a;b' }], undefined, { decimalComma: true })).toBe(
      'volume, mL;of\r\n-1,50;"a;b"\r\n'.replace('volume, mL', '"volume, mL"'),
    ));
});

test('Markdown puts numbers to the right, and keeps its own signs out of texts', () =>
  expect(markdownOf([{ mL: 1, of: 'a|b <i>*c*' }])).toBe(
    ['| volume, mL | of |', '| ---: | :--- |', '| 1.00 | a\\|b \\<i\\>\\*c\\* |'].join('\n'),
  ));

test('HTML escapes every text, and puts numbers to the right', () => {
  const html = htmlOf([{ '<b>': '<script>"&', mL: 1 }], undefined, { caption: '</caption><script>' });
  expect(html).not.toMatch(/<script|<b>/);
  expect(html).toContain('<td>&lt;script&gt;&quot;&amp;</td>');
  expect(html).toContain('<td style="text-align:right;font-variant-numeric:tabular-nums">1.00</td>');
});

test('JSON is rounded where columns say how', () =>
  expect(jsonOf([{ mL: 1.26, pH: 7.777, of: null }], { mL: 1, of: 'text' })).toBe('[{"mL":1.3,"of":null}]'));

test('a column is one kind of thing: numbers and texts in one are a fault', () =>
  expect(listed(() => csvOf([{ a: 1 }, { a: 'x' }]))).toEqual(['wrong-type table[1].a']));

test('rows of too many columns are refused, not cut', () =>
  expect(
    listed(() => csvOf([Object.fromEntries(Array.from({ length: 300 }, (_, k) => [`c${k}`, k]))])),
  ).toEqual(['out-of-range table']));

test('a table that no text can hold is refused', () => {
  const of = 'x'.repeat(1e6);
  expect(listed(() => htmlOf(Array.from({ length: 100 }, () => ({ of }))))).toEqual(['out-of-range table']);
});
