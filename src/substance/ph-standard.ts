import type { Source } from '../source.js';
import type { Reagent } from './reagent.js';

/** A buffer whose pH is certified. */
export interface PHStandard {
  readonly id: string;
  readonly name: string;
  /** mol/kg of water, taken as mol/L. */
  readonly contents: readonly { readonly reagent: Reagent; readonly molar: number }[];
  /** Whether its pH was assigned with cells without transference. */
  readonly primary: boolean;
  /** Temperatures, °C, and the pH at each. */
  readonly celsius: readonly number[];
  readonly pH: readonly number[];
  readonly source: Source;
}
