import { scaleLinear } from 'd3-scale';
import { type } from './inks.js';
import { printExactly } from './print-quantity.js';
import { textWidth } from './text-width.js';

/** A stretch of numbers along one side of a panel, and what it is called. */
export interface Axis {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

/** A number on an axis, and how it is printed. */
export interface Tick {
  readonly value: number;
  readonly text: string;
}

/** From the numbers of an axis to px. */
export type Scale = (value: number) => number;

/** The numbers of an axis on the px from a start to an end. @internal */
export const scaleOf = ({ from, to }: Axis, start: number, end: number): Scale =>
  scaleLinear([from, to], [start, end]);

/**
 * Round numbers along a level axis, as many as have room side by side.
 *
 * @param length - px
 * @internal
 */
export function ticksAlong(axis: Axis, length: number): readonly Tick[] {
  for (let count = 10; count > 1; count -= 1) {
    const ticks = ticksOf(axis, count);
    const widest = Math.max(0, ...ticks.map(({ text }) => textWidth(text, type.tick)));
    if ((widest + apart) * (ticks.length - 1) <= length) return ticks;
  }
  return ticksOf(axis, 1).slice(0, 1);
}

/** px between two numbers on a level axis. */
const apart = 14;

/** Round numbers along an upright axis. @internal */
export const ticksUp = (axis: Axis, length: number): readonly Tick[] =>
  ticksOf(axis, Math.max(2, Math.min(8, Math.floor(length / 32))));

function ticksOf({ from, to }: Axis, count: number): Tick[] {
  const scale = scaleLinear([from, to], [0, 1]);
  const most = Math.max(Math.abs(from), Math.abs(to));
  const print = most >= 1e5 || most < 1e-3 ? printExactly : scale.tickFormat(count, 'f');
  return scale.ticks(count).map((value) => ({ value, text: print(value) }));
}

/** An axis that begins and ends at round numbers about its data; one unit wide if the data are all alike. @internal */
export function roundAxis(name: string, values: Iterable<number>): Axis {
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    from = Math.min(from, value);
    to = Math.max(to, value);
  }
  if (!(from < to)) [from, to] = [from - 0.5, from + 0.5];
  const [low = from, high = to] = scaleLinear([from, to], [0, 1]).nice(6).domain();
  return { name, from: low, to: high };
}
