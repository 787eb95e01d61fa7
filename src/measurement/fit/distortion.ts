import { numberAt } from '../../solver/number-at.js';
import type { Readings } from '../readings.js';
import type { BenchParameter, FitParameter } from './parameter-moves.js';

/**
 * How the bench alters one reading: mL poured = mL read − `notPoured`, and
 *
 *   pH shown = ℓ·(pH shown − drift)before + (1 − ℓ)·(7 + slope·(pH − 7) + offset) + drift                 (1)
 *
 * with ℓ the share of a change that was still to come, as of a probe of first order. The first reading has settled. The
 * drift adds after the lag, as in practice/bench-effects.ts, which says why.
 *
 * @internal
 */
export interface Distortion {
  /** Whether the reading is that before the first drop: its volume is zero, and sure. */
  readonly isFirst: boolean;
  /** mL that were read and never poured: the initial reading, and air bubbles. */
  readonly notPoured: number;
  /** As a fraction of the ideal slope. */
  readonly slope: number;
  readonly offset: number;
  /** By how much what the probe shows has moved until this reading. */
  readonly drift: number;
  readonly lag: number;
  /** The pH shown before, without its drift. */
  readonly before: number;
}

/** What the bench does to each reading, at some values of the parameters. @internal */
export function distortionsAt(
  parameters: readonly FitParameter[],
  { mL, pH }: Readings,
  values: ArrayLike<number>,
): readonly Distortion[] {
  const at = (what: BenchParameter, otherwise: number) => {
    const j = parameters.findIndex(({ moves }) => moves.what === what);
    return j < 0 ? otherwise : numberAt(values, j);
  };
  const [slope, offset, drift] = [at('probeSlope', 100) / 100, at('probeOffset', 0), at('probeDrift', 0)];
  const [lag, initial] = [at('readTooSoon', 0), at('initialReading', 0)];
  return mL.map((total, k) => ({
    isFirst: total === 0,
    notPoured: parameters.reduce(
      (sum, { moves }, j) => (isPast(moves, total) ? sum + numberAt(values, j) : sum),
      initial,
    ),
    slope,
    offset,
    drift: drift * shareOf(k, mL.length),
    lag: k === 0 ? 0 : lag,
    before: (pH[k - 1] ?? 7) - drift * shareOf(k - 1, mL.length),
  }));
}

/** The same readings without what the bench did to them: (1) solved for the pH, and the volumes poured. @internal */
export function undistorted({ mL, pH }: Readings, distortions: readonly Distortion[]) {
  return {
    mL: distortions.map(({ isFirst, notPoured }, k) => (isFirst ? 0 : numberAt(mL, k) - notPoured)),
    pH: distortions.map(({ slope, offset, drift, lag, before }, k) => {
      const settled = (numberAt(pH, k) - drift - lag * before) / (1 - lag);
      return 7 + (settled - 7 - offset) / slope;
    }),
  };
}

/** Whether a volume was read after the bubble left. @internal */
export const isPast = (moves: FitParameter['moves'], total: number): boolean =>
  moves.what === 'airBubble' && total > moves.after;

/** 0 at the first reading, 1 at the last. @internal */
export const shareOf = (k: number, count: number): number => k / Math.max(1, count - 1);
