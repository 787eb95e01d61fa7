import type { FourOperations, Interval } from './interval-operations.js';

/**
 * Σ s^k·n^−(2k+1)/(2k+1): artanh(1/n) for s = 1, arctan(1/n) for s = −1.
 *
 * Ends       where a term is below the last digit. What follows a term is less than the term, for n ≥ 2.
 */
function oddSeries(operations: FourOperations, n: number, s: 1 | -1): Interval {
  const { digits, Down, Up, of, over, plus, minus } = operations;
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
}

/** ln 10 = 46·artanh(1/31) + 34·artanh(1/49) + 20·artanh(1/161), since (16/15)²³·(25/24)¹⁷·(81/80)¹⁰ = 10. @internal */
export function ln10Of(operations: FourOperations): Interval {
  const { of, plus, times } = operations;
  const series = [
    [46, 31],
    [34, 49],
    [20, 161],
  ] as const;
  return series.map(([count, n]) => times(of(count), oddSeries(operations, n, 1))).reduce(plus);
}

/** π = 16·arctan(1/5) − 4·arctan(1/239), after Machin. @internal */
export function piOf(operations: FourOperations): Interval {
  const { of, minus, times } = operations;
  return minus(times(of(16), oddSeries(operations, 5, -1)), times(of(4), oddSeries(operations, 239, -1)));
}

/**
 * e^y for y from 0 to 3: Σ r^k/k! with r = y/2^s ≤ ½, then squared s times.
 *
 * Ends       where a term is below the last digit. What follows a term is less than the term.
 *
 * @internal
 */
export function expOf({ digits, Up, of, over, plus, times }: FourOperations, y: Interval): Interval {
  const halvings = Math.min(50, 3 + Math.ceil(Math.sqrt(digits)));
  const r = over(y, of(2 ** halvings));
  let term = of(1);
  let total = term;
  for (let k = 1; term.high.gt(`1e-${digits}`); k += 1) {
    term = over(times(term, r), of(k));
    total = plus(total, term);
  }
  let result: Interval = { low: total.low, high: Up.add(total.high, term.high) };
  for (let k = 0; k < halvings; k += 1) result = times(result, result);
  return result;
}
