import { axesOf } from './axes-of.js';
import { type Axis, scaleOf } from './axis.js';
import { grown } from './boxes.js';
import { type DrawnPanel, drawnPanel } from './drawn-panel.js';
import type { Panel } from './figure.js';
import { ink, type } from './inks.js';
import { markRadius } from './label.js';
import type { LaidRow, Place } from './laid-row.js';
import { labelShapes, labelsOf } from './panel-labels.js';
import { areaShapes, dotShapes, lineShape, markShape, ruleShape } from './panel-shapes.js';
import { placeAtLength } from './place-labels.js';
import type { Box, Spot } from './shape.js';

/** px for the name of the upright axis, above it. */
const nameHeight = 26;
/** px for the numbers under a panel and for the name of the level axis under them. */
const underneath = 38;

/** px between a text and the edge of its panel. */
const inside = 3;

/** The shapes of a panel. @internal */
export function layOutPanel(panel: Panel, x: Axis, place: Place): LaidRow {
  const { left, right, margin } = place;
  const top = place.top + nameHeight;
  const frame: Box = { left, right, top, bottom: top + panel.share * place.panelHeight };
  const drawn = drawnPanel(panel, { x: scaleOf(x, left, right), y: scaleOf(panel.y, frame.bottom, top) });
  const rules = rulesOf(drawn, frame);
  const { placed, unplaced, isShort } = placeAtLength(labelsOf(drawn), {
    frame: grown(frame, -inside),
    paths: [...pathsOf(drawn), ...rules],
    outlines: drawn.areas.flatMap(({ lower, upper }) => [lower, upper]),
    boxes: drawn.marks.map(({ at }) => boxAround(at)),
  });
  return {
    shapes: [
      {
        kind: 'text',
        x: margin,
        y: place.top + 12,
        text: panel.y.name,
        anchor: 'start',
        size: type.text,
        colour: ink,
      },
      ...axesOf(panel.y, x, frame),
      ...drawn.areas.flatMap(areaShapes),
      ...rules.map(ruleShape),
      ...drawn.lines.map(lineShape),
      ...drawn.dots.flatMap(dotShapes),
      ...drawn.marks.map(markShape),
      ...placed.flatMap(labelShapes),
    ],
    bottom: frame.bottom + underneath,
    unplaced: unplaced.map(({ inWords }) => inWords),
    keys: isShort ? drawn.marks.map(({ key }) => key) : [],
  };
}

/** Lines from top to bottom, and from marks down to the axis. */
const rulesOf = ({ rules, marks }: DrawnPanel, { top, bottom }: Box): (readonly [Spot, Spot])[] => [
  ...rules.map(
    (x) =>
      [
        { x, y: top },
        { x, y: bottom },
      ] as const,
  ),
  ...marks.flatMap(({ hasRule, at }) => (hasRule ? [[at, { x: at.x, y: bottom }] as const] : [])),
];

/** What no text may stand on. */
const pathsOf = ({ lines, dots }: DrawnPanel): (readonly Spot[])[] => [
  ...lines.map(({ spots }) => spots),
  ...dots.flatMap(({ spots, stemsFrom }) =>
    spots
      .filter((spot, k) => !isNear(spot, spots[k - 1]))
      .map((spot) => [spot, { x: spot.x, y: stemsFrom ?? spot.y }]),
  ),
];

/** Whether a dot stands on the one before it, for all that a text keeps from either. */
const isNear = ({ x, y }: Spot, before: Spot | undefined): boolean =>
  before !== undefined && Math.hypot(x - before.x, y - before.y) < 0.5;

const boxAround = ({ x, y }: Spot): Box => ({
  left: x - markRadius,
  right: x + markRadius,
  top: y - markRadius,
  bottom: y + markRadius,
});
