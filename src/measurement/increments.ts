import { numberAt } from '../solver/number-at.js';

/**
 * Whether a column of volumes holds what was added each time, not totals: at least half of the steps do not rise.
 *
 * @internal
 */
export function isOfIncrements(mL: readonly number[]): boolean {
  if (mL.length < 4 || !mL.every((volume) => volume >= 0)) return false;
  const rising = mL.filter((volume, k) => k > 0 && volume > numberAt(mL, k - 1)).length;
  return 2 * rising <= mL.length - 1;
}

/** The running totals of what was added each time, mL. @internal */
export function totalsOfIncrements(mL: readonly number[]): readonly number[] {
  let total = 0;
  return mL.map((volume) => {
    total += volume;
    return total;
  });
}
