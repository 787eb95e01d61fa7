import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import type { Solution } from '../solution/solution.js';
import type { Indicator } from '../substance/indicator.js';
import type { TitrationSetup } from '../titration/titration.js';

/** One titration of a session. */
export interface SessionTitration {
  readonly setup: TitrationSetup;
  /** Last volume of titrant, mL; 1.5 times the last equivalence volume if left out, or twice the analyte. */
  readonly upTo?: number;
  /** How often each group does it; 1 if left out. */
  readonly runs?: number;
  readonly indicator?: Indicator;
}

/** What a class does. */
export interface SessionRequest {
  readonly groups: number;
  readonly titrations?: readonly SessionTitration[];
  /** Other solutions, such as buffers: each with the volume that is there for one group, mL. */
  readonly solutions?: readonly { readonly solution: Solution; readonly mL: number }[];
  /** What is made beyond the need, as a share of it; 0.2 if left out. */
  readonly reserve?: number;
  /** Volume of titrant for rinsing and filling the tip of a burette, mL a run; 15 if left out. */
  readonly rinse?: number;
}

/** A solution that the class needs. */
export interface SessionSolution {
  readonly what: string;
  /** In all, the reserve included, mL. */
  readonly mL: number;
}

/** A reagent that the class needs. */
export interface SessionReagent {
  readonly id: string;
  readonly name: string;
  readonly mmol: number;
  /** Pure; null where the reagent has no molar mass. */
  readonly grams: number | null;
  /**
   * The same as the usual bottle holds it, where it comes as a liquid; null of what comes dry, or has no molar mass.
   */
  readonly bottle: SessionBottle | null;
}

/** A liquid as it is sold. */
export interface SessionBottle {
  /** Mass fraction of the usual bottle, percent: look at the label of yours. */
  readonly massPercent: number;
  readonly grams: number;
  readonly mL: number;
}

/** What is left at the end, all of it poured together. */
export interface SessionWaste {
  readonly mL: number;
  readonly pH: PH;
  /** The strong acid or base that brings it to pH 7; null where none does. */
  readonly neutralise: { readonly name: string; readonly mmol: number } | null;
}

/** What a session needs: plain data. */
export interface SessionPlan {
  /** Titrants first, then the other solutions, then what is titrated. */
  readonly solutions: readonly SessionSolution[];
  readonly reagents: readonly SessionReagent[];
  readonly indicators: readonly { readonly name: string; readonly drops: number; readonly mL: number }[];
  readonly waste: SessionWaste;
  readonly cautions: readonly string[];
  /** The same in lines. */
  readonly text: string;
}

/** What `prepareSession` takes by default: common practice; two drops of indicator of 0.05 mL a flask. */
export const sessionDefaults = /*#__PURE__*/ frozen({
  reserve: 0.2,
  rinse: 15,
  indicatorDrops: 2,
  dropSize: 0.05,
} as const);
