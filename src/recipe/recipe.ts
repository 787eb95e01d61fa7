import type { HeatOfMixing } from '../safety/heat-of-mixing.js';
import type { Solution } from '../solution/solution.js';
import type { Reagent } from '../substance/reagent.js';

/** One thing that goes in. */
export type RecipePart = WeighedPart | LiquidPart | PouredPart;

/** A solid. */
export interface WeighedPart {
  readonly kind: 'weighed';
  readonly name: string;
  readonly reagent: Reagent;
  readonly mmol: number;
  /** Its mass fraction in what is weighed. */
  readonly purity: number;
  /** As weighed, impurities included; null where the reagent has no molar mass. */
  readonly grams: number | null;
}

/** A liquid from the bottle it was bought in: pure, or a concentrated solution of stated strength. */
export interface LiquidPart {
  readonly kind: 'liquid';
  readonly name: string;
  readonly reagent: Reagent;
  readonly mmol: number;
  /** Its mass fraction in the bottle. */
  readonly purity: number;
  /** Of the liquid, water in it included; null where the reagent has no molar mass. */
  readonly grams: number | null;
  /** Volume of the liquid by the density of the usual bottle; null where the strength is not that of one. */
  readonly mL: number | null;
}

/** A stock solution. */
export interface PouredPart {
  readonly kind: 'poured';
  readonly name: string;
  readonly stock: Solution;
  readonly mL: number;
}

/** What every recipe for a solution holds: plain data. */
export interface Recipe {
  readonly status: 'prepared';
  /** In the order of work. */
  readonly parts: readonly RecipePart[];
  /** Final volume, mL. */
  readonly mL: number;
  /**
   * Water in all, mL, if volumes were additive and what is weighed or measured from a bottle took up none: make up to
   * the mark instead.
   */
  readonly waterToMakeUp: number;
  readonly steps: readonly string[];
  readonly cautions: readonly string[];
  /** What it gives off as it is mixed, as an estimate. */
  readonly heat: HeatOfMixing;
  /** The finished solution. */
  readonly solution: Solution;
  readonly notes: readonly string[];
}
