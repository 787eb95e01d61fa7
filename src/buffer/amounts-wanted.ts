import type { Conditions } from '../equilibrium/conditions.js';
import type { PH } from '../equilibrium/quantities.js';
import type { MeasuredIngredient } from './read-ingredient.js';

/** The conditions that the amounts have to meet. */
export interface AmountsWanted {
  readonly pH: PH;
  readonly mL: number;
  /** mmol of the buffering protolyte in all, or null: two stocks that fill the volume between them. */
  readonly total: number | null;
  /** The first brings the protolyte. The second brings it too, or adjusts the first. */
  readonly ingredients: readonly [MeasuredIngredient, MeasuredIngredient];
  /** mmol of the buffering protolyte per unit of each. */
  readonly brings: readonly [number, number];
  readonly conditions: Conditions;
}
