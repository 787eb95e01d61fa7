import type { EquivalencePoint } from '../points/equivalence-points.js';
import { titrationLimits } from '../titration-limits.js';

/**
 * The volume to which a titration is usually carried, mL: 1.5 times the last equivalence volume, or twice the analyte
 * where there is none (common practice).
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
