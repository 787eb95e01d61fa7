import { InputError, tabulate } from 'protolysis';
import { expect, test } from 'vitest';

const points = [
  { mL: 9.5, pH: 11.25, reaction: 'first' },
  { mL: 10, pH: -0.5, reaction: 'the second' },
];

test('a table has a heading, numbers to the right and text to the left, and no trailing blanks', () => {
  expect(tabulate(points, { reaction: 'text', pH: 2, mL: 1 })).toBe(
    ['reaction       pH    mL', 'first       11.25   9.5', 'the second  -0.50  10.0'].join('\n'),
  );
});

test('a table of no rows is its heading', () => expect(tabulate([], { mL: 2, pH: 2 })).toBe('mL  pH'));

test('a column that a row does not have is an error that names row and column', () => {
  expect(() => tabulate(points, { volume: 2 })).toThrow(InputError);
  expect(() => tabulate(points, { volume: 2 })).toThrow(/rows\[0\]\.volume.*missing[\s\S]*rows\[1\]\.volume/);
});

test('decimals are whole and from 0 to 15', () => {
  for (const decimals of [-1, 16, 1.5, Number.NaN])
    expect(() => tabulate(points, { mL: decimals })).toThrow(InputError);
});
