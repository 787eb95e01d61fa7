import { printFormula } from '../substance/print-formula.js';
import type { Axis } from './axis.js';
import { pointsOf } from './drawn-curve.js';
import type { PlotLine, Point } from './figure.js';
import { inkOf } from './inks.js';
import { printHundredths } from './print-quantity.js';
import { type PlotWords, say } from './words.js';

/** From none to all. @internal */
export const fractionAxis = (name: string): Axis => ({ name, from: 0, to: 1 });

/**
 * The fraction of the k-th species of a protolyte. Its name stands where there is at least half as much of it as there ever
 * is.
 *
 * @internal
 */
export function fractionLine(
  formula: string,
  k: number,
  x: readonly number[],
  y: readonly number[],
): PlotLine {
  const points = pointsOf(x, y);
  const half = Math.max(...y) / 2;
  return {
    name: printFormula(formula),
    points,
    stroke: inkOf(k),
    anchors: points.filter((point) => point.y >= half),
  };
}

/** Where a species has its largest fraction, in words. @internal */
export function describeFraction(
  { name, points }: PlotLine,
  sayAt: (x: number) => string,
  words: PlotWords,
): string {
  const largest = points.reduce((most, point) => (point.y > most.y ? point : most), points[0] as Point);
  return say(words.describeSpecies, {
    species: name,
    fraction: printHundredths(largest.y),
    at: sayAt(largest.x),
  });
}
