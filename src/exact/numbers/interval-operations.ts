import { Decimal } from 'decimal.js';
import type { Ratio } from './ratio.js';

/** All numbers from `low` to `high`. @internal */
export interface Interval {
  readonly low: Decimal;
  readonly high: Decimal;
}

/** The four operations on intervals, and what they are built from. @internal */
export interface FourOperations {
  readonly digits: number;
  /** Decimals that round down. */
  readonly Down: typeof Decimal;
  /** Decimals that round up. */
  readonly Up: typeof Decimal;
  of(value: number): Interval;
  ofRatio(ratio: Ratio): Interval;
  plus(a: Interval, b: Interval): Interval;
  minus(a: Interval, b: Interval): Interval;
  times(a: Interval, b: Interval): Interval;
  /** A divisor that may be zero gives every number. */
  over(a: Interval, b: Interval): Interval;
}

/** The interval of one number. @internal */
export const pointInterval = (x: Decimal): Interval => ({ low: x, high: x });

/**
 * The four operations on decimals of so many digits, each done once rounded down and once rounded up.
 *
 * @internal
 */
export function fourOperations(digits: number): FourOperations {
  const config = { defaults: true, precision: digits, toExpNeg: -9e15, toExpPos: 9e15 } as const;
  const Down = Decimal.clone({ ...config, rounding: Decimal.ROUND_FLOOR });
  const Up = Decimal.clone({ ...config, rounding: Decimal.ROUND_CEIL });
  const times = (a: Interval, b: Interval): Interval => {
    if (a.low.gte(0) && b.low.gte(0)) return { low: Down.mul(a.low, b.low), high: Up.mul(a.high, b.high) };
    const ends = [a.low, a.high].flatMap((x) => [b.low, b.high].map((y) => [x, y] as const));
    return {
      low: Down.min(...ends.map(([x, y]) => Down.mul(x, y))),
      high: Up.max(...ends.map(([x, y]) => Up.mul(x, y))),
    };
  };
  return {
    digits,
    Down,
    Up,
    of: (value) => ({ low: new Down(value), high: new Up(value) }),
    ofRatio: ({ numerator, denominator }) => ({
      low: Down.div(`${numerator}`, `${denominator}`),
      high: Up.div(`${numerator}`, `${denominator}`),
    }),
    plus: (a, b) => ({ low: Down.add(a.low, b.low), high: Up.add(a.high, b.high) }),
    minus: (a, b) => ({ low: Down.sub(a.low, b.high), high: Up.sub(a.high, b.low) }),
    times,
    over: (a, b) => {
      if (a.low.gte(0) && b.low.gt(0)) return { low: Down.div(a.low, b.high), high: Up.div(a.high, b.low) };
      return b.low.gt(0) || b.high.lt(0)
        ? times(a, { low: Down.div(1, b.high), high: Up.div(1, b.low) })
        : { low: new Down(-Infinity), high: new Up(Infinity) };
    },
  };
}
