import type { Shape } from './shape.js';

/** A part of a picture that has its place: its shapes, how far down it goes, and what found no room in it. */
export interface LaidRow {
  readonly shapes: readonly Shape[];
  readonly bottom: number;
  readonly unplaced: readonly string[];
  /** What the marks mean, where their texts do not say it. */
  readonly keys: readonly string[];
}

/** Where a row stands, px: `left` and `right` are the ends of the axis that all rows share. */
export interface Place {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  /** The left edge of what is written. */
  readonly margin: number;
  /** Of a usual panel. */
  readonly panelHeight: number;
}
