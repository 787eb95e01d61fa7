import { numberAt } from '../solver/number-at.js';
import type { ReadingUncertainty } from './reading-uncertainty.js';
import type { Readings } from './readings.js';
import { peaksOf, share, slopesOf } from './slope-peaks.js';
import { type Smoothing, smoothingOf } from './smoothed.js';

/** A steepest interval and the end point in it. @internal */
export interface SlopeEndpoint {
  /** The interval is that from this reading to the next. */
  readonly interval: number;
  readonly value: number;
  readonly standardUncertainty: number;
}

/**
 * The middle of the steepest interval. The curve turns somewhere in the interval, and the readings say no more: the
 * standard uncertainty is that of a rectangle over it, its length over √12, beside that of the volumes.
 *
 * @internal
 */
export function steepestSlope(
  readings: Readings,
  points: number | undefined,
  count: number,
  u: ReadingUncertainty,
) {
  const smoothing = smoothingOf(readings.mL, points);
  const intervals = slopesOf(readings, smoothing);
  const { x } = intervals;
  return peaksOf(intervals, smoothing, count, u).map((interval): SlopeEndpoint => {
    const [from, to] = [numberAt(x, interval), numberAt(x, interval + 1)];
    return {
      interval,
      value: (from + to) / 2,
      standardUncertainty: Math.hypot((to - from) / Math.sqrt(12), u.mL / Math.SQRT2),
    };
  });
}

/**
 * Where the second difference quotient, on a line between its values at the two ends of the steepest interval, is zero:
 *
 *   V = x₁ + h·d₁/(d₁ − d₂),   d₁ = 2(s₁ − s₀)/(x₂ − x₀),   d₂ = 2(s₂ − s₁)/(x₃ − x₁)                   (1)
 *
 * with s the difference quotients of the three intervals and h = x₂ − x₁. The standard uncertainty carries those of the
 * four readings through (1), volumes by the slope at the reading, beside a rectangle over the interval: at a step that
 * is short beside the interval the readings do not show where in it the curve turns.
 *
 * @internal
 */
export function zeroSecondDerivative(
  readings: Readings,
  points: number | undefined,
  count: number,
  u: ReadingUncertainty,
) {
  const smoothing = smoothingOf(readings.mL, points);
  const intervals = slopesOf(readings, smoothing);
  const { x, slopes } = intervals;
  return peaksOf(intervals, smoothing, count, u).map((interval): SlopeEndpoint => {
    const [x0, x1, x2, x3] = [-1, 0, 1, 2].map((k) => numberAt(x, interval + k)) as [
      number,
      number,
      number,
      number,
    ];
    const [s0, s1, s2] = [-1, 0, 1].map((k) => numberAt(slopes, interval + k)) as [number, number, number];
    const [d1, d2] = [(2 * (s1 - s0)) / (x2 - x0), (2 * (s2 - s1)) / (x3 - x1)];
    const apart = d1 - d2;
    const [by1, by2] = [(-d2 * (x2 - x1)) / apart ** 2, (d1 * (x2 - x1)) / apart ** 2];
    const bySlope = [
      (-2 * by1) / (x2 - x0),
      (2 * by1) / (x2 - x0) - (2 * by2) / (x3 - x1),
      (2 * by2) / (x3 - x1),
    ];
    const byPH = new Map<number, number>();
    for (const [k, bySlopeK] of bySlope.entries()) {
      const [left, right] = [interval - 1 + k, interval + k];
      const perPH = bySlopeK / (numberAt(x, right) - numberAt(x, left));
      share(byPH, smoothing[right] as Smoothing, perPH);
      share(byPH, smoothing[left] as Smoothing, -perPH);
    }
    const noise = [...byPH].map(([k, by]) => by * Math.hypot(u.pH, slopeAt(slopes, k) * u.mL));
    return {
      interval,
      value: x1 + ((x2 - x1) * d1) / apart,
      standardUncertainty: Math.hypot(...noise, (x2 - x1) / Math.sqrt(12)),
    };
  });
}

/** Slope at a reading: the mean of the intervals beside it. */
function slopeAt(slopes: readonly number[], k: number): number {
  const beside = [slopes[k - 1], slopes[k]].filter((slope) => slope !== undefined);
  return beside.reduce((sum, slope) => sum + slope, 0) / beside.length;
}
