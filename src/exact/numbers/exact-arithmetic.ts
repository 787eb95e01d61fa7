import { doubles, type Functions } from '../../solver/arithmetic.js';
import { numberOf } from './exactly.js';
import type { Ratio } from './ratio.js';

/** A kind of number that fractions can be turned into, with what the exact formulas ask of it. @internal */
export interface ExactArithmetic<N> extends Functions<N> {
  ofRatio(ratio: Ratio): N;
  powerOfTen(exponent: Ratio): N;
  tenTo(exponent: N): N;
  readonly ln10: N;
  /** The lesser of x and a ceiling, and its derivative with respect to x: 1 below the ceiling, 0 above. */
  held(x: N, ceiling: N): { readonly at: N; readonly rate: N };
}

/** Doubles: the exact formulas as they stand, to hold the tuned ones of the main entry against. @internal */
export const plainDoubles: ExactArithmetic<number> = {
  ...doubles,
  ofRatio: numberOf,
  powerOfTen: (exponent) => 10 ** numberOf(exponent),
  tenTo: (exponent) => 10 ** exponent,
  ln10: Math.LN10,
  held: (x, ceiling) => ({ at: Math.min(x, ceiling), rate: x < ceiling ? 1 : 0 }),
};
