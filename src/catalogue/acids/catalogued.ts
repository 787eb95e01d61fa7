import { frozen } from '../../frozen.js';
import type { Protolyte } from '../../substance/protolyte.js';

/**
 * An entry of the catalogue: the data as they stand, with its id and the formulas in their type. They are checked by the tests, not at every
 * import.
 */
export const catalogued = <const Formula extends string, const Id extends string>(
  protolyte: Protolyte<Formula> & { readonly id: Id },
): Protolyte<Formula> & { readonly id: Id } => frozen(protolyte);
