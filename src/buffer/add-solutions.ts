import { merged } from '../solution/merged.js';
import { type Content, type Solution, sameVolume } from '../solution/solution.js';

/** A solution with more in the same volume. @internal */
export const plus = (solution: Solution, more: readonly Content[]): Solution => ({
  ...sameVolume(solution),
  contents: merged([...solution.contents, ...more]),
});
