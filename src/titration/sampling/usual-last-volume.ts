import type { EquivalencePoint } from '../points/equivalence-points.js';
import { titrationLimits } from '../titration-limits.js';

/**
 * How far a titration is usually carried, mL: to 1.5 times the last equivalence volume, or to twice the analyte where
 * there is none (common practice).
 *
 * @internal
 */
export function usualLastVolume(
  points: readonly EquivalencePoint[],
  analyte: { readonly mL: number },
): number {
  const last = points.at(-1)?.mL;
  return Math.min(last === undefined ? 2 * analyte.mL : 1.5 * last, titrationLimits.mL);
}
