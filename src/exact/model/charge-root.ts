import type { Decimal } from 'decimal.js';
import { prevailing } from '../../equilibrium/family.js';
import type { ExactArithmetic } from '../numbers/exact-arithmetic.js';
import { type ColumnOf, type Constants, type Forms, formsAt, netOf } from './exact-charge-balance.js';
import { type ExactMoments, exactMomentsOf } from './exact-moments.js';
import type { ExactSystem } from './exact-system.js';

/**
 * The number of protons that the prevailing species of each protolyte has lost at about this activity of H+.
 *
 * @internal
 */
export const prevailingAt = ({ inDoubles }: ExactSystem, a: number): number[] =>
  inDoubles.balance.families.map((family) => prevailing(family, a));

/** Where a charge balance is zero, on decimals. @internal */
export interface ChargeRoot {
  readonly a: Decimal;
  /** The last step in ln a, and what it started from. */
  readonly step: Decimal;
  readonly forms: Forms<Decimal>;
  readonly moments: ExactMoments<Decimal>;
}

/**
 * The activity of H+ at which net charge is zero, by Newton's method in ln a inside a bracket; approximate, and not
 * proven.
 *
 * @param lastStep - the relative step whose square may be left
 * @internal
 */
export function chargeRoot(
  arithmetic: ExactArithmetic<Decimal>,
  { balance, gammas }: Constants<Decimal>,
  column: ColumnOf<Decimal>,
  start: Decimal,
  most: readonly number[],
  lastStep: string,
): ChargeRoot {
  const { of, times, over } = arithmetic;
  // e^step: a small step leaves step²/2, as Newton's method does; a large one a double's rounding, for the next pass
  const growth = (step: Decimal) => (step.abs().lt(1e-8) ? step.plus(1) : of(Math.exp(step.toNumber())));
  let low = of(1e-40); // beyond the pH of any solution within solutionLimits
  let high = of(1e40);
  let a = start;
  for (let pass = 0; ; pass += 1) {
    const forms = formsAt(arithmetic, balance, column, a, most);
    const moments = exactMomentsOf(arithmetic, forms, gammas);
    const net = netOf(arithmetic, column, forms);
    const step = over(net, moments.zz).neg();
    if (step.abs().lt(lastStep) || pass === 500) return { a: times(a, growth(step)), step, forms, moments };
    if (net.isNegative()) low = a;
    else high = a;
    const newton = step.abs().lt(100) ? times(a, growth(step)) : low;
    a = newton.gt(low) && newton.lt(high) ? newton : arithmetic.sqrt(times(low, high));
  }
}
