import type { StepAt } from '../equilibrium/steps.js';
import type { Course } from './course.js';
import type { CurvePoint } from './curve.js';
import type { Engine } from './engine.js';
import type { InflectionPoint } from './inflection-points.js';
import { titrationLimits } from './limits.js';
import { reactionOf } from './reaction.js';
import type { StateVolume } from './state-volumes.js';

/** A stoichiometric point: acid and base have been brought together in whole steps. */
export interface EquivalencePoint extends CurvePoint {
  /** The step that is complete here, such as `CO₃²⁻ + H⁺ → HCO₃⁻`. */
  readonly reaction: string;
  /** The steepest inflection between the half-way points to either side, or null where the curve shows none. */
  readonly inflection: InflectionPoint | null;
}

/** @internal */
export function equivalencePointsOf(
  engine: Engine,
  course: Course,
  order: readonly StepAt[],
  volumes: readonly StateVolume[],
  inflections: readonly InflectionPoint[],
): EquivalencePoint[] {
  return volumes.flatMap(({ mL, states, acid }, k) => {
    if (!isReached(mL)) return [];
    const from = halfWay(volumes[k - 1], mL, 0);
    const to = halfWay(volumes[k + 1], mL, Number.POSITIVE_INFINITY);
    const inflection = steepestBetween(inflections, from, to);
    return [{ ...course.pointAt(mL), reaction: reactionOf(engine, order, states, acid), inflection }];
  });
}

/** Half-way between neighbouring states, the one before it at V ≤ 0 too. @internal */
export function halfEquivalencePointsOf(course: Course, volumes: readonly StateVolume[]): CurvePoint[] {
  return volumes
    .map(({ mL }, k) => halfWay(volumes[k + 1], mL, Number.NaN))
    .filter(isReached)
    .map((mL) => course.pointAt(mL));
}

const isReached = (mL: number) => mL > 0 && mL <= titrationLimits.mL;
const halfWay = (other: StateVolume | undefined, mL: number, none: number) =>
  other ? (other.mL + mL) / 2 : none;

function steepestBetween(
  inflections: readonly InflectionPoint[],
  from: number,
  to: number,
): InflectionPoint | null {
  return inflections
    .filter(({ kind, mL }) => kind === 'steepest' && mL > from && mL < to)
    .reduce<InflectionPoint | null>(
      (best, one) => (best && Math.abs(best.slope) >= Math.abs(one.slope) ? best : one),
      null,
    );
}
