import { cross, type Edge, enters, grown, holds, nearestIn, overlap } from './boxes.js';
import { type Label, lineHeight, markRadius, type PlacedLabel } from './label.js';
import type { Box, Spot } from './shape.js';
import { textWidth } from './text-width.js';

/** What one label keeps clear of. @internal */
interface Clear {
  readonly frame: Box;
  readonly taken: readonly Box[];
  readonly crossable: readonly Edge[];
  /** Whether the line from an anchor to its text may cross curves, where there is no other way. */
  readonly isCrossing: boolean;
  readonly home: readonly Edge[];
  readonly others: readonly Edge[];
}

/** px between a text and a path. */
const clearance = 3;
/** px from an anchor to the nearest corner of its text, as tried. */
const distances = [4, 9, 13, 18, 25, 34, 46, 60, 77, 97, 120, 146];
/** Of the directions tried, in parts of a full turn; of equal costs the first one counts, so the level ones lead. */
const directions = [0, 12, 6, 18, 3, 21, 9, 15, 1, 23, 11, 13, 2, 22, 10, 14, 4, 20, 8, 16, 5, 19, 7, 17].map(
  (k) => k / 24,
);
/** px: a text further off has a line to its anchor. */
const near = 13;
/** px: nothing is gained by being further from other things. */
const farEnough = 30;

/**
 * The box of least cost of all that are tried around the anchors of a label: its distance to the anchor, less half its
 * distance to the nearest other thing. Undefined where none is clear.
 *
 * @internal
 */
export function bestPlace(label: Label, clear: Clear): PlacedLabel | undefined {
  const width = Math.max(...label.lines.map((line) => textWidth(line, label.size)));
  const height = label.lines.length * label.size * lineHeight;
  let best: { place: PlacedLabel; cost: number } | undefined;
  for (const [rank, anchor] of label.anchors.entries())
    for (const distance of label.home ? distances : distances.slice(1)) {
      const handicap = distance + (label.home ? crowding(anchor, clear) : 0) + rank * preference;
      const least = handicap - farEnough / 2;
      if (best && least >= best.cost) break;
      for (const turn of directions) {
        const box = boxAt(anchor, turn, distance, width, height);
        const place = placeAt(label, anchor, box, distance, clear);
        if (!place) continue;
        const cost = handicap - roomAround(box, clear) / 2;
        if (!best || cost < best.cost) best = { place, cost };
      }
    }
  return best?.place;
}

/** px that a place on a curve counts more for standing near another curve: there its name could be taken for the other's. */
function crowding(anchor: Spot, { others }: Clear): number {
  const room = Math.min(...others.map(([start]) => distanceTo(pointBox(anchor), start)));
  return 5 * Math.max(0, crowded - room);
}

/** px: curves nearer than this could be taken for each other. */
const crowded = 10;

/** px of distance that a later anchor counts more than the one before it. */
const preference = 0.05;

function boxAt({ x, y }: Spot, turn: number, distance: number, width: number, height: number): Box {
  const [cos, sin] = [Math.cos(2 * Math.PI * turn), Math.sin(2 * Math.PI * turn)];
  const left = x + cos * (distance + width / 2) - width / 2;
  const top = y + sin * (distance + height / 2) - height / 2;
  return { left, top, right: left + width, bottom: top + height };
}

function placeAt(
  label: Label,
  anchor: Spot,
  box: Box,
  distance: number,
  { frame, taken, crossable, isCrossing, home, others }: Clear,
): PlacedLabel | undefined {
  if (!holds(frame, box) || taken.some((other) => overlap(box, other))) return undefined;
  const around = grown(box, clearance);
  if ([crossable, home, others].some((edges) => edges.some((edge) => enters(edge, around)))) return undefined;
  if (distance <= near) return { label, box, anchor, leader: null };
  const end = nearestIn(box, anchor);
  const leader: Edge = [label.home ? anchor : towards(anchor, end, markRadius), end];
  const isBlocked =
    taken.some((other) => !holds(other, pointBox(anchor)) && enters(leader, other)) ||
    (!isCrossing && others.some((edge) => cross(leader, edge)));
  return isBlocked ? undefined : { label, box, anchor, leader };
}

const pointBox = ({ x, y }: Spot): Box => ({ left: x, right: x, top: y, bottom: y });

/** px from a box to the nearest thing that is not its own, no more than counts; of an edge its beginning is looked at. */
function roomAround(box: Box, { taken, others }: Clear): number {
  let least = farEnough;
  for (const other of taken) least = Math.min(least, distanceBetween(box, other));
  for (const [start] of others) least = Math.min(least, distanceTo(box, start));
  return least;
}

const distanceBetween = (a: Box, b: Box): number =>
  Math.max(gap(a.left, a.right, b.left, b.right), gap(a.top, a.bottom, b.top, b.bottom));

const gap = (a: number, b: number, c: number, d: number): number => Math.max(0, c - b, a - d);

/** The greater of the distances along the two axes: near enough to the straight one, and quick. */
const distanceTo = (box: Box, { x, y }: Spot): number =>
  Math.max(gap(box.left, box.right, x, x), gap(box.top, box.bottom, y, y));

/** The place so many px from one to another. */
function towards(from: Spot, to: Spot, distance: number): Spot {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const share = distance / length;
  return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
}
