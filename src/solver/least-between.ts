/** The result of a search for a minimum. A caller has to look at `status` before there is a number to use. */
export type LeastFound =
  /** The place of the minimum; an end of the bracket where f falls or rises throughout. */
  | { readonly status: 'found'; readonly x: number }
  /** f was no finite number at this place. */
  | { readonly status: 'not-finite'; readonly at: number };

/**
 * Where a function with one minimum between two points has it, by golden sections: one evaluation a pass.
 *
 * Invariant   the minimum is between the ends of the bracket.
 * Ends        after 40 passes, each of which leaves 0.618 of the bracket: 4e-9 of it is left.
 * Good to     no better than the square root of the rounding of f, where f is flat.
 * Source      J. Kiefer, Proc. Am. Math. Soc. 4, 502–506 (1953), doi:10.1090/S0002-9939-1953-0055639-3
 *
 * @internal
 */
export function leastBetween(f: (x: number) => number, low: number, high: number): LeastFound {
  let [a, b] = [low, high];
  let [inner, outer] = [b - golden * (b - a), a + golden * (b - a)];
  let [atInner, atOuter] = [f(inner), f(outer)];
  for (let pass = 0; pass < 40; pass += 1) {
    if (!Number.isFinite(atInner)) return { status: 'not-finite', at: inner };
    if (!Number.isFinite(atOuter)) return { status: 'not-finite', at: outer };
    if (atInner < atOuter) {
      [b, outer, atOuter] = [outer, inner, atInner];
      inner = b - golden * (b - a);
      atInner = f(inner);
    } else {
      [a, inner, atInner] = [inner, outer, atOuter];
      outer = a + golden * (b - a);
      atOuter = f(outer);
    }
  }
  return { status: 'found', x: (a + b) / 2 };
}

const golden = (Math.sqrt(5) - 1) / 2;
