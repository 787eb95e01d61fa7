import { frozen } from '../frozen.js';

/** What a score is worth, in words. */
export type Verdict = 'well suited' | 'suitable' | 'with care' | 'unsuitable';

/**
 * The least score of each verdict. They are ours: 1/(1 + x²) for a typical call x tolerances off, with x = ½, 1 and 3.
 */
export const verdictScores = /*#__PURE__*/ frozen({
  'well suited': 0.8,
  suitable: 0.5,
  'with care': 0.1,
  unsuitable: 0,
} as const);

/** The verdict on a score. @internal */
export function verdictOf(score: number): Verdict {
  if (score >= verdictScores['well suited']) return 'well suited';
  if (score >= verdictScores.suitable) return 'suitable';
  return score >= verdictScores['with care'] ? 'with care' : 'unsuitable';
}

/** Sorts what is unsuitable behind what is not, whatever its score. @internal */
export function usableFirst(
  one: { readonly verdict: Verdict },
  other: { readonly verdict: Verdict },
): number {
  return Number(one.verdict === 'unsuitable') - Number(other.verdict === 'unsuitable');
}
