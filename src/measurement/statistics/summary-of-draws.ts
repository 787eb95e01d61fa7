import { numberAt } from '../../solver/number-at.js';
import { type MeanAndDeviation, meanAndDeviation } from './mean-and-deviation.js';

/** Mean, deviation and coverage interval of draws. @internal */
export interface SummaryOfDraws extends MeanAndDeviation {
  readonly interval: { readonly from: number; readonly to: number };
}

/**
 * The interval lies between the draws of rank q·M and (1 − q)·M, JCGM 101, 7.6 and 7.7.
 *
 * @param sorted - in ascending order
 * @internal
 */
export function summaryOfDraws(sorted: Float64Array, level: number): SummaryOfDraws {
  const count = sorted.length;
  const rank = Math.round(((1 - level) / 2) * count);
  return {
    ...meanAndDeviation(sorted, numberAt(sorted, count >> 1)),
    interval: { from: numberAt(sorted, rank), to: numberAt(sorted, count - 1 - rank) },
  };
}
