import { numberAt } from '../../solver/number-at.js';
import type { Family } from '../family.js';
import { emptyRoot, hydrogenIon, type Root } from '../hydrogen-ion.js';
import { compensatingChange } from './compensating-change.js';
import { emptyIonMoments, type IonMoments, ionMomentsAt } from './ion-moments.js';
import { type IonColumn, type RealSystem, takeConstants } from './real-system.js';

/** A state at which the charge balance holds and the ionic strength is that of the species. */
export interface RealState {
  /** Activity of H+, mol/L. */
  activity: number;
  /** Its concentration, mol/L. */
  h: number;
  /** mol/L */
  ionicStrength: number;
  /** Why the search ended: at a root, or (never seen) after all passes, with the ends of the search as they stood. */
  ended: 'root' | 'passes';
  readonly moments: IonMoments;
  readonly root: Root;
}

/** Room for a state; a search starts from nothing there. @internal */
export const emptyState = (): RealState => ({
  activity: 1e-7,
  h: 0,
  ionicStrength: 0,
  ended: 'root',
  moments: emptyIonMoments(),
  root: emptyRoot(),
});

/**
 * pH and ionic strength together.
 *
 *   net(a, I) = 0,   strength(a, I) − I·V = 0                                                          (1)
 *
 * At a given I the charge balance has one root (charge-balance.ts). With J(I) the ionic strength of the species there,
 * J(I) = I remains to be solved. With ℓ′ as in ion-moments.ts and R = ⟨z², z²⟩ − ⟨z², z⟩²/⟨z, z⟩ ≥ 0, for a law log10 γ
 * = z²·f(I),
 *
 *   dJ/dI = −½·ln10·f′(I)·R                                                                            (2)
 *
 * so J rises where γ falls and falls where γ rises.
 *
 * There is a root  J is at least what the strong ions alone make it, and bounded, since γ is held above a ceiling
 *             (coefficients.ts): J − I is positive at the one end and negative at the other.
 * Which one   the smallest: the one that is reached from the smallest possible I upward. Far beyond its range the
 *             limiting law has several for a highly charged protolyte; within the range of any model none was found.
 * Fast way    Newton's method on (1) from J of the least I: both residuals at once, so quadratic. Taken only where
 *             dJ/dI < 1, the steps shrink and, unless the root is known to be the only one, none exceeds 10 % in I.
 * Safe way    otherwise a ladder from the smallest I, each rung at J of the one below: while J rises, no root lies
 *             between. Once I is passed, Newton's method inside the bracket, halved where a step leaves it or does not
 *             halve the one before; h anew at each I. After a hundred rungs they double; two roots closer than a rung
 *             would then be missed.
 * Good to     the rounding of the charge balance.
 * Derived here.
 *
 * Known to be one   for such a law, taking z² − z or z² + z for z² leaves R as it is, so
 *
 *   R ≤ Σ Cᵢ·max var(z² ∓ z) + 4·√Kw′,   dJ/dI ≤ ½·ln10·|f′(least I)|·R                               (3)
 *
 * where this is below 1 there is one root, and the search may start from the neighbouring point of a curve.
 *
 * The system and `out.moments` are left at the root. After `rough` they are a step of 1e-8 away: then only the pH has
 * full precision.
 *
 * @param out - overwritten; where its `h` is not 0, the search may start from what it holds: the neighbouring point of
 * a curve
 * @internal
 */
export function selfConsistent(
  real: RealSystem,
  column: IonColumn,
  out: RealState,
  rough = false,
): RealState {
  const least = leastStrength(real, column);
  out.ended = 'root';
  const isOnlyRoot = least > 0 && hasOneRoot(real, column, least);
  const near = isOnlyRoot && out.h > 0 && out.ionicStrength > least;
  if (near && newton(real, column, 1, out)) return atRoot(real, column, out, rough);
  takeConstants(real, least);
  out.h = hydrogenIon(real.conditional, column, out.h, out.root).h;
  out.activity = out.h * hydrogenGamma(real);
  out.ionicStrength = ionMomentsAt(real, column, out.h, out.moments).strength / column.volume;
  if (newton(real, column, isOnlyRoot ? 1 : cautious, out)) return atRoot(real, column, out, rough);
  return safely(real, column, least, out);
}

function atRoot(real: RealSystem, column: IonColumn, out: RealState, rough: boolean): RealState {
  if (!rough) takeStateAt(real, column, out);
  return out;
}

/** Relative step in I beyond which Newton's method might pass over a root. */
const cautious = 0.1;

