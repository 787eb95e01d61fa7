import { rootBetween } from '../../solver/root-between.js';
import { geometricVolumes, isFlat, refinedPoints } from '../model/monotone-pieces.js';
import type { BentPoint } from '../model/real-point.js';
import { isReached } from '../titration-limits.js';
import type { InflectionPoint } from './inflection-points.js';

/**
 * Every inflection at V > 0 of a curve with coefficients of activity, in order of volume: where its analytic d²pH/dV²
 * is zero.
 *
 * Roots are separated on the outline of monotone-pieces.ts with steps of 0.02 in pH, since d²pH/dV², made dimensionless
 * by the slope, varies on the scale of one unit of pH, and on that of dilution where the curve is flat. A pair closer
 * together than that is missed. Where CO2 starts to escape the curve has a corner: d²pH/dV² jumps there without being
 * zero, which does not count.
 *
 * @internal
 */
export function realInflections(bentAt: (mL: number) => BentPoint, analyte: number): InflectionPoint[] {
  const points = refinedPoints(bentAt, geometricVolumes(analyte), 0.02);
  if (isFlat(points)) return [];
  return points.flatMap((point, k) => {
    const next = points[k + 1];
    if (!next || !(point.bend < 0 !== next.bend < 0)) return [];
    const root = rootBetween((volume) => bentAt(volume).bend, point.mL, next.mL);
    if (root.status !== 'found') return [];
    const mL = root.x;
    if (!isReached(mL)) return [];
    const { pH, slope, bend } = bentAt(mL);
    if (Math.abs(bend) > cornerShare * (Math.abs(point.bend) + Math.abs(next.bend))) return [];
    const kind = point.bend * slope > 0 ? 'steepest' : 'flattest';
    return [{ mL, pH, slope, kind }];
  });
}

/** At a root the second derivative is rounding beside that of the neighbours; at a corner it is not. */
const cornerShare = 1e-6;
