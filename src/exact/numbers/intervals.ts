import { Decimal } from 'decimal.js';
import type { ExactArithmetic } from './exact-arithmetic.js';
import { exactly } from './exactly.js';
import { type FourOperations, fourOperations, type Interval, pointInterval } from './interval-operations.js';
import { expOf, ln10Of, piOf } from './interval-series.js';
import type { Ratio } from './ratio.js';

/** The operations on intervals, with ln 10 to their digits. @internal */
export interface Intervals extends ExactArithmetic<Interval> {
  readonly ln10: Interval;
}

/**
 * Interval arithmetic: each result holds every number that the operation can give on numbers of its operands.
 *
 * Nothing is trusted but that decimal.js rounds the four operations in the direction it is set to. Roots, exponentials
 * and logarithms are built from these (docs/derivations/exact-bracket.md, docs/derivations/exact-real-bracket.md).
 *
 * @internal
 */
export function intervals(digits: number): Intervals {
  const operations = fourOperations(digits);
  const { of, plus, minus, times, over, ofRatio } = operations;
  const ln10 = ln10Of(operations);
  const tenTo = (x: Interval) => tenToInterval(operations, ln10, x);
  const log10 = (x: Interval) => log10Of(operations, ln10, x);
  return {
    of,
    plus,
    minus,
    times,
    over,
    decimal: (value) => ofRatio(exactly(value)),
    ofRatio,
    powerOfTen: (exponent) => tenToRatio(operations, ln10, exponent),
    tenTo,
    exp: (x) => tenTo(over(x, ln10)),
    log10,
    ln: (x) => times(log10(x), ln10),
    sqrt: (x) => sqrtOf(operations, x),
    ln10,
    get pi() {
      return piOf(operations);
    },
    held: (x, ceiling) => heldBelow(operations, x, ceiling),
  };
}

/** 10^(whole + part), `part` from 0 to 1. */
function tenToSum(
  operations: FourOperations,
  ln10: Interval,
  whole: Decimal.Value,
  part: Interval,
): Interval {
  const { of, times } = operations;
  const power = of(1).low.times(`1e${whole}`);
  return times(expOf(operations, times(part, ln10)), pointInterval(power));
}

function tenToRatio(operations: FourOperations, ln10: Interval, { numerator, denominator }: Ratio): Interval {
  const part = ((numerator % denominator) + denominator) % denominator;
  const whole = `${(numerator - part) / denominator}`;
  return tenToSum(operations, ln10, whole, operations.ofRatio({ numerator: part, denominator }));
}

function tenToPoint(operations: FourOperations, ln10: Interval, x: Decimal): Interval {
  const part = operations.minus(pointInterval(x), pointInterval(x.floor()));
  return tenToSum(operations, ln10, x.floor().toFixed(), part);
}

const tenToInterval = (operations: FourOperations, ln10: Interval, { low, high }: Interval): Interval => ({
  low: tenToPoint(operations, ln10, low).low,
  high: tenToPoint(operations, ln10, high).high,
});

/** log10 x = y + ln(1 + δ)/ln 10 for any y, with 1 + δ = x/10^y and δ/(1 + δ) ≤ ln(1 + δ) ≤ δ. */
function log10OfPoint(operations: FourOperations, ln10: Interval, x: Decimal): Interval {
  const { digits, of, plus, minus, over } = operations;
  const y = Decimal.clone({ defaults: true, precision: Math.min(digits, ln10Digits) }).log10(x);
  const ratio = over(pointInterval(x), tenToPoint(operations, ln10, y));
  const delta = minus(ratio, of(1));
  return plus(pointInterval(y), over({ low: over(delta, ratio).low, high: delta.high }, ln10));
}

/**
 * decimal.js knows ln 10 to 1025 digits, and takes some more of it than it is asked for: twice ten for a power of ten, whose
 * logarithm ends.
 */
const ln10Digits = 900;

const log10Of = (operations: FourOperations, ln10: Interval, { low, high }: Interval): Interval => ({
  low: log10OfPoint(operations, ln10, low).low,
  high: log10OfPoint(operations, ln10, high).high,
});

/** √x lies between s and x/s for any s. */
function sqrtOf({ Down, Up }: FourOperations, { low, high }: Interval): Interval {
  const [least, most] = [Down.sqrt(low), Up.sqrt(high)];
  return {
    low: least.isZero() ? least : Down.min(least, Down.div(low, least)),
    high: most.isZero() ? most : Up.max(most, Up.div(high, most)),
  };
}

/**
 * The lesser of x and a ceiling, and its derivative with respect to x: 1 below the ceiling, 0 above, both where x
 * reaches over it.
 */
function heldBelow({ Down, Up, of }: FourOperations, { low, high }: Interval, ceiling: Interval) {
  const [zero, one] = [of(0), of(1)];
  return {
    at: { low: Down.min(low, ceiling.low), high: Up.min(high, ceiling.high) },
    rate: {
      low: high.lt(ceiling.low) ? one.low : zero.low,
      high: low.lt(ceiling.high) ? one.high : zero.high,
    },
  };
}
