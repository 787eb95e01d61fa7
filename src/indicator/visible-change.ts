import { Faults } from '../errors.js';
import type { Indicator } from '../substance/indicator.js';
import { titrationLimits } from '../titration/limits.js';
import type { Titration } from '../titration/titrate.js';
import { type Colour, colourOf, type Dye, readDye } from './colour-at.js';
import {
  differenceSeen,
  differencesSeen,
  readVision,
  type SeenDifference,
  type Vision,
} from './colour-vision.js';
import type { IndicatorScore } from './indicator-score.js';
import { scoreOf } from './score-indicator.js';
import { type ReadOptions, readScoreOptions, type ScoreOptions } from './score-options.js';

/** How much of an indicator's change can be seen. */
export interface VisibleChange {
  /** Well to either side of the range: all acid form, all base form. */
  readonly ends: { readonly acid: Colour; readonly base: Colour; readonly difference: SeenDifference };
  /** One drop before and one drop after the call; null where the curve does not get to the call. */
  readonly call: {
    readonly before: Colour;
    readonly after: Colour;
    readonly difference: SeenDifference;
  } | null;
}

/**
 * How far apart the two colours of an indicator are, and those one drop before and after the call, for normal vision and the
 * three kinds of colour-vision deficiency. Built on approximate colours; see `colourAt` and {@link colourDifference}.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { indicators, makeSolution, reagents, titrate } from 'protolysis';
 * import { visibleChange } from 'protolysis/colour';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.1 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 * });
 * const { ends, call } = visibleChange(titration, indicators.methylOrange);
 * ends.difference.normal > 2 * ends.difference.deuteranopia; // => true
 * call?.after.name; // => 'orange'
 * ```
 */
export function visibleChange(
  titration: Titration,
  indicator: Indicator,
  options?: ScoreOptions,
): VisibleChange {
  const faults = new Faults('visibleChange');
  const read = readScoreOptions(titration, options, faults);
  const dye = readDye(indicator, 'indicator', faults);
  faults.done();
  const { transition } = indicator;
  const acid = colourOf(dye, transition.from - wellBeyond, read.indicatorDrops);
  const base = colourOf(dye, transition.to + wellBeyond, read.indicatorDrops);
  const call = coloursAtCall(read.titration, dye, scoreOf(read.titration, indicator, read), read);
  return {
    ends: { acid, base, difference: differencesSeen(acid.hex, base.hex) },
    call: call && { ...call, difference: differencesSeen(call.before.hex, call.after.hex) },
  };
}

/** Units of pH: nothing of the other form is left there. */
const wellBeyond = 3;

function coloursAtCall(titration: Titration, dye: Dye, { endpoint }: IndicatorScore, read: ReadOptions) {
  if (endpoint === null) return null;
  const colour = (mL: number) => colourOf(dye, titration.pHAt(mL), read.indicatorDrops);
  return {
    before: colour(Math.max(endpoint.mL - read.dropSize, 0)),
    after: colour(Math.min(endpoint.mL + read.dropSize, titrationLimits.mL)),
  };
}

/** How a ranking takes the observer's eyes into account. */
export interface SightOptions extends ScoreOptions {
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

/**
 * What `rankBySight` takes for granted: the just noticeable difference of M. Mahy, L. Van Eycken, A. Oosterlinck, Color Res.
 * Appl. 19, 105–121 (1994), from memory. It was found in CIE L*a*b*, with colours side by side.
 */
export const sightDefaults = { vision: 'normal', noticeable: 2.3 } as const;

/**
 * Indicators in order of what they are worth to one observer, the best first: the score of `scoreIndicator` times how
 * surely the colours one drop before and after the call are told apart.
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
 * const [first] = rankBySight(titration, choice, { vision: 'deuteranopia' });
 * first?.seen; // => 1.00
 * ```
 */
export function rankBySight(
  titration: Titration,
  indicators: readonly Indicator[],
  options?: SightOptions,
): SightScore[] {
  const faults = new Faults('rankBySight');
  const read = readScoreOptions(titration, options, faults, ['vision', 'noticeable']);
  const vision = readVision(read.unread.vision, faults);
  const noticeable =
    read.unread.noticeable === undefined
      ? sightDefaults.noticeable
      : faults.number(read.unread.noticeable, 'noticeable', 'a colour difference', { from: 0.01, to: 100 });
  const list = faults.list(indicators, 'indicators', 'a list of indicators', 1, 1000);
  const dyes = Array.from(list, (one, k) => readDye(one, `indicators[${k}]`, faults));
  faults.done();

  return dyes
    .map((dye, k) => {
      const score = scoreOf(read.titration, list[k] as Indicator, read);
      const call = coloursAtCall(read.titration, dye, score, read);
      const difference = call ? differenceSeen(call.before.hex, call.after.hex, vision) : 0;
      const seen = 1 - 2 ** (-difference / noticeable);
      return { ...score, difference, seen, worth: score.score * seen };
    })
    .sort((one, other) => other.worth - one.worth);
}
