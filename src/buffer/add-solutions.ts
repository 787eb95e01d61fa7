import { merged } from '../solution/merged.js';
import { type Content, type Solution, volumeOf } from '../solution/solution.js';

/** A solution with more in the same volume. @internal */
export const plus = (solution: Solution, more: readonly Content[]): Solution => ({
  ...volumeOf(solution),
  contents: merged([...solution.contents, ...more]),
});
