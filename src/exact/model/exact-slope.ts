import type { Decimal } from 'decimal.js';
import { certainDigits, withMoreDigits } from '../numbers/certain-digits.js';
import type { Interval } from '../numbers/interval-operations.js';
import type { Ratio } from '../numbers/ratio.js';
import { prevailingAt } from './charge-root.js';
import { type ColumnOf, type Forms, formsAt, netOf, strengthOf } from './exact-charge-balance.js';
import { columnIn, exactMixtureAt } from './exact-column.js';
import { exactMomentsOf, exactShiftOf } from './exact-moments.js';
import type { ExactSystem } from './exact-system.js';
import { activityBetween, strengthBetween } from './ph-bracket.js';
import { provenBracketOf } from './proven-bracket.js';

/**
 * dpH/dV, per mL, by titration/model/real-derivatives.ts (1).
 *
 * Ends with the digits wanted, or where the slope is zero to twice as many places: a flat curve has the slope zero,
 * which no number of digits can prove.
 *
 * @internal
 */
export function exactSlopeAt(system: ExactSystem, mL: Ratio, digits: number): Decimal {
  const exact = exactMixtureAt(system.columns, mL);
  const nothing = `1e-${2 * digits + 40}`;
  const slope = withMoreDigits(digits + 5, Number.POSITIVE_INFINITY, (working) => {
    const { arithmetic, constantsAt } = system.onIntervals(working + 40);
    const { of, minus, over, times, ln10 } = arithmetic;
    const bracket = provenBracketOf(system, exact, working);
    const ionicStrength = strengthBetween(arithmetic, bracket);
    const { balance, gammas } = constantsAt(ionicStrength);
    const a = activityBetween(arithmetic, bracket);
    const most = prevailingAt(system, a.low.toNumber());
    const [mixture, titrant] = [exact, system.columns[1] as ColumnOf<Ratio>].map((column) => {
      const inArithmetic = columnIn(arithmetic, column);
      return { column: inArithmetic, forms: formsAt(arithmetic, balance, inArithmetic, a, most) };
    }) as [OnIntervals, OnIntervals];
    const { volume } = titrant.column;
    const perMl = {
      net: over(netOf(arithmetic, titrant.column, titrant.forms), volume),
      strength: minus(over(strengthOf(arithmetic, titrant.column, titrant.forms), volume), ionicStrength),
    };
    const moments = exactMomentsOf(arithmetic, mixture.forms, gammas);
    const interval = over(
      exactShiftOf(arithmetic, moments, mixture.column.volume, perMl),
      times(of(-1), ln10),
    );
    if (interval.low.abs().lt(nothing) && interval.high.abs().lt(nothing)) return interval.low.times(0);
    return certainDigits(interval, digits);
  });
  return slope as Decimal;
}

interface OnIntervals {
  readonly column: ColumnOf<Interval>;
  readonly forms: Forms<Interval>;
}
