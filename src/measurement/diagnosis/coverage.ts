import { fixed } from '../../print-number.js';
import { numberAt } from '../../solver/number-at.js';
import type { Readings } from '../readings.js';

/** mL; common practice calls larger additions at an end point too large. @internal */
export const largestStep = 0.5;

/** An equivalence point, at a volume as it would be read. @internal */
export interface PointRead {
  readonly reaction: string;
  readonly mL: number;
}

/**
 * Notes on how the readings lie about the equivalence points or, where their volumes fall, on their order; of increments
 * there is nothing to say.
 *
 * @internal
 */
export function coverageNotes(
  { mL }: Readings,
  points: readonly PointRead[],
  areIncrements: boolean,
): readonly string[] {
  const falls = mL.findIndex((volume, k) => k > 0 && volume < numberAt(mL, k - 1));
  if (falls > 0)
    return areIncrements
      ? []
      : [
          `Reading ${falls + 1}, ${fixed(numberAt(mL, falls), 2)} mL, is less than the one before: running totals rise, and drift and waiting are judged by the order in which the readings stand.`,
        ];
  const last = mL.at(-1) ?? 0;
  return points.flatMap(({ mL: at, reaction }) => {
    if (at > last)
      return [`The readings end before the equivalence point at ${at.toFixed(2)} mL, ${reaction}.`];
    const k = mL.findIndex((volume) => volume >= at);
    const [from, to] = k < 1 ? [0, 0] : [numberAt(mL, k - 1), numberAt(mL, k)];
    if (!(to - from > largestStep)) return [];
    return [
      `The readings go from ${from.toFixed(2)} to ${to.toFixed(2)} mL over the equivalence point at ${at.toFixed(2)} mL, ${reaction}: an overshoot there would not show. Take smaller steps about it.`,
    ];
  });
}
