import type { CalledEndpoint } from './called-endpoint.js';
import type { Explanation } from './explanations.js';

/** What readings tell of the bench. Plain data: it survives JSON. */
export interface Diagnosis {
  readonly verdict: 'sound' | 'fault';
  /** One sentence. */
  readonly sentence: string;
  /** What explains the readings best and, where there are several, what they cannot tell apart; empty where all is sound. */
  readonly likely: readonly Explanation[];
  /** Every fault that was tried, the best explanation first. */
  readonly explanations: readonly Explanation[];
  /** The end point that was called at the bench; null where none was given. */
  readonly endpoint: CalledEndpoint | null;
  /** How the readings lie about the equivalence points, and what was not tried. */
  readonly notes: readonly string[];
}
