import type { Course } from './course.js';
import { titrationLimits } from './limits.js';

/** How every note on a titration without an equivalence point begins. @internal */
export const noPoint = 'No equivalence point: ';

/**
 * Why a titration has no equivalence point, in words, from the pH of the analyte and that of the titrant; `neutral` is ½ pKw.
 *
 * @internal
 */
export function whyNoPoint(course: Course, neutral: number): string {
  const analyte = course.pHAt(0);
  const titrant = course.pHAt(titrationLimits.mL); // the analyte counts for nothing in so much of it
  const shown = (pH: number) => pH.toFixed(1);
  const isNeutral = (pH: number) => Math.abs(pH - neutral) < 0.05; // to the digit shown

  if (isNeutral(titrant))
    return `${noPoint}the titrant is neutral (pH ${shown(titrant)}) and neutralises nothing.`;
  if (isNeutral(analyte))
    return `${noPoint}the analyte is neutral (pH ${shown(analyte)}); there is nothing to neutralise.`;
  if (Math.abs(titrant - analyte) < 0.0005)
    return `${noPoint}the titrant has the pH of the analyte (${shown(analyte)}), so that nothing happens.`;
  const both = `analyte (pH ${shown(analyte)}) and titrant (pH ${shown(titrant)}) are both`;
  if (analyte < neutral && titrant < neutral)
    return `${noPoint}${both} acidic, and neither neutralises the other.`;
  if (analyte > neutral && titrant > neutral)
    return `${noPoint}${both} basic, and neither neutralises the other.`;
  return `${noPoint}the titrant completes no whole step of an acid or base in the analyte.`;
}
