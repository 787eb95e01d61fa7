import { numberAt } from '../solver/number-at.js';

/**
 * Whether a column of volumes holds what was added each time, not totals: at least half of the steps do not rise. Where
 * every step falls it is a burette read from below: its sums would mean nothing.
 *
 * @internal
 */
export function isOfIncrements(mL: readonly number[]): boolean {
  if (mL.length < 4 || !mL.every((volume) => volume >= 0)) return false;
  const steps = mL.slice(1).map((volume, k) => volume - numberAt(mL, k));
  const rising = steps.filter((step) => step > 0).length;
  return 2 * rising <= steps.length && !steps.every((step) => step < 0);
}

/**
 * Whether a column of volumes may hold what was added each time: some step does not rise, as a running total would. Two
 * readings at one volume do not rise either; a fit tells them from increments.
 *
 * @internal
 */
export const mayBeIncrements = (mL: readonly number[]): boolean =>
  mL.every((volume) => volume >= 0) && mL.some((volume, k) => k > 0 && volume <= numberAt(mL, k - 1));

/** The running totals of what was added each time, mL. @internal */
export function totalsOfIncrements(mL: readonly number[]): readonly number[] {
  let total = 0;
  return mL.map((volume) => {
    total += volume;
    return total;
  });
}
