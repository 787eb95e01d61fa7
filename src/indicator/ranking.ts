import type { LeftOut } from '../substance/left-out.js';
import type { EquivalencePoint } from '../titration/points/equivalence-points.js';
import type { IndicatorScore } from './indicator-score.js';
import type { ScoreOptions } from './score-options.js';

/** How a ranking is made. */
export interface RankingOptions extends ScoreOptions {
  /** The ids of indicators that are ranked although they are not for use (`notForUse`). */
  readonly include?: readonly string[];
}

/** An equivalence point, and how well it could be found at all. */
export interface PointToFind {
  readonly at: EquivalencePoint;
  /**
   * The score of the sharpest call (`sharpestCall`) about the pH of the point itself, by the tolerance in use: what no
   * choice of indicator improves much. A low one is the fault of a flat curve, not of the indicators.
   */
  readonly best: number;
}

/** What every ranking says beside its order. */
export interface RankingNotes {
  /** Indicators of the list that are not for use, and why; name them in `include` to have them ranked. */
  readonly leftOut: readonly LeftOut[];
  /** Why nothing is ranked, which point is flat, and what the Davies equation has to say. */
  readonly notes: readonly string[];
}

/** Indicators in order. */
export interface IndicatorRanking extends RankingNotes {
  /** The best first. Empty where there is no equivalence point: `notes` say why. */
  readonly ranking: readonly IndicatorScore[];
  /** The points that they were judged for. */
  readonly points: readonly PointToFind[];
}

/** The indicators for one equivalence point. */
export interface IndicatorChoice extends PointToFind {
  /** Those that serve this point better than any other, the best first. */
  readonly ranking: readonly IndicatorScore[];
}

/** A set of indicators for one titration. */
export interface IndicatorSet extends RankingNotes {
  /** In order of volume. Empty where there is no equivalence point: `notes` say why. */
  readonly points: readonly IndicatorChoice[];
}
