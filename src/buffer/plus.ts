import type { Faults } from '../errors.js';
import { merged } from '../solution/merged.js';
import type { Content, Solution } from '../solution/solution.js';

/** A solution with more in the same volume, noting a fault where two reagents share an id. @internal */
export function plus(
  { mL, contents }: Solution,
  more: readonly Content[],
  path: string,
  faults: Faults,
): Solution {
  return { mL, contents: merged([...contents, ...more], path, faults) };
}
