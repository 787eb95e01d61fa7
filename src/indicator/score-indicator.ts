import type { PH } from '../equilibrium/quantities.js';
import { Faults } from '../errors.js';
import type { Indicator } from '../substance/indicator.js';
import { readIndicator } from '../substance/read-indicator.js';
import type { EquivalencePoint } from '../titration/equivalence-points.js';
import type { Titration } from '../titration/titration.js';
import type { IndicatorScore } from './indicator-score.js';
import { meritOf } from './merit.js';
import type { Asked } from './read-titration.js';
import { reasonFor } from './reason.js';
import { callsFor, type ReadOptions, readScoreOptions, type ScoreOptions, shiftOf } from './score-options.js';
import { verdictOf } from './verdict.js';

/**
 * How well an indicator shows an equivalence point, from 0 to 1.
 *
 *   score = ∫ w(p) dp / (1 + ((V(p) − V_eq)/δ)²)                                                        (1)
 *
 * w is where an observer calls the end point (∫w = 1): for two colours a triangle over the range with its peak midway, or
 * at a published titration exponent; for one colour a triangle that is highest at the edge where colour just shows and
 * zero half-way through the range. δ is the tolerance in mL, V(p) the volume at which the curve has pH p. 1: any call
 * costs nothing; ½: the typical call is one tolerance off; near 0: useless. (1) and its weights are this library's own.
 *
 * @param titration - as `titrate` returns it, whatever its conditions
 * @throws InputError that lists every fault; also where the titration has no equivalence point and none is given
 * @example
 * ```ts
 * import { indicators, makeSolution, reagents, scoreIndicator, titrate } from 'protolysis';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
 * });
 * const { verdict } = scoreIndicator(titration, indicators.phenolphthalein);
 * verdict; // => 'well suited'
 * const { reason } = scoreIndicator(titration, indicators.methylOrange);
 * reason; // => 'complete 17 mL before the equivalence point: it would read 85 % low'
 * ```
 */
export function scoreIndicator(
  titration: Titration,
  indicator: Indicator,
  options?: ScoreOptions,
): IndicatorScore {
  const faults = new Faults('scoreIndicator');
  const read = readScoreOptions(titration, options, faults);
  const checked = readIndicator(indicator, 'indicator', faults);
  faults.done();
  return scoreOf(read.titration, checked, read);
}

/** The score for the point that the indicator serves best. @internal */
export function scoreOf(titration: Asked, indicator: Indicator, options: ReadOptions): IndicatorScore {
  const calls = callsFor(indicator, options);
  const merits = options.points.map((at) => ({
    at,
    ...meritOf(titration, calls, at.mL, options.tolerance),
  }));
  const { at, value, error } = merits.reduce((best, one) => (one.value > best.value ? one : best));

  const { change, past } = changeOf(titration, indicator, at, calls.at, options.indicatorDrops);
  const mL = titration.volumesAt(calls.at)[0];
  const endpoint = mL === undefined || !(mL > 0) ? null : { mL, pH: calls.at };
  const titrationError = endpoint && errorOf(endpoint.mL, at.mL);
  const drops =
    change.from === null || change.to === null ? null : (change.to - change.from) / options.dropSize;
  const score = Math.min(Math.max(value, 0), 1);
  return {
    indicator,
    score,
    scoreError: error,
    at,
    change,
    endpoint,
    titrationError,
    drops,
    verdict: verdictOf(score),
    reason: reasonFor({ at, change, titrationError, drops, past }, options.dropSize),
  };
}

/** The systematic error of a call. @internal */
export function errorOf(mL: number, equivalence: number): { readonly mL: number; readonly percent: number } {
  return { mL: mL - equivalence, percent: (100 * (mL - equivalence)) / equivalence };
}

/** Where the change begins and ends, and what of it is over at the start, in the direction in which the curve runs through the point. */
function changeOf(
  titration: Asked,
  indicator: Indicator,
  at: EquivalencePoint,
  call: PH,
  indicatorDrops: number,
) {
  const shift = shiftOf(indicator, indicatorDrops);
  const edges = [indicator.transition.from + shift, indicator.transition.to + shift];
  const rising = titration.slopeAt(at.mL) > 0;
  const [first, last] = (rising ? edges : edges.reverse()) as [PH, PH];
  const start = titration.pHAt(0);
  const isPast = (pH: PH) => (rising ? start >= pH : start <= pH);
  const volumeAt = (pH: PH) => titration.volumesAt(pH)[0] ?? null;

  const past = { call: isPast(call), range: isPast(last) };
  if (past.range) return { past, change: { from: null, to: null } };
  return { past, change: { from: isPast(first) ? 0 : volumeAt(first), to: volumeAt(last) } };
}
