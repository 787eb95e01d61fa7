/** A place in a picture, px from its upper left corner. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A line as it is drawn. */
export interface Stroke {
  readonly colour: string;
  readonly width: number;
  /** Lengths of dashes and gaps, px; a full line if left out. */
  readonly dash?: string;
}

/** A line of text. */
interface TextShape extends Spot {
  readonly kind: 'text';
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly size: number;
  readonly colour: string;
  readonly isBold?: boolean;
  /** White around the letters, so that a line behind them is cut short. */
  readonly hasHalo?: boolean;
}

/** What a picture is made of, in the order in which it is drawn. */
export type Shape =
  | TextShape
  | { readonly kind: 'path'; readonly d: string; readonly stroke?: Stroke; readonly fill?: string }
  | {
      readonly kind: 'circle';
      readonly at: Spot;
      readonly r: number;
      readonly stroke: Stroke;
      readonly fill: string;
    }
  | { readonly kind: 'line'; readonly from: Spot; readonly to: Spot; readonly stroke: Stroke }
  | {
      readonly kind: 'rect';
      readonly box: Box;
      readonly fill: string;
      readonly stroke?: Stroke;
      readonly isCrisp?: boolean;
    };

/** An upright rectangle, px. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}
