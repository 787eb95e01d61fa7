import type { Conditions } from '../equilibrium/conditions.js';
import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import type { Solution } from '../solution/solution.js';
import type { Reagent } from '../substance/reagent.js';
import type { Shift } from '../titration/compare-water.js';

/** What is weighed. Without `grams` the mass is planned. */
export interface Sample {
  readonly reagent: Reagent;
  /** Its mass fraction in what is weighed; 1 if left out. */
  readonly purity?: number;
  readonly grams?: number;
  /** Where it is made up to the mark of a flask and a pipette of that is titrated: both volumes, mL. */
  readonly aliquot?: { readonly flask: number; readonly pipette: number };
}

/** What is to be titrated, with what, and what is free. */
export interface SampleRequest {
  readonly sample: Sample;
  /** Without `molar`, mol/L, the concentration is planned. */
  readonly titrant: { readonly reagent: Reagent; readonly molar?: number };
  /** Volume in the beaker before the titration, mL, wash water and aliquot included; 50 if left out. */
  readonly mL?: number;
  /**
   * Instead of `mL`: inner diameter of the beaker, and the depth of liquid that covers a probe above the stirrer, both
   * mm.
   */
  readonly beaker?: { readonly diameter: number; readonly depth: number };
  /** The water in the beaker, by its composition; `waters.inAir` if left out. */
  readonly water?: Solution;
  /** Volume of the burette, mL; 50 if left out. */
  readonly burette?: number;
  /** Class of the glassware; A if left out. */
  readonly glass?: 'A' | 'B';
  /** The wanted part of the burette, as shares of its volume; 0.6 to 0.9 if left out. */
  readonly part?: { readonly from: number; readonly to: number };
  /** Which equivalence point lands there, from 1; the last one that is sharp if left out. */
  readonly point?: number;
  /** Standard uncertainty of a mass, mg; 0.2 if left out. */
  readonly weighing?: number;
  /** Standard uncertainty of a reading of the burette, mL; 0.02 if left out. */
  readonly reading?: number;
  readonly conditions?: Conditions;
}

/** An equivalence point of the planned titration. */
export interface PlannedPoint {
  readonly mL: number;
  readonly reaction: string;
  /** The change of pH from a drop before the point to a drop after it. */
  readonly jump: number;
}

/**
 * What the water in the beaker does. Its volume moves no equivalence point; what is dissolved in it moves end points.
 */
export interface PlannedWater {
  readonly name: string;
  /** Volume in the beaker before the titration. */
  readonly mL: number;
  /** For each of `points`: by how much the volume at its pH moves, beside as much water with nothing in it. */
  readonly endpoints: readonly (Shift & { readonly pH: PH })[];
}

/** Standard uncertainties of the result of a titration, percent. */
export interface SamplePercent {
  /** From the mass and its tare. */
  readonly weighing: number;
  /** From both readings of the burette. */
  readonly reading: number;
  /** From the limit of error of the burette; 0 where that is not known. */
  readonly burette: number;
  /** From the limits of error of the flask and the pipette of an aliquot; 0 without one. */
  readonly aliquot: number;
  readonly together: number;
}

/** Amounts with which the wanted point lands in the wanted part of the burette. */
export interface SamplePlan {
  readonly status: 'planned';
  /** As weighed, g; with an aliquot, into its flask. */
  readonly grams: number;
  /** Of the titrant, mol/L. */
  readonly molar: number;
  /** What the free one may be: grams, or mol/L of the titrant. */
  readonly range: { readonly free: 'grams' | 'molar'; readonly from: number; readonly to: number };
  readonly points: readonly PlannedPoint[];
  /** The point that lands in the wanted part, from 1. */
  readonly point: number;
  /** What the water in the beaker does. */
  readonly water: PlannedWater;
  /** Standard uncertainties of the result, percent. */
  readonly percent: SamplePercent;
  /** Of the sample, the titrant and what they set free. */
  readonly cautions: readonly string[];
  readonly notes: readonly string[];
}

/** Why there is no plan. */
export interface NoSamplePlan {
  readonly status: 'impossible';
  readonly because: 'no-point' | 'not-sharp' | 'no-such-point' | 'too-strong';
  readonly reason: string;
}

/**
 * What `planSample` takes by default. Common practice: a titration ends between 60 and 90 % of the burette; a mass is
 * good to 0.2 mg and a reading to 0.02 mL. A point counts as sharp where a drop to either side changes the pH by 0.1 in
 * all.
 */
export const sampleDefaults = /*#__PURE__*/ frozen({
  mL: 50,
  burette: 50,
  glass: 'A',
  part: { from: 0.6, to: 0.9 },
  weighing: 0.2,
  reading: 0.02,
  sharp: 0.1,
} as const);
