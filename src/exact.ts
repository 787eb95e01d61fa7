/**
 * The same on decimals: pH, species and titrations to any number of digits, with a proof of the digits.
 *
 * @packageDocumentation
 */
// biome-ignore-all assist/source/organizeImports: grouped by the question that each group answers

// What is in the beaker, to the last digit?
export type { Exactly } from './exact/exactly.js';
export { type ExactIngredient, type ExactRecipe, makeSolution } from './exact/make-solution.js';
export type { ExactSolution } from './exact/solution.js';
export { mix } from './exact/mix.js';
export { aliquot } from './exact/aliquot.js';
export { addWater, makeUpTo } from './exact/dilute.js';

// What is its pH, and how do I know?
export {
  type Digits,
  type ExactCarbonDioxide,
  type ExactConditions,
  exactDefaults,
  exactLimits,
} from './exact/conditions.js';
export { type ExactPH, exactPH } from './exact/exact-ph.js';

// How do activities fall behind concentrations? Laws as plain data, to be worked out to any digit
export {
  type ActivityLaw,
  batesGuggenheimLaw as batesGuggenheim,
  daviesLaw as davies,
  debyeHuckelExtendedLaw as debyeHuckelExtended,
  debyeHuckelLimitingLaw as debyeHuckelLimiting,
  guntelbergLaw as guntelberg,
  idealLaw as ideal,
} from './equilibrium/activity/activity-law.js';

// Which species are there, and what will the titration look like?
export { type ExactEquilibrium, type ExactSpecies, exactEquilibrium } from './exact/exact-equilibrium.js';
export {
  type ExactEquivalencePoint,
  type ExactTitration,
  type ExactTitrationSetup,
  exactTitration,
} from './exact/exact-titration.js';
export type { ExactVolume } from './exact/volume-at.js';

// How far off are the doubles?
export { type Comparison, compareWithExact } from './exact/compare-with-exact.js';

// What was wrong with what I gave, or cannot be proven?
export { NotProvenError } from './exact/not-proven-error.js';
export { InputError, type Issue, type IssueCode } from './errors.js';
