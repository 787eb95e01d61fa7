import { say } from '../plot/words.js';
import { printFormula } from '../substance/print-formula.js';
import { type ReadRecipe, weighedIn } from './handout-recipe.js';
import { list, type Markup, paragraph } from './markup.js';
import type { HandoutWords } from './words.js';

/** Steps, and what solid their masses are of: a hydrate of the same name takes another mass. @internal */
export function recipeSteps(recipe: ReadRecipe, steps: readonly string[], words: HandoutWords): Markup[] {
  const solids = weighedIn(recipe).flatMap(({ name, formula }) =>
    formula === undefined ? [] : [`${name}, ${printFormula(formula)}`],
  );
  return [
    list(steps, 'ol'),
    ...(solids.length === 0 ? [] : [paragraph(say(words.weighedAs, { solids: solids.join('; ') }))]),
  ];
}
