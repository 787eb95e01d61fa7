import { doubles } from '../../solver/arithmetic.js';
import { numberAt } from '../../solver/number-at.js';
import { reactionOf } from '../../titration/points/reaction.js';
import {
  chargeOfState,
  type StoichiometricVolume,
  stepsPresent,
  stoichiometricVolumes,
} from '../../titration/points/stoichiometric-volumes.js';
import { type Chemistry, chemistryAt } from './chemistry.js';

/** An equivalence point of a fit, as a running total. @internal */
export interface FittedPoint {
  readonly reaction: string;
  /** mL */
  readonly mL: number;
  /** mL per unit of each parameter. */
  readonly gradient: readonly number[];
}

/**
 * The equivalence points at some values of the parameters, and how each moves with them. By (1) of
 * stoichiometric-volumes.ts V = −S/T, so contents that a parameter adds, of charge D in that state, move it by
 *
 *   dV/dθ = −D/T of the flask,   −V·D/T of the titrant                                                (1)
 *
 * A running total counts from after what was delivered before: it is less by that.
 *
 * @internal
 */
export function fittedPoints(chemistry: Chemistry, values: Float64Array): readonly FittedPoint[] {
  const { balance, flask, titrant } = chemistryAt(chemistry, values);
  const mixture = { system: { ...chemistry.system, balance }, analyte: flask, titrant };
  const order = stepsPresent(mixture);
  const before = chemistry.parameters.findIndex(({ moves }) => moves.what === 'initialVolume');
  const delivered = before < 0 ? 0 : numberAt(values, before);
  const gradientOf = ({ mL, states }: StoichiometricVolume) => {
    const done = order.slice(0, states[0]);
    const perMl = chargeOfState(doubles, titrant, balance.families, done);
    return chemistry.moves.map((move, j) => {
      if (j === before) return -1;
      if (!move || move.what === 'pKa') return 0;
      const added = chargeOfState(doubles, move.column, balance.families, done);
      return -(move.what === 'titrant' ? mL * added : added) / perMl;
    });
  };
  return stoichiometricVolumes(mixture, order)
    .filter(({ mL }) => mL > 0)
    .map((point) => ({
      reaction: reactionOf(mixture, order, point.states, point.acid),
      mL: point.mL - delivered,
      gradient: gradientOf(point),
    }));
}
