import { Decimal } from 'decimal.js';
import type { Interval } from './interval-operations.js';

/**
 * The decimal of so many digits in an interval, off by less than one unit of its last digit; undefined where the
 * interval is too wide. Later calculations with it keep its digits.
 *
 * @internal
 */
export function certainDigits({ low, high }: Interval, digits: number): Decimal | undefined {
  const Lossless = Decimal.clone({ defaults: true, precision: 1e6 });
  const width = Lossless.sub(high, low);
  const least = Lossless.min(low.abs(), high.abs());
  if (!width.times(4).lte(least.times(`1e-${digits}`))) return undefined; // infinite ends leave here too
  const middle = Lossless.add(low, high).times('0.5').toSignificantDigits(digits);
  return new (decimalsToKeep(digits))(middle);
}

/** Decimals of so many digits and some more to calculate with. @internal */
export const decimalsToKeep = (digits: number): typeof Decimal =>
  Decimal.clone({ defaults: true, precision: digits + 30 });

/**
 * The first answer of an attempt that is repeated, each time with half as many digits more.
 *
 * @param most - the digits after which it returns undefined
 * @internal
 */
export function withMoreDigits<T>(
  from: number,
  most: number,
  attempt: (digits: number) => T | undefined,
): T | undefined {
  for (let digits = from; digits <= most; digits = Math.ceil(1.5 * digits)) {
    const answer = attempt(digits);
    if (answer !== undefined) return answer;
  }
  return undefined;
}
