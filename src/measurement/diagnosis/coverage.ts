import { numberAt } from '../../solver/number-at.js';
import type { Readings } from '../readings.js';

/** mL; common practice calls larger additions at an end point too large. */
const coarse = 0.5;

/** An equivalence point, at a volume as it would be read. @internal */
export interface PointRead {
  readonly reaction: string;
  readonly mL: number;
}

/** Notes on how the readings lie about the equivalence points. @internal */
export function coverageNotes({ mL }: Readings, points: readonly PointRead[]): readonly string[] {
  if (mL.some((volume, k) => k > 0 && volume < numberAt(mL, k - 1))) return []; // no running totals
  const last = mL.at(-1) ?? 0;
  return points.flatMap(({ mL: at, reaction }) => {
    if (at > last)
      return [`The readings end before the equivalence point at ${at.toFixed(2)} mL, ${reaction}.`];
    const k = mL.findIndex((volume) => volume >= at);
    const [from, to] = k < 1 ? [0, 0] : [numberAt(mL, k - 1), numberAt(mL, k)];
    if (!(to - from > coarse)) return [];
    return [
      `The readings go from ${from.toFixed(2)} to ${to.toFixed(2)} mL over the equivalence point at ${at.toFixed(2)} mL, ${reaction}: an overshoot there would not show. Take smaller steps about it.`,
    ];
  });
}
