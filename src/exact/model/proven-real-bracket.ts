import type { Decimal } from 'decimal.js';
import { mostDigits, NotProvenError } from '../not-proven-error.js';
import type { ExactArithmetic } from '../numbers/exact-arithmetic.js';
import type { Interval } from '../numbers/interval-operations.js';
import { type Ratio, ratioOf } from '../numbers/ratio.js';
import { chargeRoot, prevailingAt } from './charge-root.js';
import { type ColumnOf, type Constants, formsAt, netOf, strengthOf } from './exact-charge-balance.js';
import { columnIn } from './exact-column.js';
import type { ExactSystem } from './exact-system.js';
import {
  activityAt,
  activityBetween,
  type Bounds,
  boundsAround,
  type PHBracket,
  signOfInterval,
} from './ph-bracket.js';

/** The root in doubles. @internal */
export interface Start {
  readonly activity: number;
  readonly ionicStrength: number;
}

/**
 * Closes brackets around the pH and the ionic strength I of a solution with coefficients of activity.
 *
 *   net(pH, I) = 0,   J(I) = I,   J(I) the ionic strength of the species at the one pH at which net = 0 for that I       (1)
 *
 * Proven, on intervals: at either end of a bracket in I, net has opposite signs at two pH that lie far closer than the
 * digits wanted, so its root is between, and J over all between is above I at the lower end and below it at the upper;
 * J is continuous, so J = I somewhere between the two I. For every I between them, net is positive at `lower` and
 * negative at `upper`. So a solution of (1) has its pH between `lower` and `upper`. Whether it is the one of least
 * ionic strength, `isLeastStrength` tells.
 *
 * Derived in docs/derivations/exact-real-bracket.md
 *
 * @param places - decimals to which pH is closed
 * @internal
 */
export function realBracketOf(
  system: ExactSystem,
  exact: ColumnOf<Ratio>,
  places: number,
  start: Start,
): PHBracket {
  const most = prevailingAt(system, start.activity);
  for (let spare = 8; spare <= mostDigits(places); spare = Math.ceil(1.5 * spare)) {
    const [closer, closest] = [places + spare, places + 2 * spare];
    const working = closest + spare + 8;
    const state = roughly(system, exact, start, most, working, closest);
    const [least, greatest] = [-1, 1].map((side) => endOf(state, side, closer, closest)) as [End, End];

    const { arithmetic, constantsAt } = system.onIntervals(working);
    const column = columnIn(arithmetic, exact);
    const formsIn = ({ balance }: Constants<Interval>, activity: Interval) =>
      formsAt(arithmetic, balance, column, activity, most);
    const encloses = (constants: Constants<Interval>, { lower, upper }: Bounds) =>
      [lower, upper].every((pH, k) => {
        const net = netOf(arithmetic, column, formsIn(constants, activityAt(arithmetic, pH)));
        return signOfInterval(net) === (k === 0 ? 1 : -1);
      });
    const excessAt = ({ strength, pH }: End): number => {
      const interval = arithmetic.ofRatio(strength);
      const constants = constantsAt(interval);
      const ends = boundsAround(pH, ratioOf(`1e-${closest}`) as Ratio);
      if (!encloses(constants, ends)) return 0;
      const forms = formsIn(constants, activityBetween(arithmetic, ends));
      const strengthAt = arithmetic.over(strengthOf(arithmetic, column, forms), column.volume);
      return signOfInterval(arithmetic.minus(strengthAt, interval));
    };

    const pH = ratioOf(state.arithmetic.log10(state.a).neg().toFixed(places)) as Ratio;
    const ends = boundsAround(pH, ratioOf(`1e-${places}`) as Ratio);
    const strength = { lower: least.strength, upper: greatest.strength };
    const { low } = arithmetic.ofRatio(strength.lower);
    const { high } = arithmetic.ofRatio(strength.upper);
    if (excessAt(least) === 1 && excessAt(greatest) === -1 && encloses(constantsAt({ low, high }), ends))
      return { ...ends, strength };
  }
  throw new NotProvenError('pH', mostDigits(places));
}

/** An end of the bracket in I, and about the pH that goes with it. */
interface End {
  readonly strength: Ratio;
  readonly pH: Ratio;
}

function endOf(
  { arithmetic, a, ionicStrength, perStrength }: Rough,
  side: number,
  closer: number,
  closest: number,
): End {
  const strength = ionicStrength
    .plus(ionicStrength.times(`${side}e-${closer}`))
    .toSignificantDigits(closer + 3);
  const pH = arithmetic.log10(a.times(perStrength.times(strength.minus(ionicStrength)).plus(1)));
  return {
    strength: ratioOf(strength.toFixed()) as Ratio,
    pH: ratioOf(pH.neg().toFixed(closest)) as Ratio,
  };
}

/** A solution of (1) on decimals, not proven. */
interface Rough {
  readonly arithmetic: ExactArithmetic<Decimal>;
  readonly a: Decimal;
  readonly ionicStrength: Decimal;
  /** d ln a/dI where the net charge stays zero. */
  readonly perStrength: Decimal;
}

/** Newton's method on J(I) − I inside a bracket, from the root in doubles. */
function roughly(
  system: ExactSystem,
  exact: ColumnOf<Ratio>,
  start: Start,
  most: readonly number[],
  working: number,
  closest: number,
): Rough {
  const { arithmetic, constantsAt } = system.onDecimals(working);
  const { ln10, over, times } = arithmetic;
  const column = columnIn(arithmetic, exact);
  const lastStep = `1e-${Math.ceil(closest / 2) + 2}`;
  let a = arithmetic.of(start.activity);
  let I = arithmetic.of(start.ionicStrength);
  let low = arithmetic.of(0);
  let high: Decimal | undefined;
  for (let pass = 0; ; pass += 1) {
    const root = chargeRoot(arithmetic, constantsAt(I), column, a, most, lastStep);
    const { zz, zs, zl, sl } = root.moments;
    const strength = strengthOf(arithmetic, column, root.forms).plus(times(zs, root.step).div(2));
    const excess = over(strength, column.volume).minus(I);
    const rise = over(times(ln10, over(times(zs, zl), zz).minus(sl)), column.volume.times(2));
    const step = over(excess, rise.neg().plus(1));
    a = root.a;
    if (step.abs().lt(I.times(lastStep)) || pass === 300) {
      const perStrength = over(times(ln10, zl), zz);
      a = times(a, times(perStrength, step).plus(1));
      return { arithmetic, a, ionicStrength: I.plus(step), perStrength };
    }
    if (excess.isPositive()) low = I;
    else high = I;
    const newton = I.plus(step);
    const inside = newton.gt(low) && (high === undefined || newton.lt(high));
    if (inside) I = newton;
    else I = high === undefined ? low.plus(excess) : low.plus(high).div(2);
  }
}
