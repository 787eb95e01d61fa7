import type { Conditions } from '../equilibrium/conditions.js';
import type { PH } from '../equilibrium/quantities.js';
import type { Recipe, RecipePart } from '../recipe/recipe.js';
import type { HeatOfMixing } from '../safety/heat-of-mixing.js';
import type { Solution } from '../solution/solution.js';
import type { Source } from '../source.js';
import type { Protolyte } from '../substance/protolyte.js';
import type { Reagent } from '../substance/reagent.js';

/**
 * What a buffer is made from: something to weigh, or a liquid from its bottle, with its mass fraction where it is not
 * pure; or a stock to pour.
 */
export type BufferIngredient = Reagent | { readonly reagent: Reagent; readonly purity: number } | Solution;

/** Which buffer, how much of it, and from what. */
export interface BufferRequest {
  readonly pH: PH;
  /** Final volume, mL. */
  readonly mL: number;
  /**
   * Total concentration of the buffering protolyte in all its forms, mol/L. Left out, two stocks are poured together to
   * the final volume without water.
   */
  readonly molar?: number;
  /**
   * Two of: a weak acid or base, its salt, another salt of it, a strong acid or base. A strong acid comes as a stock.
   */
  readonly from: readonly [BufferIngredient, BufferIngredient];
  /** Whose concentration `molar` is; needed only where the two bring several protolytes. */
  readonly protolyte?: Protolyte;
  /** mol/L, brought up with `salt`; left out, it is what the buffer itself makes. */
  readonly ionicStrength?: number;
  /** A salt of ions alone; sodium chloride if left out. */
  readonly salt?: Reagent;
  /** °C at which the pH of the finished buffer is wanted. */
  readonly temperatures?: readonly number[];
  /** How many times its volume the finished buffer is diluted to; 2 and 10 if left out. */
  readonly dilutions?: readonly number[];
  /** Error of a mass or volume in percent whose effect is wanted; 1 if left out. */
  readonly errorPercent?: number;
  readonly conditions?: Conditions;
}

/** One thing that goes in. */
export type BufferPart = RecipePart;

/** A buffer that can be made: plain data. */
export interface BufferRecipe extends Recipe {
  readonly pH: PH;
  /** mol/L per unit of pH. */
  readonly capacity: number;
  /** mol/L. */
  readonly ionicStrength: number;
  /** What an error in one mass or volume, all else being right, does to the pH. */
  readonly errors: readonly {
    readonly of: string;
    readonly percent: number;
    readonly pHShift: number;
  }[];
  readonly atTemperatures: readonly { readonly celsius: number; readonly pH: PH }[];
  readonly afterDilution: readonly { readonly times: number; readonly pH: PH }[];
}

/** Why a buffer cannot be made from what was given. */
export interface ImpossibleBuffer {
  readonly status: 'impossible';
  readonly because: 'out-of-reach' | 'too-dilute' | 'ionic-strength' | 'saturated' | 'too-hot';
  readonly reason: string;
  /**
   * The pH that these ingredients do reach at this concentration and volume; null where they make no solution at all.
   */
  readonly reachable: { readonly from: PH; readonly to: PH } | null;
  /** The ionic strength that the buffer has without any salt, mol/L, where less was asked for. */
  readonly leastIonicStrength?: number;
  /** The highest ionic strength at which amounts give the pH, mol/L, where more was asked for. */
  readonly mostIonicStrength?: number;
  /** What mixing would give off, where that is too much. */
  readonly heat?: HeatOfMixing;
  /** Of the solubility, where the solution would be saturated. */
  readonly source?: Source;
}
