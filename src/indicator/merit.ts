import { type Integral, integral } from '../solver/integral.js';
import { numberAt } from '../solver/number-at.js';
import { crossingOf } from './crossing.js';
import type { Calls } from './observer.js';
import type { Asked } from './read-titration.js';

/**
 * How close to a volume the calls of an observer fall:
 *
 *   score = ∫ w(p) dp / (1 + ((V(p) − V_eq)/δ)²),   0 ≤ score ≤ 1                                       (1)
 *
 * V(p) is explicit, so (1) needs no root finding. Where a pH comes at several volumes, V(p) is the one at which the
 * observer calls it ({@link crossingOf}); a pH not reached at V > 0 adds nothing.
 *
 * Peak        pH is a function of V, so V(p) = V_eq at one p only, p_eq. About it the integrand is a peak of width
 *             s = δ·|dpH/dV|, however flat the curve and narrow the peak. With p = p_eq + s·sinh t,
 *             dp/(1 + ((p − p_eq)/s)²) = s·dt/cosh t: smooth, on the scale of t = 1.
 * Elsewhere   log |V − V_eq| changes on the scale of one pH unit whatever the concentrations, and so does the
 *             integrand.
 * Breaks      the kinks of w, p_eq, the pH at V = 0 (where V(p) begins), and every half unit of pH between them.
 * Good to     `within` by the estimate of `integral`, which is returned; tested against a quadrature over V below 1e-6.
 *
 * @internal
 */
export function meritOf(
  titration: Asked,
  { density, breaks }: Calls,
  mL: number,
  tolerance: number,
  within = 1e-7,
): Integral {
  const centre = titration.pHAt(mL);
  const scale = Math.min(Math.max(tolerance * Math.abs(titration.slopeAt(mL)), narrowest), 1);
  const crossing = crossingOf(titration, mL);
  const merit = (pH: number): number => {
    const volume = crossing(pH);
    return volume === null ? 0 : 1 / (1 + ((volume - mL) / tolerance) ** 2);
  };
  const integrand = (t: number): number => {
    const pH = centre + scale * Math.sinh(t);
    const weight = density(pH);
    return weight === 0 ? 0 : weight * merit(pH) * scale * Math.cosh(t);
  };

  const [from, to] = [numberAt(breaks, 0), breaks.at(-1) as number];
  const split = [...breaks, ...halves(from, to), centre, titration.pHAt(0)];
  const ordered = [...new Set(split)]
    .filter((pH) => pH >= from && pH <= to)
    .sort((first, second) => first - second);
  return integral(
    integrand,
    ordered.map((pH) => Math.asinh((pH - centre) / scale)),
    within,
  );
}

/** A peak narrower than this holds less than the error. */
const narrowest = 1e-12;

function halves(from: number, to: number): number[] {
  const count = Math.ceil((to - from) / 0.5);
  return Array.from({ length: count - 1 }, (_, k) => from + ((k + 1) * (to - from)) / count);
}
