import { activityLimits } from '../../equilibrium/activity/coefficients.js';
import { takeConstants } from '../../equilibrium/activity/real-system.js';
import { emptyRoot, hydrogenIon } from '../../equilibrium/hydrogen-ion.js';
import { numberAt } from '../../solver/number-at.js';
import { numberOf } from '../numbers/exactly.js';
import type { Interval } from '../numbers/interval-operations.js';
import type { Intervals } from '../numbers/intervals.js';
import { type Ratio, ratios } from '../numbers/ratio.js';
import { prevailingAt } from './charge-root.js';
import {
  type ColumnOf,
  type Constants,
  type Forms,
  formsAt,
  netOf,
  strengthOf,
} from './exact-charge-balance.js';
import { columnIn, columnInDoubles } from './exact-column.js';
import { exactMomentsOf } from './exact-moments.js';
import type { ExactSystem } from './exact-system.js';
import type { Bounds } from './ph-bracket.js';

/** The digits to work with; the width of the pieces decides, not the rounding. */
const digits = 20;

/** Pieces that are tried at most. */
const patience = 60;

/** A piece over which J may fall more steeply than this is divided. */
const steepestFall = 4;

/**
 * Whether a bracket in ionic strength is proven to hold the smallest self-consistent one, and no other.
 *
 * With J(I) as in proven-real-bracket.ts, from an I below which J > I anyway: where J(p) > p and J′ ≥ −m from p to q,
 *
 *   J(I) ≥ J(p) − m·(I − p) > I   for p ≤ I < p + (J(p) − p)/(1 + m), at most q                                    (1)
 *
 * so no root is there, and p moves on. It ends where J′ < 1 is proven from p to the upper end of the bracket: J − I
 * falls strictly, so the root in the bracket is the only one up to there.
 *
 *   J′ = ½·ln10·(⟨z², z⟩·⟨z, ℓ′⟩/⟨z, z⟩ − ⟨z², ℓ′⟩)/V        from (1) and (2) of equilibrium/activity/ion-moments.ts
 *
 * Everything on intervals, for all I of a piece at once; doubles only say which pieces to try.
 *
 * @internal
 */
export function isLeastStrength(system: ExactSystem, exact: ColumnOf<Ratio>, { upper }: Bounds): boolean {
  const { arithmetic } = system.onIntervals(digits);
  const column = columnIn(arithmetic, exact);
  const speciesOver = pieces(system, exact, column);
  const top = numberOf(upper) * (1 + 1e-12);
  let p = leastStrength(system, exact);
  for (let tried = 0, q = top; tried < patience; tried += 1) {
    const piece = speciesOver(p, q);
    const rise = piece && riseOf(arithmetic, column, piece);
    const fall = Math.max(0, -(rise?.low.toNumber() ?? -Infinity)); // m of (1)
    if (q === top && rise?.high.lt(1)) return true;
    if (!(fall < steepestFall)) {
      q = p + (q - p) / 4;
      continue;
    }
    const here = speciesOver(p, p);
    if (!here) return false;
    const strengthAt = arithmetic.over(strengthOf(arithmetic, column, here.forms), column.volume).low;
    const reach = Math.min(strengthAt.toNumber(), q) - p;
    if (!(reach > 0)) return false;
    const width = q - p;
    p += (reach / (1 + fall)) * (1 - 1e-9);
    q = Math.min(top, p + 2 * width);
  }
  return false;
}

/**
 * J is above this at any I: ½ Σ z²·c with every protolyte in its least charged form, or the water's share if that is
 * more. (h + [OH-])/2 is at least √(Kw/γ²), and no law here lets γ of H+ and OH- exceed what activityLimits allows.
 */
function leastStrength(
  { protolytes, conditions }: ExactSystem,
  { volume, squares, amounts }: ColumnOf<Ratio>,
): number {
  const least = protolytes.map(({ species }) => Math.min(...species.map(({ charge }) => charge ** 2)));
  const all = amounts.reduce(
    (sum, amount, i) => ratios.plus(sum, ratios.times(amount, ratios.of(numberAt(least, i)))),
    squares,
  );
  const ofSolutes = numberOf(ratios.over(all, ratios.times(ratios.of(2), volume)));
  const ofWater = 10 ** (-conditions.inUse.pKw / 2 - activityLimits.log10GammaOfWater);
  return Math.max(ofSolutes, ofWater) * (1 - 1e-9);
}

function riseOf(arithmetic: Intervals, { volume }: ColumnOf<Interval>, { forms, gammas }: Piece): Interval {
  const { of, times, minus, over, ln10 } = arithmetic;
  const { zz, zs, zl, sl } = exactMomentsOf(arithmetic, forms, gammas);
  return over(times(ln10, minus(over(times(zs, zl), zz), sl)), times(of(2), volume));
}

interface Piece extends Constants<Interval> {
  readonly forms: Forms<Interval>;
}

/**
 * The species for every ionic strength from p to q, at every activity a of H+ that can be the root of the charge
 * balance there.
 *
 * Found by widening about the roots that doubles see at p and q until net charge is proven negative at the lower a and
 * positive at the upper one, for every I of the piece; undefined where no such a are found.
 */
function pieces(
  system: ExactSystem,
  exact: ColumnOf<Ratio>,
  column: ColumnOf<Interval>,
): (p: number, q: number) => Piece | undefined {
  const { arithmetic, constantsAt } = system.onIntervals(digits);
  const { of } = arithmetic;
  const { real } = system;
  const doubles = columnInDoubles(exact);
  const rootAt = (ionicStrength: number): number => {
    if (!real) return hydrogenIon(system.inDoubles.balance, doubles, 0, emptyRoot()).h;
    takeConstants(real, ionicStrength);
    const { h } = hydrogenIon(real.conditional, doubles, 0, emptyRoot());
    return h * numberAt(real.coefficients.gamma, real.hydrogen);
  };
  return (p, q) => {
    const constants = constantsAt({ low: of(p).low, high: of(q).high });
    const roots = [rootAt(p), rootAt(q)] as const;
    const formsOf = (a: Interval) =>
      formsAt(arithmetic, constants.balance, column, a, prevailingAt(system, a.low.toNumber()), true);
    const netAt = (a: Interval) => netOf(arithmetic, column, formsOf(a));
    for (let wider = Math.max(1e-10, (q - p) / (50 * q)); wider < 1e4; wider *= 3) {
      const lower = of(Math.min(...roots) / (1 + wider));
      const upper = of(Math.max(...roots) * (1 + wider));
      if (netAt(lower).high.lt(0) && netAt(upper).low.gt(0))
        return { ...constants, forms: formsOf({ low: lower.low, high: upper.high }) };
    }
    return undefined;
  };
}
