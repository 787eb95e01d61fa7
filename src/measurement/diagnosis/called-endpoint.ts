import { fixed } from '../../print-number.js';
import { largestStep } from './coverage.js';
import { explains } from './evidence.js';
import { type Case, type FittedModel, type FittedModelPoint, pointsOfModel } from './fitted-model.js';

/** An end point as it was called at the bench, beside the equivalence point that the readings show. */
export interface CalledEndpoint {
  /** As it was called. */
  readonly mL: number;
  /** Nearest to it, on the curve that explains the readings best: a running total with the faults of the burette in it. */
  readonly equivalence: { readonly reaction: string; readonly mL: number };
  /** mL past the equivalence point; below zero where it was called before. */
  readonly past: number;
  /** Of `past`: that of the curve and of one volume; null where these readings do not determine the point. */
  readonly standardUncertainty: number | null;
  /**
   * `on`: within two standard uncertainties. `unclear`: nothing explains the readings, or they end before that point or
   * determine it to no better than a step about an end point may be, half a millilitre.
   */
  readonly verdict: 'on' | 'past' | 'before' | 'unclear';
  /** Where it was called, in a sentence. */
  readonly sentence: string;
  /** What to do; empty where there is nothing. */
  readonly remedy: string;
}

/** How an end point was called; null where the curve has no equivalence point. @internal */
export function calledEndpoint(
  called: number,
  model: FittedModel,
  { uncertainty }: Case,
): CalledEndpoint | null {
  const points = pointsOfModel(model);
  const nearest = points.reduce<FittedModelPoint | undefined>(
    (best, each) => (best && Math.abs(best.mL - called) <= Math.abs(each.mL - called) ? best : each),
    undefined,
  );
  if (!nearest) return null;
  const { reaction, mL, poured, deviation } = nearest;
  const past = called - mL;
  const u = deviation === null ? null : Math.hypot(deviation, uncertainty.mL);
  const isClear = u !== null && coverageFactor * u <= largestStep && mL <= model.last && explains(model);
  const verdict = !isClear
    ? 'unclear'
    : Math.abs(past) <= coverageFactor * u
      ? 'on'
      : past > 0
        ? 'past'
        : 'before';
  const by = fixed(Math.abs(past), 2) + (u === null ? '' : ` ± ${fixed(u, 2)}`);
  return {
    mL: called,
    equivalence: { reaction, mL },
    past,
    standardUncertainty: u,
    verdict,
    sentence:
      `The end point was called at ${fixed(called, 2)} mL, ${by} mL ${past < 0 ? 'before' : 'past'} ` +
      `the equivalence point at ${fixed(mL, 2)} mL, ${reaction}: ${meanings[verdict]}.`,
    remedy:
      verdict === 'past' || verdict === 'before'
        ? `Calculate with ${fixed(poured, 2)} mL${poured === mL ? '' : ' poured'}. ${remedies[verdict]}`
        : '',
  };
}

/** For 95 %, the level of a coverage factor of 2: GUM (JCGM 100:2008), 6.3.3. */
const coverageFactor = 2;

const meanings = {
  on: 'that is on it, as far as these readings tell',
  past: 'it was overshot',
  before: 'it was called too early',
  unclear: 'these readings cannot say how it was called',
};

const otherwise = 'An indicator changes a little off the point by itself: scoreIndicator says by how much.';
const remedies = {
  past: `Next time go to single drops in time. ${otherwise}`,
  before: `Next time add drops until the colour stays. ${otherwise}`,
};
