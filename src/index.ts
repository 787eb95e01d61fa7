/**
 * Acid–base equilibria in solution: what one weighs, what is in the beaker, its pH and species, and the titration
 * curve.
 *
 * @packageDocumentation
 */
// biome-ignore-all assist/source/organizeImports: grouped by the question that each group answers

// What is in the bottle?
export * as acids from './acids.js';
export * as reagents from './reagents.js';
export {
  type Alternative,
  type Protolyte,
  protolyteLimits,
  type Species,
  type Step,
  type TemperatureFit,
} from './substance/protolyte.js';
export { defineProtolyte } from './substance/define-protolyte.js';
export type { Hazard, HazardLimit } from './substance/hazard.js';
export type { LeftOut } from './substance/left-out.js';
export type { PrimaryStandard } from './substance/primary-standard.js';
export { defineReagent, type Ion, type Reagent } from './substance/reagent.js';
export { pHStandards } from './catalogue/primary-ph-standards.js';
export type { PHStandard } from './substance/ph-standard.js';
export { findById } from './substance/find-by-id.js';
export { molarMassOf } from './substance/molar-mass.js';
export { printFormula } from './substance/print-formula.js';
export { cautionsOf, lastCaution } from './safety/cautions-of.js';
export { type GasSetFree, gasesFrom } from './safety/gases-from.js';
export type { Bottle, Handled, Poured } from './safety/read-handled.js';

// What is in the beaker?
export {
  type Ingredient,
  makeSolution,
  type SolutionRecipe,
} from './solution/make-solution.js';
export {
  type Content,
  type PouredSolution,
  type Solution,
  type StockSolution,
  solutionDefaults,
  solutionLimits,
} from './solution/solution.js';
export { mix } from './solution/mix.js';
export { aliquot } from './solution/aliquot.js';
export { addWater, makeUpTo } from './solution/dilute.js';
export { makeStock } from './solution/make-stock.js';
export { waters } from './catalogue/waters.js';
export type { Water } from './solution/pure-water.js';
export { absorbCarbonDioxide } from './solution/absorb-carbon-dioxide.js';

// What will a probe read, and which species are there?
export {
  type Conditions,
  conditionDefaults,
  conditionLimits,
} from './equilibrium/conditions.js';
export { equilibrate } from './equilibrium/equilibrate.js';
export type { Equilibrium } from './equilibrium/equilibrium.js';
export type { SpeciesAt } from './equilibrium/species-of.js';
export type { ConstantInUse } from './equilibrium/constants-in-use.js';
export { pHOf } from './equilibrium/ph-of.js';
export { columnLimits, pHsOf, type SolutionColumns } from './equilibrium/ph-of-many.js';
export { molarOf } from './equilibrium/molar-of.js';
export type { PcH, PH, Quantity } from './equilibrium/quantities.js';

// How far is the real beaker from the ideal one?
export type { ActivityModel } from './equilibrium/activity/activity-model.js';
export { activityLimits } from './equilibrium/activity/coefficients.js';
export {
  debyeHuckelExtended,
  debyeHuckelExtendedOf,
  type IonSizes,
} from './equilibrium/activity/debye-huckel-extended.js';
export { sizeOtherwise } from './equilibrium/activity/activity-law.js';
export { kiellandSizes, kiellandSource } from './equilibrium/activity/kielland-sizes.js';
export {
  batesGuggenheim,
  davies,
  daviesOf,
  debyeHuckelLimiting,
  guntelberg,
  ideal,
} from './equilibrium/activity/laws.js';
export { air, type CarbonDioxide, henryFit } from './equilibrium/carbon-dioxide.js';
export { type DebyeHuckelParameters, debyeHuckelAt } from './equilibrium/temperature/debye-huckel-at.js';
export { pKaAt } from './equilibrium/temperature/pka-at.js';
export { pKHAt } from './equilibrium/temperature/pkh-at.js';
export { pKwAt } from './equilibrium/temperature/pkw-at.js';
export { waterAt25 } from './equilibrium/temperature/water-at-25.js';
export { waterSources } from './equilibrium/temperature/water-sources.js';

// What will the titration look like?
export { titrate } from './titration/titrate.js';
export type { Titration, TitrationSetup } from './titration/titration.js';
export { titrationDefaults } from './titration/sampling/jump-at.js';
export type { Additions, Curve, CurvePoint } from './titration/sampling/curve.js';
export type { EquivalencePoint } from './titration/points/equivalence-points.js';
export type { InflectionPoint } from './titration/points/inflection-points.js';
export { compareModels, type ModelComparison } from './titration/compare-models.js';
export {
  compareWater,
  type Shift,
  type WaterComparison,
  type WaterInUse,
} from './titration/compare-water.js';
export type { BoilOut } from './titration/model/boil-out.js';
export { titrationLimits } from './titration/titration-limits.js';

