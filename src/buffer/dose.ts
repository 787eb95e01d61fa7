import type { Solution } from '../solution/solution.js';
import { plus } from './add-solutions.js';
import type { MeasuredIngredient } from './read-ingredient.js';

/** An amount of an ingredient in its unit: mmol of a reagent, mL of a stock. */
export interface Dose {
  readonly ingredient: MeasuredIngredient;
  readonly units: number;
}

/** These amounts, made up to a volume. @internal */
export function compose(mL: number, doses: readonly Dose[]): Solution {
  const contents = doses.flatMap(({ ingredient, units }) =>
    ingredient.unit.map(({ reagent, mmol }) => ({ reagent, mmol: mmol * units })),
  );
  return plus({ mL, contents: [] }, contents);
}

/** mL of stock. @internal */
export const poured = (doses: readonly Dose[]): number =>
  doses.reduce((mL, { ingredient, units }) => mL + (ingredient.stock ? units : 0), 0);

/**
 * Volumes that differ by this share alone are equal: a stock taken whole may stand an ulp above the final volume.
 *
 * @internal
 */
export const rounding = 1e-12;
