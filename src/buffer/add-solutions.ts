import { merged } from '../solution/merged.js';
import type { Content, Solution } from '../solution/solution.js';

/** A solution with more in the same volume. @internal */
export const plus = ({ mL, contents }: Solution, more: readonly Content[]): Solution => ({
  mL,
  contents: merged([...contents, ...more]),
});
