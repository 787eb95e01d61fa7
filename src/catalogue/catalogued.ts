import { frozen } from '../frozen.js';
import type { Indicator } from '../substance/indicator.js';
import type { Protolyte } from '../substance/protolyte.js';
import type { Reagent } from '../substance/reagent.js';

// Entries of the catalogues: the data as they stand, frozen, with the id in their type. The tests check them; nothing
// reads them at import.

/** An acid with its conjugate bases, the formulas of its species in its type. */
export const cataloguedProtolyte = <const Formula extends string, const Id extends string>(
  protolyte: Protolyte<Formula> & { readonly id: Id },
): Protolyte<Formula> & { readonly id: Id } => frozen(protolyte);

/** A reagent. */
export const cataloguedReagent = <const Id extends string>(
  reagent: Reagent & { readonly id: Id },
): Reagent & { readonly id: Id } => frozen(reagent);

/** An indicator. */
export const cataloguedIndicator = <const Id extends string>(
  indicator: Indicator & { readonly id: Id },
): Indicator & { readonly id: Id } => frozen(indicator);
