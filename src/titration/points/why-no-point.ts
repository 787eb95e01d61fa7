import { fixed } from '../../print-number.js';
import type { CurveModel } from '../model/curve-model.js';
import { titrationLimits } from '../titration-limits.js';

/** How every note on a titration without an equivalence point begins. @internal */
export const noPoint = 'No equivalence point: ';

/**
 * Why a titration has no equivalence point, in words, from the pH of the analyte and that of the titrant; `neutral` is
 * ½ pKw.
 *
 * @internal
 */
export function whyNoPoint(curveModel: CurveModel, neutral: number): string {
  // In so much titrant the analyte no longer counts.
  const [analyte, titrant] = [0, titrationLimits.mL].map((mL) => {
    const pH = curveModel.pHAt(mL);
    const kind = Math.abs(pH - neutral) < 0.05 ? 'neutral' : pH < neutral ? 'acidic' : 'basic';
    return `${kind} (pH ${fixed(pH, 1)})`;
  });
  return `${noPoint}analyte ${analyte}, titrant ${titrant}: no step is done.`;
}
