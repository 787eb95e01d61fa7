import { numberAt } from '../solver/number-at.js';
import type { ReadingUncertainty } from './reading-uncertainty.js';
import type { Readings } from './readings.js';
import { type Smoothing, smoothed } from './smoothed.js';

/** The slope over each interval between two readings. @internal */
interface Slopes {
  /** mL of the readings. */
  readonly x: readonly number[];
  /** pH per mL, one fewer than the readings. */
  readonly slopes: readonly number[];
}

/** Difference quotients of the smoothed column, upwards even where the pH falls. @internal */
export function slopesOf({ mL, pH }: Readings, smoothing: readonly Smoothing[]): Slopes {
  const up = (pH.at(-1) as number) >= numberAt(pH, 0) ? 1 : -1;
  const y = smoothed(pH, smoothing);
  const slopes = y
    .slice(1)
    .map((each, k) => (up * (each - numberAt(y, k))) / (numberAt(mL, k + 1) - numberAt(mL, k)));
  return { x: mL, slopes };
}

/** Standard uncertainty of each slope, from those of the readings; of volumes by the slope there. */
function slopeNoise(
  { x, slopes }: Slopes,
  smoothing: readonly Smoothing[],
  u: ReadingUncertainty,
): readonly number[] {
  return slopes.map((slope, k) => {
    const shares = new Map<number, number>();
    share(shares, smoothing[k + 1] as Smoothing, 1);
    share(shares, smoothing[k] as Smoothing, -1);
    const each = Math.hypot(u.pH, slope * u.mL);
    return (Math.hypot(...shares.values()) * each) / (numberAt(x, k + 1) - numberAt(x, k));
  });
}

/** Adds a smoothed value, times a factor, to the shares that readings have in something. @internal */
export function share(shares: Map<number, number>, { from, weights }: Smoothing, factor: number): void {
  for (const [k, w] of weights.entries()) shares.set(from + k, (shares.get(from + k) ?? 0) + factor * w);
}

/** How far a further peak stands above the valleys beside it, in standard uncertainties: noise rarely reaches it. */
const clearly = 4;

/**
 * The highest peaks of the slope, by volume: intervals steeper than both neighbours. A further peak counts where slopes
 * under half its own, and clearly under it for the noise, lie between it and each higher one. None lies at the ends,
 * where a steeper interval may follow.
 *
 * @internal
 */
export function peaksOf(
  intervals: Slopes,
  smoothing: readonly Smoothing[],
  count: number,
  u: ReadingUncertainty,
): readonly number[] {
  const { slopes } = intervals;
  const noise = count > 1 ? slopeNoise(intervals, smoothing, u) : [];
  const tops = slopes
    .map((_, k) => k)
    .filter((k) => k > 0 && k < slopes.length - 1 && numberAt(slopes, k) > 0)
    .filter(
      (k) => numberAt(slopes, k) > numberAt(slopes, k - 1) && numberAt(slopes, k) >= numberAt(slopes, k + 1),
    )
    .sort((a, b) => numberAt(slopes, b) - numberAt(slopes, a));
  const isBelow = (valley: number, top: number) => {
    const by = numberAt(slopes, top) - numberAt(slopes, valley);
    return (
      by > numberAt(slopes, top) / 2 &&
      by > clearly * Math.hypot(numberAt(noise, valley), numberAt(noise, top))
    );
  };
  const peaks: number[] = [];
  for (const top of tops) {
    if (peaks.length === count) break;
    const parted = (peak: number) => {
      for (let k = Math.min(top, peak) + 1; k < Math.max(top, peak); k += 1) if (isBelow(k, top)) return true;
      return false;
    };
    if (peaks.every(parted)) peaks.push(top);
  }
  return peaks.sort((a, b) => a - b);
}
