import type { PH } from '../equilibrium/quantities.js';
import { fixed } from '../print-number.js';
import type { AdditionsInUse } from './addition-options.js';

/** Additions in order, as plain columns. */
export interface AdditionPlan {
  /** Running totals, mL, from 0: what the burette shows, less its first reading. */
  readonly mL: readonly number[];
  /** What is added for each, mL; 0 for the first. */
  readonly added: readonly number[];
  /** The predicted pH at each. */
  readonly pH: readonly PH[];
  readonly readings: number;
  /** Time at the bench for additions and readings, minutes. */
  readonly minutes: number;
  /** How many times the burette is filled. */
  readonly fillings: number;
  readonly notes: readonly string[];
}

/** A whole number of fine additions, mL, as one would write it down: 0.3, not 0.30000000000000004. @internal */
export const volumeOfSteps = (step: number, fine: number): number => Number((step * fine).toPrecision(12));

/**
 * The additions up to a last step, a step being a fine addition; see `planAdditions` for the rule.
 *
 * @param lastPoint - the last equivalence volume, mL; undefined where there is none
 * @internal
 */
export function scheduleOf(
  pHAt: (step: number) => PH,
  last: number,
  lastPoint: number | undefined,
  how: AdditionsInUse,
): AdditionPlan {
  const plan = { mL: [0], added: [0], pH: [pHAt(0)] };
  let sharpest = { mL: 0, change: 0 };
  for (let step = 0; step < last; ) {
    const before = plan.pH.at(-1) ?? Number.NaN;
    const size = greatestStep(
      (more) => Math.abs(pHAt(step + more) - before),
      Math.min(how.perCoarse, last - step),
      how,
    );
    step += size;
    const pH = pHAt(step);
    plan.mL.push(volumeOfSteps(step, how.fine));
    plan.added.push(volumeOfSteps(size, how.fine));
    plan.pH.push(pH);
    const change = Math.abs(pH - before);
    if (change > sharpest.change) sharpest = { mL: volumeOfSteps(step, how.fine), change };
  }
  const readings = plan.mL.length;
  const total = plan.mL.at(-1) ?? 0;
  const fillings = Math.max(1, Math.ceil(total / how.burette - 1e-9));
  return {
    ...plan,
    readings,
    minutes: (readings * how.settle + (readings - 1) * how.handling) / 60,
    fillings,
    notes: notesOn(sharpest, fillings, lastPoint, how),
  };
}

/**
 * The greatest number of fine additions, up to `most`, that changes the pH by at most `maxStep`, or one. Found by
 * halving, so that it is the greatest where the pH goes one way only; what it finds keeps the limit in any case.
 *
 * Invariant   `few` additions keep the limit, or are one; `many` do not.
 */
function greatestStep(
  changeAfter: (steps: number) => number,
  most: number,
  { maxStep }: AdditionsInUse,
): number {
  if (changeAfter(most) <= maxStep) return most;
  let [few, many] = [1, most];
  while (many - few > 1) {
    const middle = Math.floor((few + many) / 2);
    if (changeAfter(middle) <= maxStep) few = middle;
    else many = middle;
  }
  return few;
}

function notesOn(
  sharpest: { mL: number; change: number },
  fillings: number,
  lastPoint: number | undefined,
  how: AdditionsInUse,
): string[] {
  const steep =
    sharpest.change > how.maxStep
      ? [
          `One addition of ${how.fine} mL changes the pH by ${fixed(sharpest.change, 1)}, at ${fixed(sharpest.mL, 2)} mL: no smaller one is planned.`,
        ]
      : [];
  const enough =
    lastPoint !== undefined && lastPoint < how.burette
      ? ` Up to ${how.burette} mL one filling does, and still passes the last equivalence point, at ${fixed(lastPoint, 2)} mL.`
      : '';
  const refill =
    fillings > 1
      ? [
          `The burette of ${how.burette} mL is filled ${fillings} times: write down its readings before and after, so that the totals go on.${enough}`,
        ]
      : [];
  return [...steep, ...refill];
}