/** Whether (3) holds. */
function hasOneRoot({ coefficients, ideal, spreads }: RealSystem, column: IonColumn, least: number): boolean {
  const { model, celsius } = coefficients;
  if (!model.squareLaw || !model.dLog10Gamma || ideal.gas) return false;
  let spread = 0;
  for (let i = 0; i < spreads.length; i += 1) spread += numberAt(column.amounts, i) * numberAt(spreads, i);
  const most = spread / column.volume + waterShare * Math.sqrt(ideal.kw);
  return (Math.LN10 / 2) * Math.abs(model.dLog10Gamma(1, least, celsius, 'H+')) * most < 1;
}

/** 4·√Kw′ for any γ above 0.1. */
const waterShare = 40;

/** ½ Σ z²·c with every family in its least charged form. */
function leastStrength({ ideal }: RealSystem, { volume, squares, amounts }: IonColumn): number {
  let total = squares;
  for (let i = 0; i < amounts.length; i += 1) {
    const { topCharge, constants } = ideal.families[i] as Family;
    const charge = topCharge < 0 ? topCharge : Math.max(topCharge - constants.length, 0);
    total += numberAt(amounts, i) * charge * charge;
  }
  return total / (2 * volume);
}

function takeStateAt(real: RealSystem, column: IonColumn, out: RealState): void {
  takeConstants(real, out.ionicStrength);
  out.h = out.activity / hydrogenGamma(real);
  ionMomentsAt(real, column, out.h, out.moments);
}

const hydrogenGamma = ({ coefficients, hydrogen }: RealSystem) => numberAt(coefficients.gamma, hydrogen);

/** Whether Newton's method went straight to a root from where `out` stands. */
function newton(real: RealSystem, column: IonColumn, within: number, out: RealState): boolean {
  const { volume } = column;
  const { moments } = out;
  let before = Number.POSITIVE_INFINITY;
  for (let pass = 0; pass < 12; pass += 1) {
    takeStateAt(real, column, out);
    const left = moments.strength - out.ionicStrength * volume;
    const { activity, strength, determinant } = compensatingChange(moments, volume, moments.net, left);
    const moved = Math.abs(strength) / out.ionicStrength;
    const size = Math.max(Math.abs(activity), moved);
    if (!(determinant < 0 && size < 1 && moved < within && size < before)) return false;
    before = size;
    out.activity *= Math.exp(activity);
    out.ionicStrength += strength;
    if (size < lastStep) return true;
  }
  return false;
}

/** A relative step after which quadratic convergence leaves less than rounding. */
const lastStep = 1e-8;

/** Rungs of the ladder before it starts to double. */
const patience = 100;

/** Doubling passes the strength at which coefficients are held, 100 mol/L, long before; from there on J is bounded. */
const mostRungs = patience + 200;

function safely(real: RealSystem, column: IonColumn, least: number, out: RealState): RealState {
  const { moments } = out;
  out.h = 0;
  const excessAt = (ionicStrength: number): number => {
    takeConstants(real, ionicStrength);
    out.ionicStrength = ionicStrength;
    out.h = hydrogenIon(real.conditional, column, out.h, out.root).h;
    out.activity = out.h * hydrogenGamma(real);
    ionMomentsAt(real, column, out.h, moments);
    return moments.strength / column.volume - ionicStrength;
  };
  const fallAt = () => {
    const { zz, zs, zl, sl } = moments;
    return 1 - ((Math.LN10 / 2) * ((zs * zl) / zz - sl)) / column.volume;
  };

  let low = least;
  let excess = excessAt(low);
  if (excess <= 0) return out;
  let high = low;
  for (let climbed = 0, rung = 0; ; climbed += 1) {
    if (climbed === mostRungs) {
      out.ended = 'passes';
      return out;
    }
    const fall = fallAt();
    const close = excess < 1e-3 * low && fall > 0;
    rung = climbed < patience ? (close ? (2 * excess) / fall : excess) : Math.max(2 * rung, excess);
    high = low + rung;
    excess = excessAt(high);
    if (!(excess > 0)) break;
    low = high;
  }
  let before = Number.POSITIVE_INFINITY;
  for (let pass = 0; pass < 200 && high - low > Number.EPSILON * high; pass += 1) {
    const at = out.ionicStrength;
    const newton = at + excess / fallAt();
    const inside = newton > low && newton < high && Math.abs(newton - at) < before / 2;
    const next = inside ? newton : low + (high - low) / 2;
    if (next === at || next === low || next === high) break;
    before = inside ? Math.abs(newton - at) : high - low;
    excess = excessAt(next);
    if (excess > 0) low = next;
    else high = next;
    if (excess === 0 || (inside && before < 4 * Number.EPSILON * next)) break;
  }
  return out;
}