// Which indicator?
export * as indicators from './indicators.js';
export {
  type Band,
  type Bands,
  colourless,
  type Indicator,
  type IndicatorAlternatives,
  indicatorLimits,
  type Part,
  type TitrationExponent,
  type Transition,
} from './substance/indicator.js';
export { defineIndicator } from './substance/define-indicator.js';
export { chooseTransition } from './substance/choose-transition.js';
export { scoreIndicator } from './indicator/score-indicator.js';
export type {
  IndicatorFacts,
  IndicatorScore,
  ScoreWithDavies,
  TitrationError,
} from './indicator/indicator-score.js';
export { indicatorDefaults, type ScoreOptions } from './indicator/score-options.js';
export { type Observer, observerLimits } from './indicator/observer.js';
export { type Verdict, verdictScores } from './indicator/verdict.js';
export { chooseIndicators, rankIndicators } from './indicator/rank-indicators.js';
export type {
  IndicatorChoice,
  IndicatorRanking,
  IndicatorSet,
  PointToFind,
  RankingNotes,
  RankingOptions,
} from './indicator/ranking.js';
export { sharpestCall } from './indicator/best-call.js';
export { type Colour, colourAt, colourLabel } from './indicator/colour-at.js';
export type { Channels } from './indicator/colour-channels.js';
export { type FlaskColours, flaskColours } from './indicator/flask-colours.js';
export { type OvershootDrop, overshoot, overshootDefaults } from './indicator/overshoot.js';
export {
  type ReferenceTube,
  type ReferenceTubes,
  referenceTubes,
  type TubeRecipe,
  tubeMargin,
} from './indicator/reference-tubes.js';

// How is it shown?
export { type Cell, type RowOf, rows } from './output/rows.js';
export type {
  ColumnFormat,
  ColumnFormats,
  ColumnPath,
  ColumnWithHeading,
  RowIn,
} from './output/column-formats.js';
export { tabulate } from './output/tabulate.js';
export { type CsvOptions, csvOf } from './output/csv-of.js';
export { markdownOf } from './output/markdown-of.js';
export { type HtmlOptions, htmlOf } from './output/html-of.js';
export { jsonOf } from './output/json-of.js';
export { parseSetup, printSetup } from './output/setup-as-json.js';

// How much is weighed, and how is it gone through at the bench?
export { type AdditionOptions, additionDefaults } from './preparation/addition-options.js';
export type { AdditionPlan } from './preparation/addition-schedule.js';
export { planAdditions } from './preparation/plan-additions.js';
export type { Vessel } from './catalogue/glassware.js';
export type { StandardisationNeeded } from './catalogue/standardisation.js';
export type { Dilution } from './preparation/dilutions-to.js';
export { prepareSolution } from './preparation/prepare-solution.js';
export {
  type ImpossibleSolution,
  type PreparationRequest,
  type PreparedSolution,
  preparationDefaults,
  type Standardisation,
} from './preparation/preparation.js';
export { prepareSession } from './preparation/prepare-session.js';
export {
  type SessionBottle,
  type SessionPlan,
  type SessionReagent,
  type SessionRequest,
  type SessionSolution,
  type SessionTitration,
  type SessionWaste,
  sessionDefaults,
} from './preparation/session-plan.js';
export { planSample } from './preparation/plan-sample.js';
export {
  type NoSamplePlan,
  type PlannedPoint,
  type PlannedWater,
  type Sample,
  type SamplePercent,
  type SamplePlan,
  type SampleRequest,
  sampleDefaults,
} from './preparation/sample-plan.js';

// How does a buffer behave, and how is one made?
export { capacityOf } from './buffer/capacity-of.js';
export {
  type CapacityCurve,
  type CapacityPeak,
  type CapacityRange,
  capacityOver,
} from './buffer/capacity-over.js';
export { type BufferAddition, type BufferResponse, bufferResponse } from './buffer/buffer-response.js';
export { type Reserve, type ReserveOptions, type ReservePoint, reserveOf } from './buffer/reserve-of.js';
export {
  type Amount,
  estimateByLogRatio,
  type LogRatioEstimate,
} from './buffer/estimate-by-log-ratio.js';
export { type StrongAddition, strongAdditionTo } from './buffer/strong-addition.js';
export { type BufferCandidate, type BufferRanking, chooseBuffer } from './buffer/choose-buffer.js';
export type { BufferChoice } from './buffer/read-buffer-choice.js';
export { prepareBuffer } from './buffer/prepare-buffer.js';
export type {
  BufferIngredient,
  BufferPart,
  BufferRecipe,
  BufferRequest,
  ImpossibleBuffer,
} from './buffer/recipe.js';
export { bufferDefaults, bufferLimits } from './buffer/buffer-defaults.js';
export type { LiquidPart, PouredPart, Recipe, RecipePart, WeighedPart } from './recipe/recipe.js';
export { type HeatOfMixing, heatLimits } from './safety/heat-of-mixing.js';
export type { SparinglySoluble } from './substance/sparingly-soluble.js';

// Where does it come from, and what was wrong with what I gave?
export { type SourceUse, sourcesOf } from './substance/sources-of.js';
export type { CommonPractice, FromMemory, PublishedSource, Source } from './source.js';
export { type Work, works } from './bibliography.js';
export { InputError, type Issue, type IssueCode } from './input/input-error.js';
