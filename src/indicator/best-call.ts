import { frozen } from '../frozen.js';
import type { Source } from '../source.js';
import type { EquivalencePoint } from '../titration/points/equivalence-points.js';
import { meritOf } from './merit.js';
import { triangle } from './observer.js';
import type { PointToFind } from './ranking.js';
import type { Asked } from './read-titration.js';
import type { ReadOptions } from './score-options.js';

/** The sharpest call that is taken as possible: its spread to either side, in pH. */
export const sharpestCall: { readonly within: number; readonly source: Source } = /*#__PURE__*/ frozen({
  within: 0.1,
  source: {
    kind: 'commonPractice',
    note: 'with a mixed indicator or a comparison tube, an end point is called to about 0.1 in pH',
  },
});

/** A point, and the score of the sharpest call at its own pH. @internal */
export function bestCallAt(
  at: EquivalencePoint,
  { titration, tolerance }: Pick<ReadOptions, 'tolerance'> & { readonly titration: Asked },
): PointToFind {
  const pH = titration.pHAt(at.mL);
  const { within } = sharpestCall;
  const { value } = meritOf(titration, triangle(pH - within, pH, pH + within), at.mL, tolerance);
  return { at, best: Math.min(Math.max(value, 0), 1) };
}
