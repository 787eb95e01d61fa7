import type { Protolyte } from '../../substance/protolyte.js';

/**
 * An entry of the catalogue: the data as they stand, with the formulas in their type. They are checked by the tests, not at every
 * import.
 */
export const catalogued = <const Formula extends string>(protolyte: Protolyte<Formula>): Protolyte<Formula> =>
  protolyte;
