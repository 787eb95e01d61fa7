import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Interval } from '../../../src/exact/numbers/interval-operations.js';
import { intervals } from '../../../src/exact/numbers/intervals.js';
import { compared, type Ratio, ratioOf, ratios } from '../../../src/exact/numbers/ratio.js';

const exact = (decimal: Decimal): Ratio => ratioOf(decimal.toFixed()) as Ratio;
const holds = ({ low, high }: Interval, value: Ratio) =>
  compared(exact(low), value) <= 0 && compared(value, exact(high)) <= 0;

/** Decimals of many digits and of any size, among them those that lie far apart. */
const decimal = fc
  .record({
    digits: fc.bigInt({ min: -(10n ** 60n), max: 10n ** 60n }),
    exponent: fc.integer({ min: -120, max: 60 }),
  })
  .map(({ digits, exponent }) => ratioOf(`${digits}e${exponent}`) as Ratio);

describe('interval arithmetic', () => {
  // the one thing that the proof takes from decimal.js: rounding in the direction it is told
  test.each(['plus', 'minus', 'times', 'over'] as const)('%s holds the exact result', (name) => {
    fc.assert(
      fc.property(decimal, decimal, fc.integer({ min: 1, max: 40 }), (a, b, digits) => {
        fc.pre(name !== 'over' || b.numerator !== 0n);
        const arithmetic = intervals(digits);
        const result = arithmetic[name](arithmetic.ofRatio(a), arithmetic.ofRatio(b));
        if (Number.isFinite(result.low.toNumber()) || result.low.isFinite())
          expect(holds(result, ratios[name](a, b))).toBe(true);
        else expect(result.low.toString()).toBe('-Infinity');
      }),
      { numRuns: 500 },
    );
  });

  test('is as narrow as its digits allow', () => {
    const { over, of } = intervals(30);
    const third = over(of(1), of(3));
    expect(third.high.minus(third.low).toNumber()).toBe(1e-30);
  });

  test('a logarithm of more digits than decimal.js knows of ln 10 holds the value too', () => {
    const { log10, of } = intervals(1100);
    const [ten, two] = [log10(of(10)), log10(of(2))];
    expect(ten.low.lte(1) && ten.high.gte(1)).toBe(true);
    const known = Decimal.clone({ precision: 900 }).log10(2);
    expect(two.low.minus(known).abs().lt('1e-899')).toBe(true);
    expect(two.high.minus(two.low).lt('1e-1080')).toBe(true); // what some dozen steps of 1100 digits leave
  });

  test('ln 10 holds the value that decimal.js keeps to a thousand digits', () => {
    const { ln10 } = intervals(520);
    const kept = Decimal.clone({ defaults: true, precision: 1000 }).ln(10);
    expect(ln10.low.lte(kept) && ln10.high.gte(kept)).toBe(true);
    expect(ln10.high.minus(ln10.low).lt('1e-515')).toBe(true);
  });

  test('10^(a/b), to the power of b, holds 10^a', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -2000, max: 2000 }),
        fc.integer({ min: 1, max: 50 }),
        fc.integer({ min: 15, max: 60 }),
        (a, b, digits) => {
          const { low, high } = intervals(digits).powerOfTen(ratioOf(`${a}/${b}`) as Ratio);
          const sideOf = (value: Decimal) => {
            const { numerator, denominator } = exact(value);
            const [top, bottom] = [numerator ** BigInt(b), denominator ** BigInt(b)];
            const [left, right] = a < 0 ? [top * tenTo(-a), bottom] : [top, bottom * tenTo(a)];
            return left < right ? -1 : left > right ? 1 : 0;
          };
          expect(sideOf(low)).toBeLessThanOrEqual(0);
          expect(sideOf(high)).toBeGreaterThanOrEqual(0);
          expect(high.minus(low).div(low).toNumber()).toBeLessThan(10 ** (8 - digits));
        },
      ),
      { numRuns: 60 },
    );
  });

  test('whole powers of ten are points', () => {
    const { low, high } = intervals(20).powerOfTen(ratios.of(-14));
    expect([low.toString(), high.toString()]).toEqual(['0.00000000000001', '0.00000000000001']);
  });
});

const tenTo = (exponent: number) => 10n ** BigInt(exponent);
