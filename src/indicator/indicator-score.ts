import type { PH } from '../equilibrium/quantities.js';
import type { Indicator } from '../substance/indicator.js';
import type { EquivalencePoint } from '../titration/equivalence-points.js';
import type { Verdict } from './verdict.js';

/** What an indicator is worth in a titration, and what a practitioner argues with. */
export interface IndicatorScore {
  readonly indicator: Indicator;
  /** From 0 to 1; ½ where the typical call is one tolerance off. */
  readonly score: number;
  /** How far the score may be off: the quadrature's own estimate. */
  readonly scoreError: number;
  /** The point it was judged for. */
  readonly at: EquivalencePoint;
  /** Volumes at which the change begins and ends, mL: 0 where it has begun in the sample, null where the curve does not get there. */
  readonly change: { readonly from: number | null; readonly to: number | null };
  /** Where a careful observer calls it; null where the curve does not get there. */
  readonly endpoint: { readonly mL: number; readonly pH: PH } | null;
  /** Systematic error of that call, in mL and in percent of the volume sought; below zero where it comes early. */
  readonly titrationError: { readonly mL: number; readonly percent: number } | null;
  /** How many drops of titrant the whole change takes; null where it does not begin or end. */
  readonly drops: number | null;
  readonly verdict: Verdict;
  /** In one plain sentence. */
  readonly reason: string;
}
