import { takeConstants } from '../equilibrium/activity/real-system.js';
import { emptyRoot, hydrogenIon } from '../equilibrium/hydrogen-ion.js';
import type { Ends } from './bracket.js';
import {
  type ColumnOf,
  type Constants,
  type Forms,
  formsAt,
  momentsOf,
  netOf,
  strengthOf,
} from './charge-balance.js';
import { prevailingAt } from './charge-root.js';
import { numberOf } from './exactly.js';
import { type Interval, type Intervals, intervals } from './intervals.js';
import { type Ratio, ratios } from './ratio.js';
import { columnIn, columnInDoubles, constantsOf, type System } from './system.js';

/** Digits to work with: the width of the pieces decides, not the rounding. */
const digits = 20;

/** Pieces that are tried at most. */
const patience = 60;

/**
 * Whether a bracket in ionic strength is proven to hold the least self-consistent one, and no other.
 *
 * With J(I) as in real-bracket.ts, and from an I below which J > I anyway: piece after piece [p, q] is proven to hold no root,
 * since J > q all over it. It ends where J′ < 1 is proven from p to the upper end of the bracket: J − I falls strictly there, so the
 * root in the bracket is the only one.
 *
 *   J′ = ½·ln10·(⟨z², z⟩·⟨z, ℓ′⟩/⟨z, z⟩ − ⟨z², ℓ′⟩)/V        from (1) and (2) of equilibrium/activity/moments.ts
 *
 * Everything on intervals, for all I of a piece at once; doubles only say which pieces to try.
 *
 * @internal
 */
export function isLeast(system: System, exact: ColumnOf<Ratio>, { upper }: Ends): boolean {
  const arithmetic = intervals(digits);
  const column = columnIn(arithmetic, exact);
  const speciesOver = pieces(arithmetic, system, exact, column);
  const hasNoRoot = (p: number, q: number): boolean => {
    const { forms } = speciesOver(p, q) ?? {};
    return (
      forms !== undefined && arithmetic.over(strengthOf(arithmetic, column, forms), column.volume).low.gt(q)
    );
  };
  const fallsOver = (p: number, q: number): boolean => {
    const { forms, gammas } = speciesOver(p, q) ?? {};
    return forms !== undefined && riseOf(arithmetic, column, forms, gammas ?? null).high.lt(1);
  };

  const top = numberOf(upper) * (1 + 1e-12);
  let p = numberOf(leastStrength(system, exact)) * (1 - 1e-12);
  let step = top - p;
  for (let tried = 0; tried < patience && p + step > p; tried += 1) {
    if (p > 0 && fallsOver(p, top)) return true;
    step = Math.min(2 * step, (top - p) / 2);
    while (p + step > p && !hasNoRoot(p, p + step)) {
      step /= 2;
      tried += 1;
    }
    p += step;
  }
  return false;
}

/** ½ Σ z²·c with every protolyte in its least charged form: J is above it, since there always is water. */
function leastStrength({ protolytes }: System, { volume, squares, amounts }: ColumnOf<Ratio>): Ratio {
  const least = protolytes.map(({ species }) => Math.min(...species.map(({ charge }) => charge ** 2)));
  const all = amounts.reduce(
    (sum, amount, i) => ratios.plus(sum, ratios.times(amount, ratios.of(least[i] as number))),
    squares,
  );
  return ratios.over(all, ratios.times(ratios.of(2), volume));
}

function riseOf(
  arithmetic: Intervals,
  { volume }: ColumnOf<Interval>,
  forms: Forms<Interval>,
  gammas: Constants<Interval>['gammas'],
): Interval {
  const { of, times, minus, over, ln10 } = arithmetic;
  const { zz, zs, zl, sl } = momentsOf(arithmetic, forms, gammas);
  return over(times(ln10, minus(over(times(zs, zl), zz), sl)), times(of(2), volume));
}

interface Piece extends Constants<Interval> {
  readonly forms: Forms<Interval>;
}

/**
 * The species for every ionic strength from p to q, at every activity a of H+ that can be the root of the charge balance there.
 *
 * Found by widening about the roots that doubles see at p and q until net charge is proven negative at the lower a and positive at
 * the upper one, for every I of the piece; undefined where no such a are found.
 */
function pieces(
  arithmetic: Intervals,
  system: System,
  exact: ColumnOf<Ratio>,
  column: ColumnOf<Interval>,
): (p: number, q: number) => Piece | undefined {
  const { of } = arithmetic;
  const { real } = system;
  const doubles = columnInDoubles(exact);
  const constantsAt = constantsOf(arithmetic, system);
  const rootAt = (ionicStrength: number): number => {
    if (!real) return hydrogenIon(system.setting.balance, doubles, 0, emptyRoot()).h;
    takeConstants(real, ionicStrength);
    const { h } = hydrogenIon(real.conditional, doubles, 0, emptyRoot());
    return h * (real.coefficients.gamma[real.hydrogen] as number);
  };
  return (p, q) => {
    const constants = constantsAt({ low: of(p).low, high: of(q).high });
    const roots = [rootAt(p), rootAt(q)] as const;
    const most = prevailingAt(system, roots[1]);
    const formsOf = (a: Interval) => formsAt(arithmetic, constants.balance, column, a, most);
    const netAt = (a: Interval) => netOf(arithmetic, column, formsOf(a));
    for (let wider = 1e-6; wider < 1e4; wider *= 10) {
      const lower = of(Math.min(...roots) / (1 + wider));
      const upper = of(Math.max(...roots) * (1 + wider));
      if (netAt(lower).high.lt(0) && netAt(upper).low.gt(0))
        return { ...constants, forms: formsOf({ low: lower.low, high: upper.high }) };
    }
    return undefined;
  };
}
