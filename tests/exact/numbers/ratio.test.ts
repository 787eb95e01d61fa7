import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compared, ratioOf, ratios, textOf } from '../../../src/exact/numbers/ratio.js';

const whole = fc.bigInt({ min: -(10n ** 40n), max: 10n ** 40n });
const fraction = fc
  .record({ over: whole, under: fc.bigInt({ min: 1n, max: 10n ** 20n }) })
  .map(({ over, under }) =>
    ratios.over({ numerator: over, denominator: 1n }, { numerator: under, denominator: 1n }),
  );

describe('a fraction of whole numbers', () => {
  test.each([
    ['0.1000', 1n, 10n],
    ['1e-7', 1n, 10_000_000n],
    ['.5', 1n, 2n],
    ['5.', 5n, 1n],
    ['-2.50E+2', -250n, 1n],
    ['0.2/0.3', 2n, 3n],
    ['0', 0n, 1n],
  ])('%s is %d/%d', (text, numerator, denominator) => {
    expect(ratioOf(text)).toEqual({ numerator, denominator });
  });

  test.each(['', '.', 'e5', '1/0', '1/2/3', '0x10', 'Infinity', 'NaN', '1 ', '1,5', '1e9999', '--1', '1/'])(
    '%j is none',
    (text) => {
      expect(ratioOf(text)).toBeUndefined();
    },
  );

  test('is read back from its text', () => {
    fc.assert(fc.property(fraction, (ratio) => void expect(ratioOf(textOf(ratio))).toEqual(ratio)));
  });

  test('is written as a decimal where the decimal ends, else in lowest terms', () => {
    expect(
      ['0.2500', '-3', '2/6', '1e3', '-0.05'].map((text) => textOf(ratioOf(text) ?? ratios.of(0))),
    ).toEqual(['0.25', '-3', '1/3', '1000', '-0.05']);
  });

  test('keeps the laws of arithmetic', () => {
    fc.assert(
      fc.property(fraction, fraction, fraction, (a, b, c) => {
        expect(ratios.times(a, ratios.plus(b, c))).toEqual(
          ratios.plus(ratios.times(a, b), ratios.times(a, c)),
        );
        expect(ratios.plus(ratios.minus(a, b), b)).toEqual(a);
        if (b.numerator !== 0n) expect(ratios.times(ratios.over(a, b), b)).toEqual(a);
        expect(Math.sign(compared(a, b))).toBe(-Math.sign(compared(b, a)) + 0);
      }),
    );
  });
});
