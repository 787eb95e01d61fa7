import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import type { Indicator } from '../substance/indicator.js';
import type { Titration } from '../titration/titration.js';
import { titrationLimits } from '../titration/titration-limits.js';
import { type Colour, colourOf, type Dye, readDye } from './colour-at.js';
import { differencesSeen, type SeenDifference } from './colour-vision.js';
import type { IndicatorScore } from './indicator-score.js';
import type { Asked } from './read-titration.js';
import { judged } from './score-indicator.js';
import { type ReadOptions, readPoints, readScoreOptions, type ScoreOptions } from './score-options.js';

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
 * How far apart the two colours of an indicator are, and those one drop before and after the call, for normal vision
 * and the three kinds of colour-vision deficiency. Built on approximate colours; see `colourAt` and {@link
 * colourDifference}.
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
  readPoints(read, faults);
  faults.done();
  const { transition } = dye.indicator;
  const acid = colourOf(dye, transition.from - wellBeyond, read.indicatorDrops);
  const base = colourOf(dye, transition.to + wellBeyond, read.indicatorDrops);
  const call = coloursAtCall(read.titration, dye, judged(read.titration, dye.indicator, read, 1e-7), read);
  return frozen({
    ends: { acid, base, difference: differencesSeen(acid.hex, base.hex) },
    call: call && { ...call, difference: differencesSeen(call.before.hex, call.after.hex) },
  });
}

/** Units of pH: nothing of the other form is left there. */
const wellBeyond = 3;

/** One drop before the call and one after. @internal */
export function coloursAtCall(
  titration: Asked,
  dye: Dye,
  { endpoint }: Pick<IndicatorScore, 'endpoint'>,
  read: ReadOptions,
) {
  if (endpoint === null) return null;
  const colour = (mL: number) => colourOf(dye, titration.pHAt(mL), read.indicatorDrops);
  return {
    before: colour(Math.max(endpoint.mL - read.dropSize, 0)),
    after: colour(Math.min(endpoint.mL + read.dropSize, titrationLimits.mL)),
  };
}
