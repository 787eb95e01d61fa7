import type { Vessel } from '../catalogue/glassware.js';
import type { StandardisationNeeded } from '../catalogue/standardisation.js';
import { frozen } from '../frozen.js';
import type { Recipe } from '../recipe/recipe.js';
import type { HeatOfMixing } from '../safety/heat-of-mixing.js';
import type { Solution } from '../solution/solution.js';
import type { PrimaryStandard } from '../substance/primary-standard.js';
import type { Reagent } from '../substance/reagent.js';
import type { Dilution } from './dilutions-to.js';

/** Which solution is wanted, from what, and with which vessels. */
export interface PreparationRequest {
  /**
   * A reagent as sold, { reagent, purity } with the mass fraction on its bottle, or a stock solution of one reagent.
   * A bottle is no stock: its strength is rarely a round number, and no pipettes fit it.
   */
  readonly from: Reagent | { readonly reagent: Reagent; readonly purity: number } | Solution;
  /** mol/L of the reagent. */
  readonly molar: number;
  /** Volume that is needed at least, mL; of each group where there are several. */
  readonly mL: number;
  /** How many groups need it; 1 if left out. */
  readonly groups?: number;
  /** Class of the glassware; A if left out. */
  readonly glass?: 'A' | 'B';
  /** Volumes of the volumetric flasks at hand, mL; those of ISO 1042 if left out. */
  readonly flasks?: readonly number[];
  /** Volumes of the pipettes at hand, mL; those of ISO 648 if left out. */
  readonly pipettes?: readonly number[];
  /** The greatest limit of error that a vessel may have, percent of its volume; 0.5 if left out. */
  readonly vesselPercent?: number;
  /** Standard uncertainty of a mass, mg; 0.2 if left out. */
  readonly weighing?: number;
}

/** A solution that can be made: plain data. */
export interface PreparedSolution extends Recipe {
  /** mol/L that it is expected to have. */
  readonly molar: number;
  /** Of that, mol/L, from the tolerances of the vessels and the weighing alone. */
  readonly standardUncertainty: number;
  /** What it comes from, in percent of the concentration. */
  readonly contributions: readonly { readonly of: string; readonly percent: number }[];
  /** Volume that is needed in all, mL. */
  readonly needed: number;
  /** The flask it is made up in, and the class of all its glassware. */
  readonly flask: Vessel;
  readonly glass: 'A' | 'B';
  /** How many flasks of it are made, one after the other. */
  readonly batches: number;
  /** Whether it is to be standardised, and against what; null where nothing is known. */
  readonly standardisation: Standardisation | null;
  /** The dilutions in order, where it is made from a stock. */
  readonly dilutions: readonly Dilution[];
}

/** Whether a solution of a reagent has the concentration that was weighed, or is to be standardised. */
export type Standardisation =
  | ({ readonly kind: 'primary' } & PrimaryStandard)
  | ({ readonly kind: 'needed' } & StandardisationNeeded);

/** Why a solution cannot be made from what was given. */
export interface ImpossibleSolution {
  readonly status: 'impossible';
  readonly because:
    | 'too-dilute'
    | 'no-vessel'
    | 'saturated'
    | 'too-hot'
    | 'too-strong'
    | 'too-little'
    | 'attacks-glass';
  readonly reason: string;
  readonly heat?: HeatOfMixing;
}

/**
 * What `prepareSolution` takes by default: common practice. With 0.5 %, pipettes of class A count from 2 mL on, and
 * those of class B from 10 mL on.
 */
export const preparationDefaults = /*#__PURE__*/ frozen({
  groups: 1,
  glass: 'A',
  vesselPercent: 0.5,
  weighing: 0.2,
} as const);
