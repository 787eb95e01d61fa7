import { numberAt } from '../../solver/number-at.js';
import { type Case, type FittedModel, fittedModel } from './fitted-model.js';

/**
 * A bubble may leave after any reading but the last: some places evenly over the readings first, then about the best of
 * them in steps halved until they are one reading.
 *
 * @internal
 */
export function bubbleModel(about: Case): FittedModel {
  const { mL } = about.readings;
  const last = mL.length - 2;
  const tried = new Map<number, FittedModel>();
  const at = (k: number): FittedModel => {
    const free = { airBubbleAfter: numberAt(mL, k) };
    const known = tried.get(k) ?? fittedModel(about, { free, startsFrom: () => [usualBubble] });
    tried.set(k, known);
    return known;
  };
  let step = Math.max(1, Math.round(last / places));
  let best = 0;
  for (let k = step; k <= last; k += step) if (at(k).sum < at(best).sum) best = k;
  while (step > 1) {
    step = Math.ceil(step / 2);
    for (const k of [best - step, best + step]) if (k >= 0 && k <= last && at(k).sum < at(best).sum) best = k;
  }
  return at(best);
}

const places = 12;

/** mL, where a search for the size starts. */
const usualBubble = 0.4;
