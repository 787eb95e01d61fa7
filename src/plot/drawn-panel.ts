import type { Scale } from './axis.js';
import type { Area, Dots, Mark, Panel, PlotLine } from './figure.js';
import type { Spot } from './shape.js';

/** What stands in a panel, px in place of the units of its axes. */
export interface DrawnPanel {
  readonly areas: readonly (Pick<Area, 'name'> & {
    readonly lower: readonly Spot[];
    readonly upper: readonly Spot[];
  })[];
  readonly lines: readonly (Pick<PlotLine, 'name' | 'stroke'> & {
    readonly spots: readonly Spot[];
    readonly anchors: readonly Spot[];
  })[];
  readonly dots: readonly (Pick<Dots, 'name' | 'isReading'> & {
    readonly spots: readonly Spot[];
    /** y, px; null for dots without stems. */
    readonly stemsFrom: number | null;
  })[];
  readonly marks: readonly (Omit<Mark, 'at'> & { readonly at: Spot })[];
  readonly rules: readonly number[];
}

/** A panel in px, by the scales of its axes. @internal */
export function drawnPanel(panel: Panel, { x, y }: { readonly x: Scale; readonly y: Scale }): DrawnPanel {
  const spot = (at: Spot): Spot => ({ x: x(at.x), y: y(at.y) });
  const column = (across: readonly number[], up: readonly number[]) =>
    across.map((value, k) => spot({ x: value, y: up[k] as number }));
  return {
    areas: panel.areas.map(({ name, x: across, lower, upper }) => ({
      name,
      lower: column(across, lower),
      upper: column(across, upper),
    })),
    lines: panel.lines.map(({ points, anchors = points, name, stroke }) => ({
      name,
      stroke,
      spots: points.map(spot),
      anchors: anchors.map(spot),
    })),
    dots: panel.dots.map(({ points, name, isReading, stemsFrom }) => ({
      name,
      isReading,
      spots: points.map(spot),
      stemsFrom: stemsFrom === undefined ? null : y(stemsFrom),
    })),
    marks: panel.marks.map((mark) => ({ ...mark, at: spot(mark.at) })),
    rules: panel.rules.map(x),
  };
}
