/** The result of a search for a root. A caller has to look at `status` before there is a number to use. */
export type RootFound =
  /** A root, or the place of a jump through zero, to the last doubles. */
  | { readonly status: 'found'; readonly x: number }
  /** The signs at the two ends are alike; `nearest` is the end at which |f| is smaller. */
  | { readonly status: 'no-sign-change'; readonly nearest: number }
  /** f was no finite number at this place. */
  | { readonly status: 'not-finite'; readonly at: number };

/**
 * A root of a continuous function between two points where its signs differ, by bisection with Ridders' step.
 *
 *   x₄ = x₃ + (x₃ − x₁) · sign(f₁ − f₂)·f₃ / √(f₃² − f₁·f₂)
 *
 * Invariant   f(low) and f(high) have opposite signs; checked at the start, kept by every pass.
 * Ends        each pass halves the bracket at least; at most `passes`, or when no double is left between the two.
 * Good to     the rounding of f.
 * Source      C. J. F. Ridders, IEEE Trans. Circuits Syst. 26, 979–980 (1979), doi:10.1109/TCS.1979.1084580
 *
 * @internal
 */
export function rootBetween(f: (x: number) => number, low: number, high: number): RootFound {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  if (!Number.isFinite(fa)) return { status: 'not-finite', at: a };
  if (!Number.isFinite(fb)) return { status: 'not-finite', at: b };
  if (fa === 0) return { status: 'found', x: a };
  if (fb === 0) return { status: 'found', x: b };
  const nearer = () => (Math.abs(fa) < Math.abs(fb) ? a : b);
  if (fa > 0 === fb > 0) return { status: 'no-sign-change', nearest: nearer() };

  for (let pass = 0; pass < passes; pass += 1) {
    const middle = a + (b - a) / 2;
    if (middle === a || middle === b) break;
    const fm = f(middle);
    if (!Number.isFinite(fm)) return { status: 'not-finite', at: middle };
    if (fm === 0) return { status: 'found', x: middle };
    const x = middle + (middle - a) * ((Math.sign(fa - fb) * fm) / Math.sqrt(fm * fm - fa * fb));
    const inside = x > Math.min(a, b) && x < Math.max(a, b) ? x : middle;
    const fx = f(inside);
    if (!Number.isFinite(fx)) return { status: 'not-finite', at: inside };
    if (fx === 0) return { status: 'found', x: inside };
    // the narrowest pair of neighbours with opposite signs among a, middle, inside, b
    if (fm > 0 !== fx > 0) [a, fa, b, fb] = [middle, fm, inside, fx];
    else if (fa > 0 !== fx > 0) [b, fb] = [inside, fx];
    else [a, fa] = [inside, fx];
  }
  return { status: 'found', x: nearer() };
}

/** Enough to halve any interval of doubles of one sign down to neighbours. */
const passes = 1100;
