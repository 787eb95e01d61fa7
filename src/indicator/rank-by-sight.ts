import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import type { Indicator } from '../substance/indicator.js';
import type { Titration } from '../titration/titration.js';
import { bestCallAt } from './best-call.js';
import { readDye } from './colour-at.js';
import { differenceSeen, readVision, type Vision } from './colour-vision.js';
import type { IndicatorScore } from './indicator-score.js';
import type { PointToFind, RankingNotes, RankingOptions } from './ranking.js';
import { notesFor } from './ranking-notes.js';
import { readChoice } from './read-choice.js';
import { scoreOf } from './score-indicator.js';
import { readScoreOptions } from './score-options.js';
import { usableFirst } from './verdict.js';
import { coloursAtCall } from './visible-change.js';

/** How a ranking takes the observer's eyes into account. */
export interface SightOptions extends RankingOptions {
  readonly vision?: Vision;
  /** CIEDE2000 difference that is seen every other time. */
  readonly noticeable?: number;
}

/** An indicator's score, and how surely an observer sees its change. */
export interface SightScore extends IndicatorScore {
  /** Difference of the colours one drop before and after the call, CIEDE2000; 0 where there is no call. */
  readonly difference: number;
  /** From 0 to 1: 1 − 2^(−difference/noticeable). */
  readonly seen: number;
  /** score · seen: what the ranking goes by. */
  readonly worth: number;
}

/** Indicators in order of what they are worth to an observer. */
export interface SightRanking extends RankingNotes {
  /** The best first. Empty where there is no equivalence point: `notes` say why. */
  readonly ranking: readonly SightScore[];
  readonly points: readonly PointToFind[];
}

/**
 * What `rankBySight` takes for granted: the just noticeable difference of M. Mahy, L. Van Eycken, A. Oosterlinck, Color
 * Res. Appl. 19, 105–121 (1994), from memory. It was found in CIE L*a*b*, with colours side by side.
 */
export const sightDefaults = /*#__PURE__*/ frozen({ vision: 'normal', noticeable: 2.3 } as const);

/**
 * Indicators in order of what they are worth to one observer, the best first: the score of `scoreIndicator` times how
 * surely the colours one drop before and after the call are distinguished.
 *
 *   worth = score · (1 − 2^(−ΔE₀₀/noticeable))                                                          (1)
 *
 * (1) is this library's own, on approximate colours: it says which indicator to prefer, not what anyone will see.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { indicators, makeSolution, reagents, titrate } from 'protolysis';
 * import { rankBySight } from 'protolysis/colour';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.ammonia, molar: 0.1 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 * });
 * const choice = [indicators.methylRed, indicators.bromocresolGreen];
 * const { ranking } = rankBySight(titration, choice, { vision: 'deuteranopia' });
 * ranking[0]?.seen; // => 1.00
 * ```
 */
export function rankBySight(
  titration: Titration,
  indicators: readonly Indicator[],
  options?: SightOptions,
): SightRanking {
  const faults = new Faults('rankBySight');
  const read = readScoreOptions(titration, options, faults, ['vision', 'noticeable', 'include']);
  const vision = readVision(read.unread.vision, faults);
  const noticeable =
    read.unread.noticeable === undefined
      ? sightDefaults.noticeable
      : faults.number(read.unread.noticeable, 'noticeable', 'a colour difference', { from: 0.01, to: 100 });
  const dyes = faults
    .list(indicators, 'indicators', 'a list of indicators, such as Object.values(indicators)', 1, 1000)
    .map((one, k) => readDye(one, `indicators[${k}]`, faults));
  const listed = dyes.map(({ indicator }) => indicator);
  const { chosen, leftOut } = readChoice(listed, read.unread.include, faults);
  faults.done();

  const points = read.points.map((at) => bestCallAt(at, read));
  const ranking = (points.length === 0 ? [] : dyes)
    .filter(({ indicator }) => chosen.includes(indicator))
    .map((dye) => {
      const score = scoreOf(read.titration, dye.indicator, read);
      const call = coloursAtCall(read.titration, dye, score, read);
      const difference = call ? differenceSeen(call.before.hex, call.after.hex, vision) : 0;
      const seen = 1 - 2 ** (-difference / noticeable);
      return { ...score, difference, seen, worth: score.score * seen };
    })
    .sort((first, second) => usableFirst(first, second) || second.worth - first.worth);
  return frozen({ ranking, points, leftOut, notes: notesFor(points, read) });
}
