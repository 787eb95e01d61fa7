import type { Edge } from './boxes.js';
import type { Box, Spot } from './shape.js';

/** A text that belongs to a place in a panel, or to any of several. */
export interface Label {
  /** In order of preference. */
  readonly anchors: readonly Spot[];
  readonly lines: readonly string[];
  /** What is written where the lines have no room. */
  readonly short?: readonly string[];
  readonly size: number;
  readonly colour: string;
  /** The path that it names, which may come near. */
  readonly home?: readonly Spot[];
  /** What is said of it elsewhere if there is no room. */
  readonly inWords: string;
}

/** A label in its place. */
export interface PlacedLabel {
  readonly label: Label;
  readonly box: Box;
  readonly anchor: Spot;
  /** The line from its place to the text; null where the text stands close. */
  readonly leader: Edge | null;
}

/** From one line of a label to the next, in parts of the size of its type. @internal */
export const lineHeight = 1.25;

/** px: marks are no larger. @internal */
export const markRadius = 5;
