/**
 * From what was read at the bench to a result: the probe, the readings and their end points, the fit of a whole curve,
 * what went wrong, and how sure a number is.
 *
 * @packageDocumentation
 */
// biome-ignore-all assist/source/organizeImports: grouped by the question that each group answers

// Can the probe be trusted?
export {
  type CalibrationOptions,
  type CalibrationPoint,
  calibrateProbe,
} from './measurement/calibrate-probe.js';
export { type ProbeCalibration, probeDefaults } from './measurement/probe-calibration.js';
export { type CorrectionOptions, correctReadings } from './measurement/correct-readings.js';
export { pHFromPotential } from './measurement/ph-from-potential.js';
export { type ProbeDrift, probeDrift } from './measurement/probe-drift.js';
export { type Settling, settlingError, settlingWait, usualWait } from './measurement/settling.js';
export { standardPH } from './measurement/standard-ph.js';

// What was read?
export { readReadings } from './measurement/read-readings.js';
export { type ReadingColumns, readingLimits } from './measurement/reading-input.js';
export type { ReadingOptions } from './measurement/reading-options.js';
export type { LineRead, ReadingFinding, ReadingReport } from './measurement/reading-report.js';
export type { ColumnKind } from './measurement/column-kinds.js';
export type { Readings } from './measurement/readings.js';

// Where is the end point?
export type { EndpointMethod, EndpointOptions } from './measurement/endpoint-options.js';
export type { Endpoint, Endpoints } from './measurement/endpoints.js';
export { findEndpoints } from './measurement/find-endpoints.js';
export { type ReadingUncertainty, usualReadingUncertainty } from './measurement/reading-uncertainty.js';
export {
  type CompareEndpointsOptions,
  compareEndpoints,
  type EndpointRow,
} from './measurement/compare-endpoints.js';

// Which amounts bring the whole curve nearest to the readings?
export type { FitOptions } from './measurement/fit/fit-options.js';
export { fitTitration } from './measurement/fit/fit-titration.js';
export type { FreeParameter } from './measurement/fit/free-parameter.js';
export {
  type SimulateFitsOptions,
  type SimulatedFits,
  type SimulatedParameter,
  simulateFits,
} from './measurement/fit/simulate-fits.js';
export type { RunsTest } from './measurement/fit/runs-test.js';
export type {
  FittedEquivalencePoint,
  FittedParameter,
  TitrationFit,
} from './measurement/fit/titration-fit.js';

// What does a class practise on?
export type { BenchFault, BenchFaultKind } from './measurement/practice/bench-fault.js';
export type { Grade, GradedItem } from './measurement/practice/grade.js';
export { type GradeOptions, gradeAnswer } from './measurement/practice/grade-answer.js';
export type { PracticeAnswer, PracticeKey } from './measurement/practice/practice-key.js';
export { type PracticeOptions, practiceDefaults } from './measurement/practice/practice-options.js';
export type { ReadingNoise } from './measurement/practice/reading-errors.js';
export { type PracticeData, simulateReadings } from './measurement/practice/simulate-readings.js';

// What went wrong at the bench?
export type { CalledEndpoint } from './measurement/diagnosis/called-endpoint.js';
export { diagnose } from './measurement/diagnosis/diagnose.js';
export type { Diagnosis } from './measurement/diagnosis/diagnosis.js';
export { diagnosisDefaults, type DiagnosisOptions } from './measurement/diagnosis/diagnosis-options.js';
export type { Explanation, FaultSize } from './measurement/diagnosis/explanations.js';

// How sure is a number?
export type { Estimate } from './measurement/estimate.js';
export type { Distribution, InputQuantity, Measured } from './measurement/uncertainty/input-quantity.js';
export { estimateWithin } from './measurement/uncertainty/estimate-within.js';
export { glasswareVolume, type VesselUsed } from './measurement/uncertainty/glassware-volume.js';
export { type BudgetOptions, uncertaintyBudget } from './measurement/uncertainty/uncertainty-budget.js';
export type { Contribution, UncertaintyBudget } from './measurement/uncertainty/budget.js';
export {
  type PropagatedDistribution,
  propagateDistributions,
  type SimulationOptions,
  simulationDefaults,
} from './measurement/uncertainty/propagate-distributions.js';
export { type BudgetValidation, validateBudget } from './measurement/uncertainty/validate-budget.js';
export type { LongWork } from './measurement/long-work.js';
export { printEstimate, printResult } from './measurement/uncertainty/print-estimate.js';
export type { OutlierLevel, OutlierTest } from './measurement/statistics/outliers.js';
export {
  type ReplicateOptions,
  type ReplicateSummary,
  replicateDefaults,
  summariseReplicates,
} from './measurement/statistics/summarise-replicates.js';

// What is the result?
export {
  type WeighedStandard,
  type StandardisationRequest,
  standardiseTitrant,
} from './measurement/result/standardise-titrant.js';
export { type AssayRequest, assay } from './measurement/result/assay.js';
export type { SeriesErrors, WeighedRun } from './measurement/result/read-series.js';
export type { SeriesResult } from './measurement/result/series.js';
export {
  type BackTitration,
  backTitratedAmount,
  type DirectTitration,
  titratedAmount,
} from './measurement/result/titrated-amount.js';
export {
  type BaseComposition,
  compositionFromEndpoints,
} from './measurement/result/composition-from-endpoints.js';
export {
  type AlkalinityRow,
  alkalinityFromEndpoints,
} from './measurement/result/alkalinity-from-endpoints.js';
export type { TwoEndpoints } from './measurement/result/two-endpoints.js';

// What was wrong with what I gave?
export { InputError, type Issue, type IssueCode } from './input/input-error.js';
