import type { Recipe } from './recipe.js';

/** The steps in order, the cautions and the notes, a line each. @internal */
export const viewRecipe = ({ mL, steps, cautions, notes }: Recipe): string =>
  [
    `recipe for ${mL} mL`,
    ...steps.map((step, k) => `  ${k + 1}. ${step}`),
    ...cautions.map((caution) => `  caution: ${caution}`),
    ...notes.map((note) => `  note: ${note}`),
  ].join('\n');
