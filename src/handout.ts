/**
 * A page to print for the bench: what to do, what to write down and, for the instructor, what to expect.
 *
 * @packageDocumentation
 */
// biome-ignore-all assist/source/organizeImports: grouped by the question that each group answers

// What is printed for the bench?
export { makeHandout } from './handout/make-handout.js';
export {
  type HandoutBuffer,
  type HandoutOptions,
  type HandoutSample,
  handoutDefaults,
  handoutLimits,
} from './handout/handout-options.js';
export type { HandoutRecipe } from './handout/handout-recipe.js';
export { type HandoutWords, handoutWords } from './handout/words.js';

// What was wrong with what I gave?
export { InputError, type Issue, type IssueCode } from './input/input-error.js';
