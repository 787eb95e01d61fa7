/**
 * A root of a continuous function between two points where its signs differ, by bisection with Ridders' step.
 *
 *   x₄ = x₃ + (x₃ − x₁) · sign(f₁ − f₂)·f₃ / √(f₃² − f₁·f₂)
 *
 * Invariant   f(low) and f(high) have opposite signs, or one is zero.
 * Ends        each pass halves the bracket at least; at most `passes`, or when no double is left between the two.
 * Good to     the rounding of f.
 * Source      C. J. F. Ridders, IEEE Trans. Circuits Syst. 26, 979–980 (1979), doi:10.1109/TCS.1979.1084580
 *
 * @internal
 */
export function rootBetween(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  if (fa === 0) return a;
  if (fb === 0) return b;
  for (let pass = 0; pass < passes; pass += 1) {
    const middle = a + (b - a) / 2;
    if (middle === a || middle === b) break;
    const fm = f(middle);
    if (fm === 0) return middle;
    const x = middle + (middle - a) * ((Math.sign(fa - fb) * fm) / Math.sqrt(fm * fm - fa * fb));
    const inside = x > Math.min(a, b) && x < Math.max(a, b) ? x : middle;
    const fx = f(inside);
    if (fx === 0) return inside;
    // the narrowest pair of neighbours with opposite signs among a, middle, inside, b
    if (fm * fx < 0) [a, fa, b, fb] = [middle, fm, inside, fx];
    else if (fa * fx < 0) [b, fb] = [inside, fx];
    else [a, fa] = [inside, fx];
  }
  return Math.abs(fa) < Math.abs(fb) ? a : b;
}

/** Enough to halve any interval of doubles of one sign down to neighbours. */
const passes = 1100;
