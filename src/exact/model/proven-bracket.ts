import { emptyState, selfConsistent } from '../../equilibrium/activity/self-consistent.js';
import { emptyRoot, hydrogenIon } from '../../equilibrium/hydrogen-ion.js';
import { mostDigits, NotProvenError } from '../not-proven-error.js';
import { type Ratio, ratioOf } from '../numbers/ratio.js';
import { chargeRoot, prevailingAt } from './charge-root.js';
import { type ColumnOf, formsAt, netOf } from './exact-charge-balance.js';
import { columnIn, columnInDoubles } from './exact-column.js';
import type { ExactSystem } from './exact-system.js';
import { activityAt, boundsAround, type PHBracket, signOfInterval } from './ph-bracket.js';
import { realBracketOf } from './proven-real-bracket.js';

/** The number of digits beyond those wanted to which the bracket is closed. */
const guard = 3;

/**
 * Closes a bracket around the pH of a solution to 2·10^−(digits + 3).
 *
 * Found          by Newton's method on decimals, which may be wrong.
 * Proven         by the sign of the net charge at both ends on intervals, which cannot: 0 outside the interval means
 *                that the rounding of everything, constants included, is smaller than the value. Where it is not, both
 *                are done again with more digits.
 * Ends           the ends lie off the root by construction, so that net charge there is not zero (a root such as pH 7
 *                exactly is in the middle), and the intervals shrink with the digits; else with a NotProvenError.
 * Derived in     docs/derivations/exact-bracket.md; with coefficients of activity,
 *                docs/derivations/exact-real-bracket.md
 *
 * @internal
 */
export function provenBracketOf(system: ExactSystem, column: ColumnOf<Ratio>, digits: number): PHBracket {
  const places = digits + guard;
  if (!system.real) return idealBracketOf(system, column, places);
  const { activity, ionicStrength } = selfConsistent(system.real, columnInDoubles(column), emptyState());
  return realBracketOf(system, column, places, { activity, ionicStrength });
}

function idealBracketOf(system: ExactSystem, exact: ColumnOf<Ratio>, places: number): PHBracket {
  const start = hydrogenIon(system.inDoubles.balance, columnInDoubles(exact), 0, emptyRoot()).h;
  const half = ratioOf(`1e-${places}`) as Ratio;
  const lastStep = `1e-${Math.ceil(places / 2) + 2}`; // the square of a step is what it leaves
  const most = prevailingAt(system, start);
  for (let working = places + 20; working <= mostDigits(places); working = Math.ceil(1.5 * working)) {
    const { arithmetic: rough, constantsAt } = system.onDecimals(working);
    const { a } = chargeRoot(
      rough,
      constantsAt(rough.of(0)),
      columnIn(rough, exact),
      rough.of(start),
      most,
      lastStep,
    );
    const ends = boundsAround(ratioOf(rough.log10(a).neg().toFixed(places)) as Ratio, half);

    const { arithmetic, constantsAt: provenAt } = system.onIntervals(working);
    const { balance } = provenAt(arithmetic.of(0));
    const column = columnIn(arithmetic, exact);
    const sign = (pH: Ratio): number => {
      const forms = formsAt(arithmetic, balance, column, activityAt(arithmetic, pH), most);
      return signOfInterval(netOf(arithmetic, column, forms));
    };
    if (sign(ends.lower) === 1 && sign(ends.upper) === -1) return { ...ends, strength: null };
  }
  throw new NotProvenError('pH', mostDigits(places));
}
