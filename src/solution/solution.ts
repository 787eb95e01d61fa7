import { frozen } from '../frozen.js';
import type { Source } from '../source.js';
import type { Reagent } from '../substance/reagent.js';

/** How much of one reagent a solution holds. */
export interface Content {
  readonly reagent: Reagent;
  /** Amount of formula units, mmol. */
  readonly mmol: number;
}

/**
 * What a beaker holds: plain data that survives JSON, made by `makeSolution` and never changed after.
 * Water fills the rest of the volume; volumes are additive.
 */
export interface Solution {
  /** Volume, mL. */
  readonly mL: number;
  /** Each reagent once. */
  readonly contents: readonly Content[];
  /** Its name, where it has one, as the waters of `waters` have. */
  readonly name?: string;
  /** The source of its composition, where that was not chosen. */
  readonly source?: Source;
}

declare const assumed: unique symbol;

/** A volume in mL that was not stated: a litre is assumed, so that concentrations become amounts. */
export type AssumedVolume = number & { readonly [assumed]?: true };

/**
 * A solution made without a volume. Its concentrations count, as those of a titrant or a stock do; where a volume is
 * poured (`PouredSolution`), the compiler asks for one.
 */
export interface StockSolution extends Solution {
  readonly mL: AssumedVolume;
}

/** A solution whose volume counts: an analyte, or what is mixed. Any solution but one made without a volume. */
export type PouredSolution = Solution & { readonly mL: number & { readonly [assumed]?: never } };

/**
 * Limits of a solution: from a picolitre to a thousand cubic metres, and more of one reagent than any real liquid
 * holds.
 */
export const solutionLimits = /*#__PURE__*/ frozen({ leastML: 1e-9, mL: 1e9, molar: 60 } as const);
