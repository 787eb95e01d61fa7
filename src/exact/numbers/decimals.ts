import { Decimal } from 'decimal.js';
import type { ExactArithmetic } from './exact-arithmetic.js';
import type { Interval } from './interval-operations.js';
import { intervals } from './intervals.js';
import type { Ratio } from './ratio.js';

/**
 * Arithmetic on decimals of so many digits, each result rounded: good for finding a root, proves nothing. Functions are
 * the lower ends of intervals.
 *
 * @internal
 */
export function decimals(digits: number): ExactArithmetic<Decimal> {
  const Own = Decimal.clone({ defaults: true, precision: digits, toExpNeg: -9e15, toExpPos: 9e15 });
  let made: ReturnType<typeof intervals> | undefined;
  const wide = () => {
    made ??= intervals(digits);
    return made;
  };
  const decimalOf = ({ low }: Interval) => new Own(low);
  const point = (x: Decimal): Interval => ({ low: x, high: x });
  const ofRatio = ({ numerator, denominator }: Ratio) => Own.div(`${numerator}`, `${denominator}`);
  return {
    of: (value) => new Own(value),
    plus: (a, b) => Own.add(a, b),
    minus: (a, b) => Own.sub(a, b),
    times: (a, b) => Own.mul(a, b),
    over: (a, b) => Own.div(a, b),
    decimal: (value) => new Own(value),
    ofRatio,
    powerOfTen: (exponent) => decimalOf(wide().powerOfTen(exponent)),
    tenTo: (exponent) => decimalOf(wide().tenTo(point(exponent))),
    exp: (x) => decimalOf(wide().exp(point(x))),
    log10: (x) => decimalOf(wide().log10(point(x))),
    ln: (x) => decimalOf(wide().ln(point(x))),
    sqrt: (x) => Own.sqrt(x),
    get ln10() {
      return decimalOf(wide().ln10);
    },
    get pi() {
      return decimalOf(wide().pi);
    },
    held: (x, ceiling) => (x.lt(ceiling) ? { at: x, rate: new Own(1) } : { at: ceiling, rate: new Own(0) }),
  };
}
