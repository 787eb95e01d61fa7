import { type ReplicateSummary, replicateDefaults, summaryOf } from '../statistics/summarise-replicates.js';
import { budgetOf, type UncertaintyBudget, valuesOf } from '../uncertainty/budget.js';
import type { InputQuantity } from '../uncertainty/input-quantity.js';

/** The result of several titrations of one thing: the mean of theirs, with its budget. */
export interface SeriesResult extends UncertaintyBudget {
  /** Of each run by itself, in the order given. */
  readonly results: readonly number[];
  /** What the scatter of the runs tells; null for one run. */
  readonly replicates: ReplicateSummary | null;
  readonly notes: readonly string[];
}

/** What the runs have in common, by name. @internal */
export type Values = Readonly<Record<string, number>>;

/**
 * The mean of a formula over runs, in the budget of what the runs have in common and of their own scatter, s/√n, as the
 * input `repeatability`.
 *
 * @internal
 */
export function seriesResult<Run>(
  runs: readonly Run[],
  common: Readonly<Record<string, InputQuantity>>,
  formula: (run: Run, values: Values) => number,
  level: number,
): SeriesResult {
  const each = (values: Values) => runs.map((run) => formula(run, values));
  const results = each(valuesOf(common));
  const replicates = results.length > 1 ? summaryOf(results, level, replicateDefaults.outlierLevel) : null;
  const scatter = replicates && { repeatability: { ...replicates.mean, value: 0 } };
  const model = ({ repeatability = 0, ...values }: Values) =>
    repeatability + each(values).reduce((sum, result) => sum + result, 0) / runs.length;
  return {
    ...budgetOf({ ...common, ...scatter }, model, level),
    results,
    replicates,
    notes: replicates?.notes ?? ['One run tells nothing of the scatter: the budget has no repeatability.'],
  };
}
