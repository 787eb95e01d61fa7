import { Decimal } from 'decimal.js';
import type { Arithmetic } from '../solver/arithmetic.js';
import type { Ratio } from './ratio.js';

/** Arithmetic on decimals of so many digits, each result rounded: good for finding a root, proves nothing. @internal */
export interface Decimals extends Arithmetic<Decimal> {
  ofRatio(ratio: Ratio): Decimal;
}

/** Its `of` takes any number, not whole ones alone. @internal */
export function decimals(digits: number): Decimals {
  const Own = Decimal.clone({ defaults: true, precision: digits });
  return {
    of: (value) => new Own(value),
    plus: (a, b) => Own.add(a, b),
    minus: (a, b) => Own.sub(a, b),
    times: (a, b) => Own.mul(a, b),
    over: (a, b) => Own.div(a, b),
    ofRatio: ({ numerator, denominator }) => Own.div(`${numerator}`, `${denominator}`),
  };
}
