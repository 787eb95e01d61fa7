import type { CalledEndpoint } from './called-endpoint.js';
import type { Explanation } from './explanations.js';

/** What readings tell of the bench. Plain data: it survives JSON. */
export interface Diagnosis {
  /**
   * `sound`: nothing explains the readings much better than a sound bench. `fault`: one or more of the explanations do.
   * `unexplained`: the readings scatter about the best of all more than twice as much as their uncertainty lets expect.
   */
  readonly verdict: 'sound' | 'fault' | 'unexplained';
  /** One sentence. */
  readonly sentence: string;
  /** What explains the readings best and, where there are several, what they cannot tell apart; empty where all is sound. */
  readonly likely: readonly Explanation[];
  /** How far the readings lie from the best explanation or a sound bench, in their standard uncertainties: 1 is expected. */
  readonly scatter: number;
  /** Every fault that was tried and can be fitted, the best explanation first. */
  readonly explanations: readonly Explanation[];
  /** The end point that was called at the bench; null where none was given. */
  readonly endpoint: CalledEndpoint | null;
  /** How the readings lie about the equivalence points, and whether the model of activity may be at fault. */
  readonly notes: readonly string[];
}
