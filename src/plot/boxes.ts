import type { Box, Spot } from './shape.js';

/** A straight line between two places. */
export type Edge = readonly [Spot, Spot];

/** Whether two boxes share more than an edge. @internal */
export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Whether the second box lies within the first. @internal */
export const holds = (outer: Box, inner: Box): boolean =>
  inner.left >= outer.left &&
  inner.right <= outer.right &&
  inner.top >= outer.top &&
  inner.bottom <= outer.bottom;

/** A box with a margin all around. @internal */
export const grown = ({ left, top, right, bottom }: Box, by: number): Box => ({
  left: left - by,
  top: top - by,
  right: right + by,
  bottom: bottom + by,
});

/** The place in a box that is nearest to another place. @internal */
export const nearestIn = (box: Box, { x, y }: Spot): Spot => ({
  x: Math.min(Math.max(x, box.left), box.right),
  y: Math.min(Math.max(y, box.top), box.bottom),
});

/**
 * Whether a straight line enters a box: the part of it between the two vertical edges, then between the horizontal ones
 * (Liang and Barsky's clipping).
 *
 * @internal
 */
export function enters([from, to]: Edge, box: Box): boolean {
  if (Math.max(from.x, to.x) <= box.left || Math.min(from.x, to.x) >= box.right) return false;
  let [first, last] = [0, 1];
  const sides = [
    [from.x, to.x - from.x, box.left, box.right],
    [from.y, to.y - from.y, box.top, box.bottom],
  ] as const;
  for (const [start, length, low, high] of sides) {
    if (length === 0) {
      if (start <= low || start >= high) return false;
      continue;
    }
    const [a, b] = [(low - start) / length, (high - start) / length];
    first = Math.max(first, Math.min(a, b));
    last = Math.min(last, Math.max(a, b));
  }
  return first < last;
}

/** Whether two straight lines cross. @internal */
export function cross([a, b]: Edge, [c, d]: Edge): boolean {
  const side = (p: Spot, q: Spot, r: Spot) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** The straight lines between the places of a path, in turn. @internal */
export const edgesOf = (path: readonly Spot[]): Edge[] =>
  path.slice(1).map((spot, k) => [path[k] as Spot, spot]);
