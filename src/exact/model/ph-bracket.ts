import type { Interval } from '../numbers/interval-operations.js';
import type { Intervals } from '../numbers/intervals.js';
import { type Ratio, ratios } from '../numbers/ratio.js';

/** Two numbers between which another lies. @internal */
export interface Bounds {
  readonly lower: Ratio;
  readonly upper: Ratio;
}

/** Two pH between which a root lies: net charge is proven positive at `lower` and negative at `upper`. @internal */
export interface PHBracket extends Bounds {
  /** Ionic strengths, mol/L, between which that root lies; null where γ = 1 throughout. */
  readonly strength: Bounds | null;
}

/** The bounds at a distance to either side of a number. @internal */
export const boundsAround = (middle: Ratio, half: Ratio): Bounds => ({
  lower: ratios.minus(middle, half),
  upper: ratios.plus(middle, half),
});

/** 1 or −1 where all of an interval has one sign; an interval without ends has none. @internal */
export const signOfInterval = ({ low, high }: Interval): number => (low.gt(0) ? 1 : high.lt(0) ? -1 : 0);

/** The activity of H+ at a pH. @internal */
export const activityAt = ({ powerOfTen }: Intervals, pH: Ratio): Interval =>
  powerOfTen(ratios.minus(ratios.of(0), pH));

/** The activity of H+ between two pH. @internal */
export const activityBetween = (arithmetic: Intervals, { lower, upper }: Bounds): Interval => ({
  low: activityAt(arithmetic, upper).low,
  high: activityAt(arithmetic, lower).high,
});

/** The ionic strength of a bracket, nothing where none matters. @internal */
export const strengthBetween = ({ of, ofRatio }: Intervals, { strength }: PHBracket): Interval =>
  strength ? { low: ofRatio(strength.lower).low, high: ofRatio(strength.upper).high } : of(0);
