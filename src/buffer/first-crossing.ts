import type { PH } from '../equilibrium/quantities.js';

/**
 * The distance of the pH from a target, as a function of an amount. Within two roundings it is exactly zero, so that a
 * search for the root ends there.
 *
 * @internal
 */
export function offTarget(target: PH, pHWith: (amount: number) => PH): (amount: number) => number {
  const rounding = 2 * Number.EPSILON * Math.max(1, Math.abs(target));
  return (amount) => {
    const off = pHWith(amount) - target;
    return Math.abs(off) <= rounding ? 0 : off;
  };
}

/**
 * A bracket around the first sign change of a function from 0 on, or undefined where there is none up to `most`.
 *
 * The far end grows tenfold from a billionth of `most`: so small amounts are found with full relative precision. With a
 * model of activity pH need not be monotone in an amount; then this is the crossing at the smallest amount, unless two
 * lie within one such step.
 *
 * @internal
 */
export function firstCrossing(off: (amount: number) => number, most: number): [number, number] | undefined {
  const start = Math.sign(off(0));
  if (start === 0) return [0, 0];
  let low = 0;
  for (let power = -9; power <= 0; power += 1) {
    const high = most * 10 ** power;
    if (Math.sign(off(high)) !== start) return [low, high];
    low = high;
  }
  return undefined;
}
