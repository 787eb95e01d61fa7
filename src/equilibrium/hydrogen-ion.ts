import { numberAt } from '../solver/number-at.js';
import { type Balance, type Charge, type Column, chargeAt, emptyCharge } from './charge-balance.js';
import type { Family } from './family.js';
import { firstGuess } from './first-guess.js';

/** The root of a charge balance. */
export interface Root {
  /** Hydrogen-ion concentration, mol/L. */
  h: number;
  /** Why the last search ended: at a small step, at a bracket of two doubles, or (never seen) after all passes. */
  ended: 'step' | 'bracket' | 'passes';
  /** The number of evaluations of the charge balance so far. */
  evaluations: number;
  /** The charge balance where it was last evaluated, one step from the root. */
  readonly scratch: Charge;
}

/** Room for a root. @internal */
export const emptyRoot = (): Root => ({ h: 1e-7, ended: 'step', evaluations: 0, scratch: emptyCharge() });

/**
 * The hydrogen-ion concentration at which a solution is neutral, by Householder's method of order four inside a
 * bracket.
 *
 *   x = ln h,   u = F/F′,   x ← x − u·(1 − u·F″/2F′) / (1 − u·F″/F′ + u²·F‴/6F′)                        (1)
 *
 * One root    F rises strictly with h (charge-balance.ts).
 * Bracket     every protolyte wholly in its least protonated form makes the charge smallest, wholly in its most
 *             protonated form greatest: V·(h − Kw/h) + S = 0 with these two S encloses the root, without an evaluation.
 *             A gas only raises the root; its first term joins Kw, and the others are at most what they are at the
 *             lower end.
 * Invariant   F(low) ≤ 0 ≤ F(high); a step that leaves the bracket, or two steps in a row that do not halve the
 *             step before, give way to halving the bracket in ln h.
 * Ends        where Newton's u is 1e-4 or less: F′ changes by a factor of at most e^(n·s) over a step s, n the most
 *             protons that one protolyte can lose (|κ₃| ≤ n·κ₂), so the root is that near. The step of (1) itself would
 *             not do: it is zero where u·F″ = 2F′, however far the root. Every third pass at worst halves the bracket
 *             in ln h.
 * Good to     the rounding of F. A step s leaves c·s⁴, where c = A₂³ − 2A₂A₃ + A₄ and A_k = F^(k)/(k!·F′). It is zero
 *             for a strong acid or base, for water and for a single buffer pair, and small for what overlaps: after a
 *             step of 1e-4, below 1e-16.
 * Source      A. S. Householder, The Numerical Treatment of a Single Nonlinear Equation (1970), chapter 4: the
 *             iterations of order d + 1 with d = 3 (Newton is d = 1, Halley d = 2)
 *
 * @param guess - a first h, for instance that of the neighbouring point of a curve; 0 for none
 * @internal
 */
export function hydrogenIon(balance: Balance, column: Column, guess: number, out: Root): Root {
  let { low, high } = bracketOf(balance, column);
  let h = guess > low && guess < high ? guess : firstGuess(balance, column, low, high);
  let before = Number.POSITIVE_INFINITY;
  let slow = 0;

  out.ended = 'passes';
  for (let pass = 0; pass < mostPasses; pass += 1) {
    const { net, slope, bend, twist } = chargeAt(balance, column, h, out.scratch);
    out.evaluations += 1;
    if (net < 0) low = h;
    else high = h;

    const u = net / slope;
    const ub = (u * bend) / slope;
    const step = (-u * (1 - ub / 2)) / (1 - ub + (u * u * twist) / (6 * slope));
    let next = h * Math.exp(step);
    if (Math.abs(u) <= lastStep) {
      h = next;
      out.ended = 'step';
      break;
    }
    if (high - low <= Number.EPSILON * high) {
      out.ended = 'bracket';
      break;
    }
    slow = Math.abs(step) < before / 2 ? 0 : slow + 1;
    before = Math.abs(step);
    if (!(next > low && next < high) || slow === 2) {
      next = Math.sqrt(low) * Math.sqrt(high);
      before = Math.abs(Math.log(next / h));
      slow = 0;
    }
    h = next;
  }
  out.h = h;
  return out;
}

/**
 * Halving 600 units of ln h, all that doubles have, down to neighbours takes 62 halvings, one at least in three passes.
 */
const mostPasses = 200;

/** A Newton step u in ln h beside which the root lies, so that one step of fourth order leaves less than rounding. */
const lastStep = 1e-4;

/**
 * The h between which the root lies: with S the net charge without water, V·h² + S·h − V·Kw = 0.
 *
 * Widened by a few roundings, so that a root at an end is inside.
 */
function bracketOf(
  { kw, families, gas = noGas }: Balance,
  { volume, charge, amounts }: Column,
): { low: number; high: number } {
  let greatest = charge;
  let least = charge;
  for (let i = 0; i < families.length; i += 1) {
    const { topCharge, constants } = families[i] as Family;
    greatest += numberAt(amounts, i) * topCharge;
    least += numberAt(amounts, i) * (topCharge - constants.length);
  }
  const first = kw + (gas[0] ?? 0);
  const low = waterRoot(first, greatest / volume);
  let all = first;
  for (let j = 2, power = 1; j <= gas.length; j += 1) {
    power /= low;
    all += j * power * numberAt(gas, j - 1);
  }
  const high = waterRoot(all, least / volume);
  return { low: low * (1 - 1e-9), high: high * (1 + 1e-9) };
}

const noGas = new Float64Array(0);

/** The positive root of h − Kw/h + s = 0, without cancellation for either sign of s. */
function waterRoot(kw: number, s: number): number {
  const root = Math.sqrt(s * s + 4 * kw);
  return s > 0 ? (2 * kw) / (s + root) : (root - s) / 2;
}
