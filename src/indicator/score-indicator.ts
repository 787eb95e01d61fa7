import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import type { Indicator } from '../substance/indicator.js';
import { readIndicator } from '../substance/read-indicator.js';
import type { EquivalencePoint } from '../titration/points/equivalence-points.js';
import type { Titration } from '../titration/titration.js';
import { crossingOf } from './crossing.js';
import { factsOf, type IndicatorScore, type TitrationError } from './indicator-score.js';
import { meritOf } from './merit.js';
import type { Asked } from './read-titration.js';
import { reasonFor } from './reason.js';
import {
  callsFor,
  type ReadOptions,
  readPoints,
  readScoreOptions,
  type ScoreOptions,
  shiftOf,
} from './score-options.js';
import { type Verdict, verdictOf } from './verdict.js';

/**
 * How well an indicator shows an equivalence point, from 0 to 1.
 *
 *   score = ∫ w(p) dp / (1 + ((V(p) − V_eq)/δ)²)                                                        (1)
 *
 * w is where an observer calls the end point (∫w = 1): for two colours a triangle over the range with its peak midway,
 * or at a published titration exponent; for one colour a triangle that is highest at the edge where colour just shows
 * and zero half-way through the range. δ is the tolerance in mL, V(p) the volume at which the curve has pH p. 1: any
 * call costs nothing; ½: the typical call is one tolerance off; near 0: useless. (1) and its weights are this library's
 * own.
 *
 * Where a curve passes a pH twice, because it was boiled out or turns, the last crossing counts: there the colour
 * stays. For a point before a boil-out it is the last one before the boiling. A change that is never complete is
 * unsuitable, whatever the score.
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
 * reason; // => 'Methyl orange changes 17 mL before the equivalence point; the result would be 85 % low.'
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
  readPoints(read, faults);
  faults.done();
  return frozen(scoreOf(read.titration, checked, read));
}

/** The score for the point that the indicator serves best, with what the Davies equation makes of it. @internal */
export function scoreOf(titration: Asked, indicator: Indicator, options: ReadOptions): IndicatorScore {
  const ideal = judged(titration, indicator, options, 1e-7);
  const davies = options.davies();
  const real = davies && judged(davies, indicator, { ...options, points: [ideal.at] }, 1e-3);
  const withDavies = real && {
    score: real.score,
    titrationError: real.titrationError,
    verdict: real.verdict,
    inRange: davies.isInRangeAt(ideal.at.mL),
  };
  const { past, ...shown } = ideal;
  return { ...shown, withDavies, reason: reasonFor(ideal, options.dropSize, { ...shown, withDavies }) };
}

/** An indicator on one curve, for the point that it serves best, its integral good to `within`. @internal */
export function judged(titration: Asked, indicator: Indicator, options: ReadOptions, within: number) {
  const calls = callsFor(indicator, options);
  const merits = options.points.map((at) => ({
    at,
    ...meritOf(titration, calls, at.mL, options.tolerance, within),
  }));
  const { at, value, error } = merits.reduce((best, one) => (one.value > best.value ? one : best));

  const { change, past, call } = changeOf(titration, indicator, at, calls.at, options.indicatorDrops);
  const endpoint = call === null ? null : { mL: call, pH: calls.at };
  const titrationError = endpoint && errorOf(endpoint.mL, at.mL);
  const drops =
    change.from === null || change.to === null ? null : (change.to - change.from) / options.dropSize;
  const score = Math.min(Math.max(value, 0), 1);
  const usable = change.to !== null && indicator.notForUse === undefined;
  const verdict: Verdict = usable ? verdictOf(score) : 'unsuitable';
  return {
    indicator: factsOf(indicator),
    score,
    scoreError: error,
    at,
    change,
    endpoint,
    titrationError,
    drops,
    verdict,
    past,
  };
}

/** The systematic error of a call. @internal */
export function errorOf(mL: number, equivalence: number): TitrationError {
  return { mL: mL - equivalence, percent: (100 * (mL - equivalence)) / equivalence };
}

/**
 * Where the change begins, is called and ends, and what of it is over at the start, in the direction in which the curve
 * runs through the point.
 */
function changeOf(
  titration: Asked,
  indicator: Indicator,
  at: EquivalencePoint,
  callAt: PH,
  indicatorDrops: number,
) {
  const shift = shiftOf(indicator, indicatorDrops);
  const edges = [indicator.transition.from + shift, indicator.transition.to + shift];
  const rising = titration.slopeAt(at.mL) > 0;
  const [first, last] = (rising ? edges : edges.reverse()) as [PH, PH];
  const start = titration.pHAt(0);
  const crossing = crossingOf(titration, at.mL);
  // A boil-out can bring back what is past at the start.
  const isPast = (pH: PH) => (rising ? start >= pH : start <= pH) && crossing(pH) === null;

  const past = { call: isPast(callAt), range: isPast(last) };
  const call = crossing(callAt);
  if (past.range) return { past, call, change: { from: null, to: null } };
  return { past, call, change: { from: isPast(first) ? 0 : crossing(first), to: crossing(last) } };
}
