import type { Decimal } from 'decimal.js';
import { balanceOf } from '../equilibrium/charge-balance.js';
import { familyOf } from '../equilibrium/family.js';
import { emptyRoot, hydrogenIon } from '../equilibrium/hydrogen-ion.js';
import { type BalanceOf, type ColumnOf, chargeAt } from './charge-balance.js';
import { decimals } from './decimals.js';
import { type Interval, type Intervals, intervals } from './intervals.js';
import { type Ratio, ratioOf, ratios } from './ratio.js';
import { balanceIn, columnIn, type System } from './system.js';

/** Two pH between which the root lies: net charge is proven positive at `lower` and negative at `upper`. @internal */
export interface Bracket {
  readonly lower: Ratio;
  readonly upper: Ratio;
}

/** How far beyond the digits wanted the bracket is closed. */
const guard = 3;

/**
 * Closes a bracket around the pH of a solution to 2·10^−(digits + 3).
 *
 * Found          by Newton's method on decimals, which may be wrong.
 * Proven         by the sign of the net charge at both ends on intervals, which cannot: 0 outside the interval means that the
 *                rounding of everything, constants included, is smaller than the value. Where it is not, both are done again
 *                with more digits.
 * Ends           the ends lie off the root by construction, so that net charge there is not zero (a root such as pH 7 exactly is
 *                in the middle), and the intervals shrink with the digits.
 * Derived in     docs/derivations/exact-bracket.md
 *
 * @internal
 */
export function bracketOf(system: System, column: ColumnOf<Ratio>, digits: number): Bracket {
  const places = digits + guard;
  const half = ratioOf(`1e-${places}`) as Ratio;
  const start = rootInDoubles(system, column);
  for (let working = places + 20; ; working = Math.ceil(1.5 * working)) {
    const arithmetic = intervals(working);
    const balance = balanceIn(arithmetic, system);
    const totals = columnIn(arithmetic, column);
    const sign = (pH: Ratio): number =>
      signOfInterval(chargeAt(arithmetic, balance, totals, arithmetic.powerOfTen(negative(pH))).net);

    const found = approximatePH(lowEndsOf(balance), lowEndsOfColumn(totals), start, places, working);
    const middle = ratioOf(found) as Ratio;
    const bracket = { lower: ratios.minus(middle, half), upper: ratios.plus(middle, half) };
    if (sign(bracket.lower) === 1 && sign(bracket.upper) === -1) return bracket;
  }
}

const negative = (pH: Ratio): Ratio => ratios.minus(ratios.of(0), pH);

const lowEndsOf = ({ kw, families }: BalanceOf<Interval>): BalanceOf<Decimal> => ({
  kw: kw.low,
  families: families.map(({ topCharge, constants }) => ({
    topCharge,
    constants: constants.map(({ low }) => low),
  })),
});

const lowEndsOfColumn = ({ volume, charge, amounts }: ColumnOf<Interval>): ColumnOf<Decimal> => ({
  volume: volume.low,
  charge: charge.low,
  amounts: amounts.map(({ low }) => low),
});

/** 1 or −1 where all of an interval has one sign; an interval without ends has none. @internal */
export const signOfInterval = ({ low, high }: Interval): number => (low.gt(0) ? 1 : high.lt(0) ? -1 : 0);

/** pH to so many places as text, by Newton's method in ln h on decimals from a first h. */
function approximatePH(
  balance: BalanceOf<Decimal>,
  totals: ColumnOf<Decimal>,
  start: number,
  places: number,
  working: number,
): string {
  const arithmetic = decimals(working);
  const settled = `1e-${Math.ceil(places / 2) + 2}`; // the square of a step is what it leaves
  let low = arithmetic.of(1e-40); // beyond the pH of any solution within solutionLimits
  let high = arithmetic.of(1e40);
  let h = arithmetic.of(start);
  for (let pass = 0; pass < 500; pass += 1) {
    const { net, slope } = chargeAt(arithmetic, balance, totals, h);
    const step: Decimal = net.div(slope).neg();
    const newton = h.times(step.exp());
    if (step.abs().lt(settled)) return newton.log(10).neg().toFixed(places);
    if (net.isNegative()) low = h;
    else high = h;
    h = newton.gt(low) && newton.lt(high) ? newton : low.times(high).sqrt();
  }
  return h.log(10).neg().toFixed(places);
}

function rootInDoubles({ pKw, protolytes }: System, { volume, charge, amounts }: ColumnOf<Ratio>): number {
  const { ofRatio } = decimals(30);
  const molar = (amount: Ratio) => ofRatio(ratios.over(amount, volume)).toNumber();
  const balance = balanceOf(10 ** -ofRatio(pKw).toNumber(), protolytes.map(familyOf));
  const totals = { volume: 1, charge: molar(charge), amounts: amounts.map(molar) };
  return hydrogenIon(balance, totals, 0, emptyRoot()).h;
}

/** The hydrogen-ion concentration between the ends of a bracket, mol/L. @internal */
export function hBetween({ lower, upper }: Bracket, { powerOfTen }: Intervals): Interval {
  return { low: powerOfTen(negative(upper)).low, high: powerOfTen(negative(lower)).high };
}
