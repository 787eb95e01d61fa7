import { Decimal } from 'decimal.js';
import type { Arithmetic } from '../solver/arithmetic.js';
import type { Ratio } from './ratio.js';

/** All numbers from `low` to `high`. @internal */
export interface Interval {
  readonly low: Decimal;
  readonly high: Decimal;
}

/** @internal */
export interface Intervals extends Arithmetic<Interval> {
  ofRatio(ratio: Ratio): Interval;
  /** 10 to a power. */
  powerOfTen(exponent: Ratio): Interval;
  readonly ln10: Interval;
}

/**
 * Interval arithmetic: each result holds every number that the operation can give on numbers of its operands.
 *
 * Every operation is done twice on decimals of so many digits, once rounded down and once rounded up. Nothing is trusted but
 * that decimal.js rounds the four operations in the direction it is told; exponentials and logarithms are built from these
 * (docs/derivations/exact-bracket.md).
 *
 * @internal
 */
export function intervals(digits: number): Intervals {
  const config = { defaults: true, precision: digits, toExpNeg: -9e15, toExpPos: 9e15 } as const;
  const Down = Decimal.clone({ ...config, rounding: Decimal.ROUND_FLOOR });
  const Up = Decimal.clone({ ...config, rounding: Decimal.ROUND_CEIL });

  const of = (value: number): Interval => ({ low: new Down(value), high: new Up(value) });
  const plus = (a: Interval, b: Interval): Interval => ({
    low: Down.add(a.low, b.low),
    high: Up.add(a.high, b.high),
  });
  const minus = (a: Interval, b: Interval): Interval => ({
    low: Down.sub(a.low, b.high),
    high: Up.sub(a.high, b.low),
  });
  const times = (a: Interval, b: Interval): Interval => {
    if (a.low.gte(0) && b.low.gte(0)) return { low: Down.mul(a.low, b.low), high: Up.mul(a.high, b.high) };
    const ends = [a.low, a.high].flatMap((x) => [b.low, b.high].map((y) => [x, y] as const));
    return {
      low: Down.min(...ends.map(([x, y]) => Down.mul(x, y))),
      high: Up.max(...ends.map(([x, y]) => Up.mul(x, y))),
    };
  };
  /** A divisor that may be zero gives every number. */
  const over = (a: Interval, b: Interval): Interval =>
    b.low.gt(0) || b.high.lt(0)
      ? times(a, { low: Down.div(1, b.high), high: Up.div(1, b.low) })
      : { low: new Down(-Infinity), high: new Up(Infinity) };

  const ofRatio = ({ numerator, denominator }: Ratio): Interval => ({
    low: Down.div(`${numerator}`, `${denominator}`),
    high: Up.div(`${numerator}`, `${denominator}`),
  });
  const widened = ({ low, high }: Interval, tail: Decimal): Interval => ({ low, high: Up.add(high, tail) });

  /** artanh(1/n) = Σ n^−(2k+1)/(2k+1); what follows a term is less than the term, for n ≥ 2. */
  const artanhOfOneOver = (n: number): Interval => {
    const square = of(n * n);
    let power = over(of(1), of(n));
    let term = power;
    let total = power;
    for (let k = 3; term.high.gt(`1e-${digits}`); k += 2) {
      power = over(power, square);
      term = over(power, of(k));
      total = plus(total, term);
    }
    return widened(total, term.high);
  };

  /** ln 10 = 46·artanh(1/31) + 34·artanh(1/49) + 20·artanh(1/161), since (16/15)²³·(25/24)¹⁷·(81/80)¹⁰ = 10. */
  const series: readonly (readonly [number, number])[] = [
    [46, 31],
    [34, 49],
    [20, 161],
  ];
  const ln10 = series
    .map(([count, n]) => times(of(count), artanhOfOneOver(n)))
    .reduce((total, part) => plus(total, part));

  /** e^y for y from 0 to 3: Σ r^k/k! with r = y/2^s ≤ ½, then squared s times; what follows a term is less than the term. */
  const exp = (y: Interval): Interval => {
    const halvings = Math.min(50, 3 + Math.ceil(Math.sqrt(digits)));
    const r = over(y, of(2 ** halvings));
    let term = of(1);
    let total = term;
    for (let k = 1; term.high.gt(`1e-${digits}`); k += 1) {
      term = over(times(term, r), of(k));
      total = plus(total, term);
    }
    let result = widened(total, term.high);
    for (let k = 0; k < halvings; k += 1) result = times(result, result);
    return result;
  };

  const powerOfTen = (exponent: Ratio): Interval => {
    const { numerator, denominator } = exponent;
    const part = ((numerator % denominator) + denominator) % denominator;
    const whole = of(1).low.times(`1e${(numerator - part) / denominator}`);
    const fraction = exp(times(ofRatio({ numerator: part, denominator }), ln10));
    return times(fraction, { low: whole, high: whole });
  };

  return { of, plus, minus, times, over, ofRatio, powerOfTen, ln10 };
}
