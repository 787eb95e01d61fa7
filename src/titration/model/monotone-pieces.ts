import { numberAt } from '../../solver/number-at.js';
import { rootBetween } from '../../solver/root-between.js';
import type { CurvePoint } from '../sampling/curve.js';
import { titrationLimits } from '../titration-limits.js';
import type { CurveJump } from './curve-model.js';

/** A curve in pieces on each of which pH rises or falls throughout. */
export interface MonotonePieces {
  /** The ends of the pieces and points between them, in order of volume. */
  readonly points: readonly CurvePoint[];
  /** Volumes at which the curve turns, mL. */
  readonly turns: readonly number[];
}

/**
 * Cuts a curve that may turn into monotone pieces.
 *
 * Volumes grow by 15 % from a millionth of the analyte's, which follows dilution and the slow drift of activity
 * coefficients; where pH changes by more than 0.05 from one to the next, the interval is halved until it no longer
 * does, or no double is left between the two: there the curve jumps ({@link jumpsOf}). A change of sign of the slope
 * between neighbours is a turn. It is found and put in, so that the curve is monotone between points. What turns twice
 * within an interval is missed.
 *
 * @param pointAt - the curve
 * @param analyte - volume of the analyte, mL
 * @internal
 */
export function monotonePiecesOf(pointAt: (mL: number) => CurvePoint, analyte: number): MonotonePieces {
  const points = refinedPoints(pointAt, geometricVolumes(analyte), widestStep);
  if (isFlat(points)) return { points: points.slice(0, 1), turns: [] };
  const turns = turnsOf(pointAt, points);
  return { points: [...points, ...turns.map(pointAt)].sort((a, b) => a.mL - b.mL), turns };
}

/** The widest step in pH from one point of the pieces to the next, but for a jump. */
const widestStep = 0.05;

const isJump = (point: CurvePoint, next: CurvePoint): boolean => Math.abs(next.pH - point.pH) > widestStep;

/** The pairs of points between which the curve jumps: no double lies between their volumes. @internal */
export function jumpsOf({ points }: MonotonePieces): CurveJump[] {
  return points.flatMap((point, k) => {
    const next = points[k + 1];
    return next && isJump(point, next) ? [{ mL: next.mL, before: point.pH, after: next.pH }] : [];
  });
}

/**
 * Pairs of volumes, mL, between which the curve passes a pH; equal where it has the pH exactly there. What it jumps past
 * it has nowhere.
 *
 * @internal
 */
export function passagesOf({ points }: MonotonePieces, pH: number): (readonly [number, number])[] {
  return points.flatMap((point, k): (readonly [number, number])[] => {
    const next = points[k + 1];
    if (point.pH === pH) return [[point.mL, point.mL]];
    if (!next || next.pH === pH || point.pH < pH === next.pH < pH || isJump(point, next)) return [];
    return [[point.mL, next.mL]];
  });
}

/** Volumes from 0 to `upTo` mL between which pH changes by at most `maxStep`, every turn among them. @internal */
export function refinedVolumes(
  { turns }: MonotonePieces,
  pointAt: (mL: number) => CurvePoint,
  upTo: number,
  maxStep: number,
): number[] {
  const ends = [0, ...turns.filter((mL) => mL < upTo), upTo];
  return refinedPoints(pointAt, ends, maxStep).map(({ mL }) => mL);
}

/** 0, then volumes that grow by 15 %, up to the greatest that a burette may hold. @internal */
export function geometricVolumes(analyte: number): number[] {
  const volumes = [0];
  for (let mL = analyte * 1e-6; mL < titrationLimits.mL; mL *= 1.15) volumes.push(mL);
  return [...volumes, titrationLimits.mL];
}

/**
 * Points at these volumes, and at as many between them as it takes for neighbours to differ by at most `step`.
 *
 * @internal
 */
export function refinedPoints<Point extends CurvePoint>(
  pointAt: (mL: number) => Point,
  volumes: readonly number[],
  step: number,
): Point[] {
  const points = [pointAt(numberAt(volumes, 0))];
  for (const mL of volumes.slice(1)) {
    const waiting = [pointAt(mL)];
    while (waiting.length > 0) {
      const [from, to] = [points.at(-1) as Point, waiting.at(-1) as Point];
      const middle = from.mL + (to.mL - from.mL) / 2;
      if (Math.abs(to.pH - from.pH) <= step || !(middle > from.mL && middle < to.mL)) {
        points.push(to);
        waiting.pop();
      } else waiting.push(pointAt(middle));
    }
  }
  return points;
}

/**
 * Whether pH changes by no more than its rounding, as where titrant and analyte are alike or neither holds more than a
 * neutral salt.
 *
 * @internal
 */
export function isFlat(points: readonly CurvePoint[]): boolean {
  const [first] = points;
  return points.every(({ pH }) => Math.abs(pH - (first?.pH ?? pH)) <= 1e-9);
}

function turnsOf(pointAt: (mL: number) => CurvePoint, points: readonly CurvePoint[]): number[] {
  return points.flatMap((point, k) => {
    const next = points[k + 1];
    if (!next || !(point.slope * next.slope < 0)) return [];
    return [crossingBetween((mL) => pointAt(mL).slope, point.mL, next.mL)];
  });
}

/**
 * The place between two at which a function crosses zero. Where the signs at both come out alike by rounding, it is the
 * end that is nearer to zero.
 *
 * @throws Error where the function is no finite number: no answer may be lost for that
 * @internal
 */
export function crossingBetween(f: (mL: number) => number, low: number, high: number): number {
  const crossing = rootBetween(f, low, high);
  if (crossing.status === 'found') return crossing.x;
  if (crossing.status === 'no-sign-change') return crossing.nearest;
  throw new Error(`the curve has no value at ${crossing.at} mL`);
}
