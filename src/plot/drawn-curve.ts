import { type Curve, equalAdditions } from '../titration/sampling/curve.js';
import type { Titration } from '../titration/titration.js';
import type { Point } from './figure.js';

/**
 * A curve close enough for the eye: neighbours differ by at most 0.05 in pH and by a two-hundredth of the axis, and
 * every steepest and flattest point is there.
 *
 * @internal
 */
export function drawnCurve(titration: Titration, upTo: number): Curve {
  const steep = titration.curve({ maxStep: 0.05, upTo }).mL;
  const even = equalAdditions(upTo / 200, upTo);
  const special = [...titration.inflectionPoints, ...titration.equivalencePoints]
    .map(({ mL }) => mL)
    .filter((mL) => mL <= upTo);
  const volumes = [...new Set([...steep, ...even, ...special, upTo])].sort((a, b) => a - b);
  return titration.curve({ volumes });
}

/** The points of a curve. @internal */
export const pointsOf = (x: readonly number[], y: readonly number[]): Point[] =>
  x.map((value, k) => ({ x: value, y: y[k] as number }));

/** The equivalence volumes on an axis, mL. @internal */
export const equivalenceVolumes = ({ equivalencePoints }: Titration, upTo: number): number[] =>
  equivalencePoints.map(({ mL }) => mL).filter((mL) => mL <= upTo);
