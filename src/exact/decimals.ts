import { Decimal } from 'decimal.js';
import type { Arithmetic } from '../solver/arithmetic.js';
import type { Ratio } from './ratio.js';

/** Arithmetic on decimals of so many digits, each result rounded: good for finding a root, proves nothing. @internal */
export interface Decimals extends Arithmetic<Decimal> {
  ofRatio(ratio: Ratio): Decimal;
  powerOfTen(exponent: Ratio): Decimal;
}

/** @internal */
export function decimals(digits: number): Decimals {
  const Own = Decimal.clone({ defaults: true, precision: digits });
  const ofRatio = ({ numerator, denominator }: Ratio): Decimal => Own.div(`${numerator}`, `${denominator}`);
  return {
    of: (value) => new Own(value),
    plus: (a, b) => Own.add(a, b),
    minus: (a, b) => Own.sub(a, b),
    times: (a, b) => Own.mul(a, b),
    over: (a, b) => Own.div(a, b),
    ofRatio,
    powerOfTen: (exponent) => Own.pow(10, ofRatio(exponent)),
  };
}
