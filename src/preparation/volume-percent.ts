import type { Vessel } from '../catalogue/glassware.js';
import { triangularHalfWidth } from '../solver/half-widths.js';

/**
 * Standard uncertainty of a volume, percent, from the limit of error of its vessel, triangular.
 *
 * @param mL - what is measured with it: as much as it holds if left out
 * @internal
 */
export const volumePercent = (vessel: Vessel, glass: 'A' | 'B', mL = vessel.mL): number =>
  (100 * vessel.tolerance[glass]) / triangularHalfWidth / mL;
