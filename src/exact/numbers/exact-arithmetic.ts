import { doubles, type Functions } from '../../solver/arithmetic.js';
import { numberOf } from './exactly.js';
import type { Ratio } from './ratio.js';

/** The operations of the exact formulas on one kind of number, into which fractions can be converted. @internal */
export interface ExactArithmetic<N> extends Functions<N> {
  ofRatio(ratio: Ratio): N;
  powerOfTen(exponent: Ratio): N;
  tenTo(exponent: N): N;
  readonly ln10: N;
  /** The lesser of x and a ceiling, and its derivative with respect to x: 1 below the ceiling, 0 above. */
  held(x: N, ceiling: N): { readonly at: N; readonly rate: N };
}

/** Doubles, for comparing the exact formulas with the tuned ones of the main entry. @internal */
export const plainDoubles: ExactArithmetic<number> = {
  ...doubles,
  ofRatio: numberOf,
  powerOfTen: (exponent) => 10 ** numberOf(exponent),
  tenTo: (exponent) => 10 ** exponent,
  ln10: Math.LN10,
  held: (x, ceiling) => ({ at: Math.min(x, ceiling), rate: x < ceiling ? 1 : 0 }),
};
