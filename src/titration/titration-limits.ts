import { frozen } from '../frozen.js';

/**
 * A volume of titrant from 0 to 1e9 mL; a curve of at most 1e7 points; pH as far as any solution within the limits has
 * it. A point counts from `leastML` on: a millionth of the smallest sample (`solutionLimits`).
 */
export const titrationLimits = /*#__PURE__*/ frozen({
  mL: 1e9,
  leastML: 1e-15,
  points: 1e7,
  pH: { from: -10, to: 30 },
} as const);

/** Whether a point at this volume counts. @internal */
export const isReached = (mL: number): boolean => mL >= titrationLimits.leastML && mL <= titrationLimits.mL;
