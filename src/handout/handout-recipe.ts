import { at, type Faults } from '../input/faults.js';
import { asBought } from '../recipe/as-bought.js';
import type { Recipe } from '../recipe/recipe.js';
import { type HandledParts, readRecipe } from '../safety/read-handled.js';
import type { Reagent } from '../substance/reagent.js';

/**
 * A recipe to print, such as `prepareSolution` and `prepareBuffer` return. It comes whole, since steps alone do not tell
 * the cautions which bottles are opened.
 */
export type HandoutRecipe = Pick<Recipe, 'parts' | 'solution' | 'steps'>;

/** A recipe that has been read. @internal */
export interface ReadRecipe {
  readonly steps: readonly string[];
  /** The last step left out where it tells a pH, as that of a recipe for a buffer does. */
  readonly stepsWithoutPH: readonly string[];
  readonly handled: HandledParts;
}

/** The most steps of a recipe. @internal */
export const mostSteps = 20;

/** Reads a recipe from a caller's value, noting every fault. @internal */
export function readHandoutRecipe(value: unknown, path: string, faults: Faults): ReadRecipe {
  const unread = faults.object(value, path, 'a recipe { parts, solution, steps }');
  const handled = readRecipe(unread, path, faults);
  const steps = faults
    .list(unread.steps, at(path, 'steps'), 'a list of steps', 0, mostSteps)
    .map((step, k) => faults.text(step, `${at(path, 'steps')}[${k}]`, 'a step', 1000));
  return { handled, steps, stepsWithoutPH: unread.pH === undefined ? steps : steps.slice(0, -1) };
}

/** The reagents that are weighed dry. @internal */
export const weighedIn = ({ handled }: ReadRecipe): readonly Reagent[] =>
  handled.bottles.filter(
    (bottle): bottle is Reagent => 'protolytes' in bottle && asBought(bottle, 1) === undefined,
  );
