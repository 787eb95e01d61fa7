import { axisUnder } from './axes-of.js';
import { type Axis, scaleOf } from './axis.js';
import type { Bars } from './figure.js';
import { barInk, gridInk, ink, type } from './inks.js';
import type { LaidRow, Place } from './laid-row.js';
import type { Box, Shape } from './shape.js';
import { wrapped } from './text-width.js';

/** px of a bar, of a line of text above it, and between a bar and the next text. */
const barHeight = 12;
const textHeight = 15;
const gap = 9;

/**
 * A level bar for each value over the axis, in an outline as long as the whole, with its text above it: there it has room
 * whatever the bar's length.
 *
 * @internal
 */
export function layOutBars({ bars }: Bars, x: Axis, { left, right, top }: Place): LaidRow {
  const across = scaleOf(x, left, right);
  const shapes: Shape[] = [];
  let bottom = top + gap / 2;
  for (const { to, text } of bars) {
    const lines = wrapped(text, right - left, type.text);
    const barTop = bottom + lines.length * textHeight + 3;
    const outline: Box = { left, right, top: barTop, bottom: barTop + barHeight };
    shapes.push(
      ...lines.map((line, k) => written(line, left, bottom + (k + 1) * textHeight - 2)),
      { kind: 'rect', box: { ...outline, right: across(to) }, fill: barInk },
      { kind: 'rect', box: outline, fill: 'none', stroke: { colour: gridInk, width: 1 } },
    );
    bottom = outline.bottom + gap;
  }
  const frame: Box = { left, right, top, bottom };
  return { shapes: [...shapes, ...axisUnder(x, frame)], bottom: bottom + 38, unplaced: [], keys: [] };
}

const written = (text: string, x: number, y: number): Shape => ({
  kind: 'text',
  x,
  y,
  text,
  anchor: 'start',
  size: type.text,
  colour: ink,
});
