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

/**
 * A solution made without a volume: a litre is assumed, so that concentrations become amounts. Its concentrations
 * count, as those of a titrant or a stock do; where a volume is poured (`PouredSolution`), one must be stated.
 */
export interface StockSolution extends Solution {
  readonly volume: 'assumed';
}

/** A solution whose volume counts: an analyte, or what is mixed. Any solution but one made without a volume. */
export type PouredSolution = Solution & { readonly volume?: never };

/** Whether a solution was made without a volume. @internal */
export const isStock = (solution: Solution): solution is StockSolution =>
  'volume' in solution && solution.volume === 'assumed';

/** The volume of a solution as another may have it, stated or assumed. @internal */
export const sameVolume = (
  solution: Solution,
): Pick<Solution, 'mL'> & Partial<Pick<StockSolution, 'volume'>> =>
  isStock(solution) ? { mL: solution.mL, volume: solution.volume } : { mL: solution.mL };

/** What `makeSolution` takes for granted. */
export const solutionDefaults = /*#__PURE__*/ frozen({ mL: 1000, purity: 1 } as const);

/**
 * Limits of a solution: from a picolitre to a thousand cubic metres, and more of one reagent than any real liquid
 * holds.
 */
export const solutionLimits = /*#__PURE__*/ frozen({ leastML: 1e-9, mL: 1e9, molar: 60 } as const);
