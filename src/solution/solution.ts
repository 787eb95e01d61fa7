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
  /** What one calls it, where it has a name, as the waters of `waters` have. */
  readonly name?: string;
  /** Where its make-up comes from, where it was not chosen. */
  readonly source?: Source;
}

/** Limits of a solution: from a picolitre to a thousand cubic metres, and more of one reagent than any real liquid holds. */
export const solutionLimits = { leastML: 1e-9, mL: 1e9, molar: 60 } as const;
