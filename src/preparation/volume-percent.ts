import type { Vessel } from '../catalogue/glassware.js';

/** Half width of a triangular distribution to its standard uncertainty. */
const triangular = 1 / Math.sqrt(6);

/**
 * Standard uncertainty of a volume, percent, from the limit of error of its vessel.
 *
 * @param mL - what is measured with it: as much as it holds if left out
 * @internal
 */
export const volumePercent = (vessel: Vessel, glass: 'A' | 'B', mL = vessel.mL): number =>
  (100 * triangular * vessel.tolerance[glass]) / mL;
