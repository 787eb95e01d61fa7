import type { Axis } from './axis.js';
import type { Stroke } from './shape.js';

/** A place on the axes of a panel. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A picture before it has a size: what is shown, in the units of its axes. */
export interface Figure {
  readonly title: string;
  readonly description: string;
  readonly x: Axis;
  readonly rows: readonly (Panel | Strip | Bars)[];
  /** Lines under the picture. */
  readonly notes: readonly string[];
  /** What is said under the picture of a `{text}` that found no room in it. */
  readonly noRoom: string;
}

/** Curves and points over the axis that all panels share. */
export interface Panel {
  readonly kind: 'panel';
  readonly y: Axis;
  /** Of its height to the height of a usual panel. */
  readonly share: number;
  readonly areas: readonly Area[];
  readonly lines: readonly PlotLine[];
  readonly dots: readonly Dots[];
  readonly marks: readonly Mark[];
  /** x at which a line runs from top to bottom. */
  readonly rules: readonly number[];
}

/** An area between two lines. */
export interface Area {
  readonly x: readonly number[];
  readonly lower: readonly number[];
  readonly upper: readonly number[];
  readonly name: string;
}

/** A line through points. */
export interface PlotLine {
  readonly points: readonly Point[];
  readonly stroke: Stroke;
  /** Written beside it; empty for a line that needs no name. */
  readonly name: string;
  /** Where the name may stand; anywhere along the line if left out. */
  readonly anchors?: readonly Point[];
}

/** Points of one kind. */
export interface Dots {
  readonly points: readonly Point[];
  readonly name: string;
  /** A line from each dot to this y. */
  readonly stemsFrom?: number;
  readonly isReading: boolean;
}

/** One point with a text of its own. */
export interface Mark {
  readonly at: Point;
  readonly lines: readonly string[];
  /** Where there is little room. */
  readonly short: readonly string[];
  /** What the mark means, where the short text does not say it. */
  readonly key: string;
  readonly shape: 'diamond' | 'hollow diamond' | 'ring';
  /** Whether a line falls from it to the axis. */
  readonly hasRule: boolean;
}

/** The colours of a flask along the axis. */
export interface Strip {
  readonly kind: 'strip';
  /** Above it. */
  readonly caption: string;
  readonly colours: readonly { readonly from: number; readonly to: number; readonly hex: string }[];
  /** Where the indicator changes, each with its text. */
  readonly changes: readonly { readonly from: number; readonly to: number; readonly text: string }[];
  /** x of lines that run through it. */
  readonly rules: readonly number[];
}

/** Shares of a whole, one under another. */
export interface Bars {
  readonly kind: 'bars';
  /** Each from the start of the axis, with what it is. */
  readonly bars: readonly { readonly to: number; readonly text: string }[];
}
