import { area, line } from 'd3-shape';
import type { DrawnPanel } from './drawn-panel.js';
import { bandInk, ink, paleInk, readingInk } from './inks.js';
import { markRadius } from './label.js';
import type { Shape, Spot, Stroke } from './shape.js';

/** A line through points. @internal */
export const lineShape = ({ spots, stroke }: DrawnPanel['lines'][number]): Shape => ({
  kind: 'path',
  d: pathOf(spots),
  stroke,
});

const pathOf = (spots: readonly Spot[]): string =>
  line<Spot>(
    ({ x }) => x,
    ({ y }) => y,
  ).digits(2)(spots) ?? '';

/** A dotted line from one place to another. @internal */
export const ruleShape = ([from, to]: readonly [Spot, Spot]): Shape => ({
  kind: 'line',
  from,
  to,
  stroke: { colour: paleInk, width: 1, dash: '1 3' },
});

/** An area, edged so that a copy in black and white shows it too. @internal */
export function areaShapes({ lower, upper }: DrawnPanel['areas'][number]): Shape[] {
  const filled = area<Spot>()
    .x(({ x }) => x)
    .y0((_, k) => (lower[k] as Spot).y)
    .y1(({ y }) => y)
    .digits(2);
  const edge: Stroke = { colour: paleInk, width: 0.7, dash: '2 2' };
  return [
    { kind: 'path', d: filled(upper) ?? '', fill: bandInk },
    ...[lower, upper].map((side): Shape => ({ kind: 'path', d: pathOf(side), stroke: edge })),
  ];
}

/** Dots, and the stems of those that have them. @internal */
export function dotShapes({ spots, stemsFrom, isReading }: DrawnPanel['dots'][number]): Shape[] {
  const stroke: Stroke = { colour: isReading ? readingInk : ink, width: 1.2 };
  const [r, fill] = isReading ? [2.8, '#ffffff'] : [2, ink];
  return [
    ...spots.flatMap((from): Shape[] =>
      stemsFrom === null ? [] : [{ kind: 'line', from, to: { x: from.x, y: stemsFrom }, stroke }],
    ),
    ...spots.map((at): Shape => ({ kind: 'circle', at, r, stroke, fill })),
  ];
}

/** The sign of a mark: a ring, or a diamond. @internal */
export function markShape({ shape, at }: DrawnPanel['marks'][number]): Shape {
  const stroke: Stroke = { colour: ink, width: 1.5 };
  if (shape === 'ring') return { kind: 'circle', at, r: 4, stroke, fill: '#ffffff' };
  const corners = [
    { x: at.x, y: at.y - markRadius },
    { x: at.x + markRadius, y: at.y },
    { x: at.x, y: at.y + markRadius },
    { x: at.x - markRadius, y: at.y },
  ];
  return { kind: 'path', d: `${pathOf(corners)}Z`, stroke, fill: shape === 'diamond' ? ink : '#ffffff' };
}
