import { frozenWithView } from '../frozen-with-view.js';
import { Faults } from '../input/faults.js';
import type { Indicator } from '../substance/indicator.js';
import type { Titration } from '../titration/titration.js';
import { bestCallAt } from './best-call.js';
import type { IndicatorScore } from './indicator-score.js';
import type { IndicatorRanking, IndicatorSet, RankingOptions } from './ranking.js';
import { notesFor } from './ranking-notes.js';
import { readChoice } from './read-choice.js';
import { scoreOf } from './score-indicator.js';
import { readIndicators, readScoreOptions } from './score-options.js';
import { usableFirst } from './verdict.js';
import { viewRanking, viewSet } from './view-ranking.js';

/**
 * Indicators in order of their score, the best first; see {@link scoreIndicator}. What is not for use is left out
 * unless it is named.
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
 * const { phenolphthalein, methylRed, methylYellow } = indicators;
 * const { ranking, points, leftOut } = rankIndicators(titration, [phenolphthalein, methylRed, methylYellow]);
 * ranking.map(({ indicator }) => indicator.name); // => ['methyl red', 'phenolphthalein']
 * ranking[1]?.verdict; // => 'unsuitable'
 * points[0]?.best; // => 0.9999
 * leftOut[0]?.reason; // => 'it may cause cancer, and other indicators take its place'
 * ```
 */
export function rankIndicators(
  titration: Titration,
  indicators: readonly Indicator[],
  options?: RankingOptions,
): IndicatorRanking {
  const faults = new Faults('rankIndicators');
  const read = readScoreOptions(titration, options, faults, ['include']);
  const { chosen, leftOut } = readChoice(readIndicators(indicators, faults), read.unread.include, faults);
  faults.done();

  const points = read.points.map((at) => bestCallAt(at, read));
  const ranking = ranked(chosen, read);
  return frozenWithView({ ranking, points, leftOut, notes: notesFor(points, read) }, viewRanking);
}

/**
 * A set of indicators for one titration: for each of its equivalence points in order, those that serve it better than
 * any other point, the best first. So no indicator is chosen for two points. What is not for use is left out unless it
 * is named.
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
 * const { points } = chooseIndicators(titration, [indicators.methylOrange, indicators.phenolphthalein]);
 * points.map(({ at }) => at.mL); // => [25, 50]
 * points.map(({ ranking }) => ranking[0]?.indicator.name); // => ['phenolphthalein', 'methyl orange']
 * ```
 */
export function chooseIndicators(
  titration: Titration,
  indicators: readonly Indicator[],
  options?: Omit<RankingOptions, 'at'>,
): IndicatorSet {
  const faults = new Faults('chooseIndicators');
  const read = readScoreOptions(titration, options, faults, ['include']);
  const { chosen, leftOut } = readChoice(readIndicators(indicators, faults), read.unread.include, faults);
  if (read.unread.at !== undefined)
    faults.add('unknown-key', 'at', 'no point: all of them are served', read.unread.at);
  faults.done();

  const ranking = ranked(chosen, read);
  const points = read.points.map((at) => ({
    ...bestCallAt(at, read),
    ranking: ranking.filter((score) => score.at === at),
  }));
  return frozenWithView({ points, leftOut, notes: notesFor(points, read) }, viewSet);
}

type Read = ReturnType<typeof readScoreOptions>;

function ranked(indicators: readonly Indicator[], read: Read): IndicatorScore[] {
  if (read.points.length === 0) return [];
  return indicators
    .map((indicator) => scoreOf(read.titration, indicator, read))
    .sort((first, second) => usableFirst(first, second) || second.score - first.score);
}
