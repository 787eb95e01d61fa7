/**
 * The same on decimals: pH, species and titrations to any number of digits, with a proof of the digits.
 *
 * @packageDocumentation
 */
// biome-ignore-all assist/source/organizeImports: grouped by the question that each group answers

// What is in the beaker, to the last digit?
export type { Exactly } from './exact/numbers/exactly.js';
export {
  type ExactIngredient,
  type ExactRecipe,
  exactMakeSolution as makeSolution,
} from './exact/verbs/exact-make-solution.js';
export type { ExactSolution } from './exact/model/exact-solution.js';
export { exactMix as mix } from './exact/verbs/exact-mix.js';
export { exactAliquot as aliquot } from './exact/verbs/exact-aliquot.js';
export { exactAddWater as addWater, exactMakeUpTo as makeUpTo } from './exact/verbs/exact-dilute.js';

// What is its pH, and how do I know?
export {
  type Digits,
  type ExactCarbonDioxide,
  type ExactConditions,
  exactDefaults,
  exactLimits,
} from './exact/model/exact-conditions.js';
export { type ExactPH, exactPH } from './exact/verbs/exact-ph.js';

// Which activity coefficients? Laws as plain data, evaluated to any digit
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
export {
  type ExactEquilibrium,
  type ExactSpecies,
  exactEquilibrium,
} from './exact/verbs/exact-equilibrium.js';
export {
  type ExactEquivalencePoint,
  type ExactTitration,
  type ExactTitrationSetup,
  exactTitration,
} from './exact/verbs/exact-titration.js';
export type { ExactVolume } from './exact/model/exact-volume.js';

// How far off are the doubles?
export { type Comparison, compareWithExact } from './exact/verbs/compare-with-exact.js';

// What was wrong with what I gave, or cannot be proven?
export { NotProvenError } from './exact/not-proven-error.js';
export { InputError, type Issue, type IssueCode } from './input/input-error.js';
