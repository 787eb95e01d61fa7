import type { StepAt } from '../../equilibrium/steps-in-order.js';
import type { CurveModel } from '../model/curve-model.js';
import type { MixtureModel } from '../model/mixture-model.js';
import type { CurvePoint } from '../sampling/curve.js';
import { isReached } from '../titration-limits.js';
import type { InflectionPoint } from './inflection-points.js';
import { reactionOf } from './reaction.js';
import type { StoichiometricVolume } from './stoichiometric-volumes.js';

/** Where the contents say that it is done: acid and base have been brought together in whole steps. */
export interface EquivalencePoint extends CurvePoint {
  /** The step that is complete here, such as `CO₃²⁻ + H⁺ → HCO₃⁻`. */
  readonly reaction: string;
  /** The steepest inflection between the half-way points to either side, or null where the curve shows none. */
  readonly inflection: InflectionPoint | null;
}

/** The equivalence points among the volumes of whole states. @internal */
export function equivalencePointsOf(
  mixture: MixtureModel,
  curveModel: CurveModel,
  order: readonly StepAt[],
  volumes: readonly StoichiometricVolume[],
  inflections: readonly InflectionPoint[],
): EquivalencePoint[] {
  return volumes.flatMap(({ mL, states, acid }, k) => {
    if (!isReached(mL)) return [];
    const from = halfWay(volumes[k - 1], mL, 0);
    const to = halfWay(volumes[k + 1], mL, Number.POSITIVE_INFINITY);
    const inflection = steepestBetween(inflections, from, to);
    return [{ ...curveModel.pointAt(mL), reaction: reactionOf(mixture, order, states, acid), inflection }];
  });
}

/** Half-way between neighbouring states, the one before it at V ≤ 0 too. @internal */
export function halfEquivalencePointsOf(
  curveModel: CurveModel,
  volumes: readonly StoichiometricVolume[],
): CurvePoint[] {
  return volumes
    .map(({ mL }, k) => halfWay(volumes[k + 1], mL, Number.NaN))
    .filter(isReached)
    .map((mL) => curveModel.pointAt(mL));
}

const halfWay = (other: StoichiometricVolume | undefined, mL: number, none: number) =>
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
