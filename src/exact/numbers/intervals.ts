import { Decimal } from 'decimal.js';
import type { ExactArithmetic } from './exact-arithmetic.js';
import { exactly } from './exactly.js';
import type { Ratio } from './ratio.js';

/** All numbers from `low` to `high`. @internal */
export interface Interval {
  readonly low: Decimal;
  readonly high: Decimal;
}

/** @internal */
export interface Intervals extends ExactArithmetic<Interval> {
  readonly ln10: Interval;
}

/**
 * Interval arithmetic: each result holds every number that the operation can give on numbers of its operands.
 *
 * Every operation is done twice on decimals of so many digits, once rounded down and once rounded up. Nothing is trusted but
 * that decimal.js rounds the four operations in the direction it is told; roots, exponentials and logarithms are built from these
 * (docs/derivations/exact-bracket.md, docs/derivations/exact-real-bracket.md).
 *
 * @internal
 */
export function intervals(digits: number): Intervals {
  const config = { defaults: true, precision: digits, toExpNeg: -9e15, toExpPos: 9e15 } as const;
  const Down = Decimal.clone({ ...config, rounding: Decimal.ROUND_FLOOR });
  const Up = Decimal.clone({ ...config, rounding: Decimal.ROUND_CEIL });

  const Rough = Decimal.clone({ ...config, precision: Math.min(digits, 1000) }); // as far as decimal.js knows ln 10

  const of = (value: number): Interval => ({ low: new Down(value), high: new Up(value) });
  const point = (x: Decimal): Interval => ({ low: x, high: x });
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

  /** Σ s^k·n^−(2k+1)/(2k+1): artanh(1/n) for s = 1, arctan(1/n) for s = −1; what follows a term is less than the term, for n ≥ 2. */
  const oddSeries = (n: number, s: 1 | -1): Interval => {
    const square = of(n * n);
    let power = over(of(1), of(n));
    let term = power;
    let total = power;
    let sign: number = s;
    for (let k = 3; term.high.gt(`1e-${digits}`); k += 2, sign *= s) {
      power = over(power, square);
      term = over(power, of(k));
      total = sign > 0 ? plus(total, term) : minus(total, term);
    }
    return { low: Down.sub(total.low, term.high), high: Up.add(total.high, term.high) };
  };

  /** ln 10 = 46·artanh(1/31) + 34·artanh(1/49) + 20·artanh(1/161), since (16/15)²³·(25/24)¹⁷·(81/80)¹⁰ = 10. */
  const series: readonly (readonly [number, number])[] = [
    [46, 31],
    [34, 49],
    [20, 161],
  ];
  const ln10 = series
    .map(([count, n]) => times(of(count), oddSeries(n, 1)))
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

  /** 10^(whole + part), `part` from 0 to 1. */
  const shifted = (whole: Decimal.Value, part: Interval): Interval => {
    const power = of(1).low.times(`1e${whole}`);
    return times(exp(times(part, ln10)), { low: power, high: power });
  };
  const powerOfTen = ({ numerator, denominator }: Ratio): Interval => {
    const part = ((numerator % denominator) + denominator) % denominator;
    return shifted(`${(numerator - part) / denominator}`, ofRatio({ numerator: part, denominator }));
  };
  const tenToEnd = (x: Decimal): Interval => shifted(x.floor().toFixed(), minus(point(x), point(x.floor())));
  const tenTo = ({ low, high }: Interval): Interval => ({
    low: tenToEnd(low).low,
    high: tenToEnd(high).high,
  });

  /** log10 x = y + ln(1 + δ)/ln 10 for any y, with 1 + δ = x/10^y and δ/(1 + δ) ≤ ln(1 + δ) ≤ δ. */
  const log10OfEnd = (x: Decimal): Interval => {
    const y = Rough.log10(x);
    const ratio = over(point(x), tenToEnd(y));
    const delta = minus(ratio, of(1));
    return plus(point(y), over({ low: over(delta, ratio).low, high: delta.high }, ln10));
  };
  const log10 = ({ low, high }: Interval): Interval => ({
    low: log10OfEnd(low).low,
    high: log10OfEnd(high).high,
  });

  /** √x lies between s and x/s for any s. */
  const sqrt = ({ low, high }: Interval): Interval => {
    const [least, most] = [Down.sqrt(low), Up.sqrt(high)];
    return {
      low: least.isZero() ? least : Down.min(least, Down.div(low, least)),
      high: most.isZero() ? most : Up.max(most, Up.div(high, most)),
    };
  };

  return {
    of,
    plus,
    minus,
    times,
    over,
    decimal: (value) => ofRatio(exactly(value)),
    ofRatio,
    powerOfTen,
    tenTo,
    exp: (x) => tenTo(over(x, ln10)),
    log10,
    ln: (x) => times(log10(x), ln10),
    sqrt,
    ln10,
    /** π = 16·arctan(1/5) − 4·arctan(1/239), after Machin. */
    get pi() {
      return minus(times(of(16), oddSeries(5, -1)), times(of(4), oddSeries(239, -1)));
    },
    held: ({ low, high }, ceiling) => {
      const zero = of(0);
      const one = of(1);
      return {
        at: { low: Down.min(low, ceiling.low), high: Up.min(high, ceiling.high) },
        rate: {
          low: high.lt(ceiling.low) ? one.low : zero.low,
          high: low.lt(ceiling.high) ? one.high : zero.high,
        },
      };
    },
  };
}
