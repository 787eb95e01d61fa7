import { type Axis, scaleOf, ticksAlong, ticksUp } from './axis.js';
import { gridInk, ink, paleInk, type } from './inks.js';
import type { Box, Shape, Stroke } from './shape.js';

/** The level lines behind a panel with their numbers, and the axis under it with its name. @internal */
export const axesOf = (y: Axis, x: Axis, frame: Box): Shape[] => [
  ...levelLines(y, frame),
  ...axisUnder(x, frame),
];

/** The axis under a frame, with its numbers and its name. @internal */
export const axisUnder = (x: Axis, frame: Box): Shape[] => [
  level(frame, frame.bottom, { colour: ink, width: 1.2 }),
  ...numbersUnder(x, frame),
  {
    kind: 'text',
    x: frame.right,
    y: frame.bottom + 34,
    text: x.name,
    anchor: 'end',
    size: type.text,
    colour: ink,
  },
];

const level = ({ left, right }: Box, y: number, stroke: Stroke): Shape => ({
  kind: 'line',
  from: { x: left, y },
  to: { x: right, y },
  stroke,
});

/** That at zero is darker where there are values to both sides of it. */
function levelLines(axis: Axis, frame: Box): Shape[] {
  const up = scaleOf(axis, frame.bottom, frame.top);
  return ticksUp(axis, frame.bottom - frame.top).flatMap(({ value, text }): Shape[] => [
    level(frame, up(value), { colour: value === 0 && axis.from < 0 ? paleInk : gridInk, width: 1 }),
    {
      kind: 'text',
      size: type.tick,
      colour: paleInk,
      x: frame.left - 7,
      y: up(value) + 4,
      text,
      anchor: 'end',
    },
  ]);
}

function numbersUnder(axis: Axis, { left, right, bottom }: Box): Shape[] {
  const across = scaleOf(axis, left, right);
  return ticksAlong(axis, right - left).flatMap(({ value, text }): Shape[] => {
    const x = across(value);
    return [
      { kind: 'line', from: { x, y: bottom }, to: { x, y: bottom + 5 }, stroke: { colour: ink, width: 1 } },
      { kind: 'text', size: type.tick, colour: paleInk, x, y: bottom + 18, text, anchor: 'middle' },
    ];
  });
}
