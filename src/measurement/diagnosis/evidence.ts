/**
 * By how much a model is better than another, from sums of squares of n readings with k free numbers each:
 *
 *   BIC = n·ln(S/n) + k·ln n,   evidence = BIC of the other − BIC                                      (1)
 *
 * The scatter is not known beforehand, so S/n stands for it. It is taken as at least 1 − 4/n, what readings of the stated
 * uncertainty leave over a curve with four free numbers: a curve that comes nearer has followed the noise of few readings.
 *
 * G. Schwarz, Ann. Statist. 6, 461–464 (1978), doi:10.1214/aos/1176344136.
 *
 * @internal
 */
export const bicOf = (sum: number, readings: number, free: number): number =>
  readings * Math.log(Math.max(sum, readings - 4) / readings) + free * Math.log(readings);

/**
 * The scatter, √(S/(n − k)) in standard uncertainties of a reading, above which a model does not explain the readings: twice
 * what was stated is more than a cautious statement leaves open (common practice; eight readings scatter as much by chance
 * once in ten thousand times). A fit notes its scatter only from 3 on (`farScatter` of fit/fit-result.ts says why).
 */
const largestScatter = 2;

/** Whether a model explains the readings. @internal */
export const explains = ({ scatter }: { readonly scatter: number }): boolean => scatter <= largestScatter;

/**
 * Evidence above which one model is preferred. R. E. Kass, A. E. Raftery, J. Am. Statist. Assoc. 90, 773–795 (1995),
 * doi:10.1080/01621459.1995.10476572, from memory: 2 to 6 positive, 6 to 10 strong, more very strong.
 *
 * @internal
 */
export const strongEvidence = 6;
