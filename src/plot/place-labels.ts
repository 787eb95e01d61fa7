import { bestPlace } from './best-place.js';
import { edgesOf, grown } from './boxes.js';
import type { Label, PlacedLabel } from './label.js';
import type { Box, Spot } from './shape.js';

/** What labels keep clear of. */
export interface Surroundings {
  /** They stay within. */
  readonly frame: Box;
  readonly paths: readonly (readonly Spot[])[];
  /** Edges of areas: a text keeps clear of them, the line to its anchor may cross them. */
  readonly outlines: readonly (readonly Spot[])[];
  readonly boxes: readonly Box[];
}

/**
 * Places labels with their full texts; where one of them has no room and the short texts leave fewer over, with those.
 *
 * @internal
 */
export function placeAtLength(
  labels: readonly Label[],
  around: Surroundings,
): Placing & { readonly isShort: boolean } {
  const full = placeLabels(labels, around);
  if (full.unplaced.length === 0) return { ...full, isShort: false };
  const short = placeLabels(
    labels.map((label) => (label.short ? { ...label, lines: label.short } : label)),
    around,
  );
  return short.unplaced.length < full.unplaced.length
    ? { ...short, isShort: true }
    : { ...full, isShort: false };
}

/** What found a place, and what did not. */
export interface Placing {
  readonly placed: readonly PlacedLabel[];
  readonly unplaced: readonly Label[];
}

/**
 * Finds a place for each label in turn: clear of every path, mark and earlier label, near its anchor, and far from what
 * it could be mistaken for.
 *
 * A label that fits nowhere is handed back as unplaced: nothing is drawn over anything.
 */
function placeLabels(labels: readonly Label[], { frame, paths, outlines, boxes }: Surroundings): Placing {
  const edges = paths.map((path) => ({ path, edges: edgesOf(thinned(path)) }));
  const crossable = outlines.flatMap((path) => edgesOf(thinned(path)));
  const placed: PlacedLabel[] = [];
  const unplaced: Label[] = [];
  for (const label of labels) {
    const taken = [...boxes, ...placed.map(({ box }) => grown(box, spacing))];
    const leaders = placed.flatMap(({ leader }) => (leader ? [leader] : []));
    const clear = {
      frame,
      taken,
      isCrossing: false,
      crossable,
      home: edges.filter(({ path }) => path === label.home).flatMap((one) => one.edges),
      others: [...edges.filter(({ path }) => path !== label.home).flatMap((one) => one.edges), ...leaders],
    };
    const best = bestPlace(label, clear) ?? bestPlace(label, { ...clear, isCrossing: true });
    if (best) placed.push(best);
    else unplaced.push(label);
  }
  return { placed, unplaced };
}

/** px between two texts. */
const spacing = 3;

/** A path with its places at least 4 px apart: labels look no closer. */
function thinned(path: readonly Spot[]): Spot[] {
  const kept: Spot[] = [];
  for (const [k, spot] of path.entries()) {
    const last = kept.at(-1);
    if (!last || k === path.length - 1 || Math.hypot(spot.x - last.x, spot.y - last.y) >= 4) kept.push(spot);
  }
  return kept;
}
