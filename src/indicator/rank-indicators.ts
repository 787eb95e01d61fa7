import { Faults } from '../errors.js';
import type { Indicator } from '../substance/indicator.js';
import type { EquivalencePoint } from '../titration/equivalence-points.js';
import type { Titration } from '../titration/titration.js';
import type { IndicatorScore } from './indicator-score.js';
import { scoreOf } from './score-indicator.js';
import { readIndicators, readScoreOptions, type ScoreOptions } from './score-options.js';

/**
 * Indicators in order of their score, the best first; see {@link scoreIndicator}.
 *
 * @param indicators - a list, such as `Object.values(indicators)` for the whole catalogue
 * @param options - `at` for one equivalence point; without it each is judged for the one it serves best
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { indicators, makeSolution, rankIndicators, reagents, titrate } from 'protolysis';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.ammonia, molar: 0.1 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 * });
 * const ranking = rankIndicators(titration, [indicators.phenolphthalein, indicators.methylRed]);
 * ranking.map(({ indicator }) => indicator.name); // => ['methyl red', 'phenolphthalein']
 * ranking[1]?.verdict; // => 'unsuitable'
 * ```
 */
export function rankIndicators(
  titration: Titration,
  indicators: readonly Indicator[],
  options?: ScoreOptions,
): IndicatorScore[] {
  const faults = new Faults('rankIndicators');
  const read = readScoreOptions(titration, options, faults);
  const checked = readIndicators(indicators, faults);
  faults.done();
  return checked
    .map((one) => scoreOf(read.titration, one, read))
    .sort((one, other) => other.score - one.score);
}

/** The indicators for one equivalence point. */
export interface IndicatorChoice {
  readonly at: EquivalencePoint;
  /** Those that serve this point better than any other, the best first. */
  readonly ranking: readonly IndicatorScore[];
}

/**
 * A set of indicators for one titration: for each of its equivalence points in order, those that serve it better than any
 * other point, the best first. So no indicator is chosen for two points.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { chooseIndicators, indicators, makeSolution, reagents, titrate } from 'protolysis';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.1 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 * });
 * const set = chooseIndicators(titration, [indicators.methylOrange, indicators.phenolphthalein]);
 * set.map(({ at }) => at.mL); // => [25, 50]
 * set.map(({ ranking }) => ranking[0]?.indicator.name); // => ['phenolphthalein', 'methyl orange']
 * ```
 */
export function chooseIndicators(
  titration: Titration,
  indicators: readonly Indicator[],
  options?: Omit<ScoreOptions, 'at'>,
): IndicatorChoice[] {
  const faults = new Faults('chooseIndicators');
  const read = readScoreOptions(titration, options, faults);
  const checked = readIndicators(indicators, faults);
  if (read.unread.at !== undefined)
    faults.add('unknown-key', 'at', 'no point: all of them are served', read.unread.at);
  faults.done();
  const ranking = checked
    .map((one) => scoreOf(read.titration, one, read))
    .sort((one, other) => other.score - one.score);
  return read.points.map((at) => ({ at, ranking: ranking.filter((one) => one.at === at) }));
}
