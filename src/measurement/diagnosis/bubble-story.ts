import { numberAt } from '../../solver/number-at.js';
import { type Case, type FittedStory, fittedStory } from './fitted-story.js';

/** A bubble, and after which volume it left. @internal */
export interface FittedBubble extends FittedStory {
  readonly after: number;
}

/**
 * A bubble may leave after any reading but the last: some places evenly over the readings first, then about the best of
 * them in steps halved until they are one reading.
 *
 * @internal
 */
export function bubbleStory(about: Case): FittedBubble {
  const { mL } = about.readings;
  const last = mL.length - 2;
  const tried = new Map<number, FittedBubble>();
  const at = (k: number): FittedBubble => {
    const after = numberAt(mL, k);
    const known = tried.get(k) ?? { ...fittedStory(about, { bubbleAfter: after }, [0.4]), after };
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
