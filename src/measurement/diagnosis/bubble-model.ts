import { numberAt } from '../../solver/number-at.js';
import { type Case, type FittedModel, fittedModel } from './fitted-model.js';

/** A bubble at its best place. @internal */
export interface FittedBubble {
  readonly kind: 'airBubble' | 'initialReading';
  readonly model: FittedModel;
  /** mL, read when it left. */
  readonly after: number;
}

/**
 * The bubble that explains the readings best. It may leave after any reading but the last: some places evenly over the
 * readings are tried first, then those about the best two of them, in steps halved until they are one reading.
 *
 * A bubble that left right after a total of zero adds its volume to every other total. An initial reading that was subtracted
 * from the first total alone does the same, so then both are named.
 *
 * @internal
 */
export function bubbleModel(about: Case): readonly FittedBubble[] {
  const { mL } = about.readings;
  const last = mL.length - 2;
  const tried = new Map<number, FittedModel>();
  const at = (k: number): FittedModel => {
    const free = { airBubbleAfter: numberAt(mL, k) } as const;
    const known = tried.get(k) ?? fittedModel(about, { free, limits, startsFrom: () => [usualBubble] });
    tried.set(k, known);
    return known;
  };
  const sumAt = (k: number) => at(k).sum;
  const step = Math.max(1, Math.round(last / coarsePlaces));
  const coarse = [0, ...Array.from({ length: Math.floor(last / step) }, (_, k) => (k + 1) * step)];
  const [one = 0, other = one] = coarse.toSorted((a, b) => sumAt(a) - sumAt(b));
  const best = leastOf(
    [one, other].map((from) => refined(from, step, last, sumAt)),
    sumAt,
  );
  const [model, after] = [at(best), numberAt(mL, best)];
  const bubble = { kind: 'airBubble', model, after } as const;
  return after === 0 ? [bubble, { ...bubble, kind: 'initialReading' }] : [bubble];
}

/** The best place about another, in steps halved until they are one reading. */
function refined(from: number, coarse: number, last: number, sumAt: (k: number) => number): number {
  let best = from;
  for (let step = coarse; step > 1; ) {
    step = Math.ceil(step / 2);
    best = leastOf(
      [best, best - step, best + step].filter((k) => k >= 0 && k <= last),
      sumAt,
    );
  }
  return best;
}

const leastOf = (places: readonly number[], sumAt: (k: number) => number): number =>
  places.reduce((least, k) => (sumAt(k) < sumAt(least) ? k : least));

/** How many places are tried first. */
const coarsePlaces = 12;

/** mL: no tip holds more. */
const limits = () => ({ from: 0, to: 10 });

/** mL, where a search for the size starts. */
const usualBubble = 0.4;
