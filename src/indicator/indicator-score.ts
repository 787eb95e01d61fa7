import type { PH } from '../equilibrium/quantities.js';
import type { Indicator, Transition } from '../substance/indicator.js';
import type { EquivalencePoint } from '../titration/points/equivalence-points.js';
import type { Verdict } from './verdict.js';

/** The few facts of an indicator that a result repeats; the catalogue has the rest under its id. */
export interface IndicatorFacts {
  readonly id: string;
  readonly name: string;
  readonly transition: Transition;
  readonly acidColour: string;
  readonly baseColour: string;
  /** The usual cautions, in plain words; the safety data sheet of the bottle comes first. */
  readonly hazard?: string;
  /** Why it is not to be taken for end points. */
  readonly notForUse?: string;
}

/** Of an indicator, what a result repeats. @internal */
export function factsOf(indicator: Indicator): IndicatorFacts {
  const { id, name, transition, acidColour, baseColour, hazard, notForUse } = indicator;
  return {
    id,
    name,
    transition,
    acidColour,
    baseColour,
    ...(hazard === undefined ? {} : { hazard }),
    ...(notForUse === undefined ? {} : { notForUse: notForUse.reason }),
  };
}

/** Systematic error of a call, in mL and in percent of the volume sought; below zero where it comes early. */
export interface TitrationError {
  readonly mL: number;
  readonly percent: number;
}

/** What an indicator is worth in a titration, and what a practitioner argues with. */
export interface IndicatorScore {
  readonly indicator: IndicatorFacts;
  /** From 0 to 1; ½ where the typical call is one tolerance off. */
  readonly score: number;
  /** How far the score may be off: the quadrature's own estimate. */
  readonly scoreError: number;
  /** The point it was judged for. */
  readonly at: EquivalencePoint;
  /**
   * Volumes at which the change begins and ends, mL: 0 where it has begun in the sample, null where the curve does not
   * get there.
   */
  readonly change: { readonly from: number | null; readonly to: number | null };
  /** Where a careful observer calls it; null where the curve does not get there. */
  readonly endpoint: { readonly mL: number; readonly pH: PH } | null;
  /** Systematic error of that call; null where there is none. */
  readonly titrationError: TitrationError | null;
  /** How many drops of titrant the whole change takes; null where it does not begin or end. */
  readonly drops: number | null;
  /** By the score; `unsuitable` whatever the score for a change that is never complete, and for what is not for use. */
  readonly verdict: Verdict;
  /**
   * What the Davies equation makes of it; null where the titration is not ideal, or has no setup that could be
   * calculated again.
   */
  readonly withDavies: ScoreWithDavies | null;
  /** In plain sentences with the indicator as their subject. */
  readonly reason: string;
}

/** The same indicator at the same point, with activity coefficients by Davies. */
export interface ScoreWithDavies {
  /** Good to 0.001. */
  readonly score: number;
  readonly titrationError: TitrationError | null;
  readonly verdict: Verdict;
  /**
   * Whether the ionic strength at the point is within the range of the equation, up to 0.5 mol/L; beyond it, no more
   * than a hint.
   */
  readonly inRange: boolean;
}
