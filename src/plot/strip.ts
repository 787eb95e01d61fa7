import { type Axis, scaleOf } from './axis.js';
import type { Strip } from './figure.js';
import { ink, paleInk, type } from './inks.js';
import type { LaidRow, Place } from './laid-row.js';
import type { Box, Shape, Stroke } from './shape.js';
import { textWidth, wrapped } from './text-width.js';

/** px of the bar, and of the row of text under it. */
const barHeight = 18;
const captionHeight = 15;
const changeHeight = 24;

/**
 * The colours of a flask along the axis, with its caption above, and under it brackets where the indicator changes.
 *
 * @internal
 */
export function layOutStrip(strip: Strip, x: Axis, place: Place): LaidRow {
  const { left, right, margin } = place;
  const across = scaleOf(x, left, right);
  const captions = wrapped(strip.caption, right - margin, type.text);
  const top = place.top + captions.length * captionHeight + 4;
  const bar: Box = { left, right, top, bottom: top + barHeight };
  const under =
    strip.changes.length > 0 ? changesUnder(strip, bar, across) : { shapes: [], bottom: bar.bottom + 6 };
  const written = (text: string, k: number): Shape => ({
    kind: 'text',
    x: margin,
    y: place.top + 12 + k * captionHeight,
    text,
    anchor: 'start',
    size: type.text,
    colour: ink,
  });
  return {
    shapes: [
      ...captions.map(written),
      ...strip.colours.map(
        ({ from, to, hex }): Shape => ({
          kind: 'rect',
          box: { ...bar, left: across(from), right: across(to) },
          fill: hex,
          isCrisp: true,
        }),
      ),
      { kind: 'rect', box: bar, fill: 'none', stroke: { colour: ink, width: 1 } },
      ...strip.rules.map(
        (at): Shape => ({
          kind: 'line',
          from: { x: across(at), y: bar.top },
          to: { x: across(at), y: bar.bottom },
          stroke: ruleStroke,
        }),
      ),
      ...under.shapes,
    ],
    bottom: under.bottom + 8,
    unplaced: [],
    keys: [],
  };
}

const ruleStroke: Stroke = { colour: paleInk, width: 1, dash: '1 3' };

/** Each change with a bracket as wide as it is, and its volumes centred under it; a text that meets another goes a line down. */
function changesUnder({ changes }: Strip, bar: Box, across: (value: number) => number) {
  const ends: number[] = []; // of the last text in each line, px
  const shapes = changes.flatMap(({ from, to, text }): Shape[] => {
    const [start, end] = [across(from), across(to)];
    const half = textWidth(text, type.tick) / 2;
    const middle = Math.min(Math.max((start + end) / 2, bar.left + half), bar.right - half);
    const free = ends.findIndex((last) => last + 8 <= middle - half);
    const line = free < 0 ? ends.length : free;
    ends[line] = middle + half;
    return [
      { kind: 'path', d: bracket(start, end, bar.bottom + 2), stroke: { colour: ink, width: 1.4 } },
      {
        kind: 'text',
        x: middle,
        y: bar.bottom + 20 + line * captionHeight,
        text,
        anchor: 'middle',
        size: type.tick,
        colour: ink,
      },
    ];
  });
  return { shapes, bottom: bar.bottom + changeHeight + (ends.length - 1) * captionHeight };
}

function bracket(start: number, end: number, y: number): string {
  const [a, b] = [start, Math.max(end, start + 1)].map((x) => x.toFixed(2));
  return `M${a},${y.toFixed(2)}v5H${b}v-5`;
}
