import { doubles } from '../../solver/arithmetic.js';
import { numberAt } from '../../solver/number-at.js';
import { reactionOf } from '../../titration/points/reaction.js';
import {
  chargeOfState,
  type StoichiometricVolume,
  stepsPresent,
  stoichiometricVolumes,
} from '../../titration/points/stoichiometric-volumes.js';
import { titrationLimits } from '../../titration/titration-limits.js';
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
 * The equivalence points at some values of the parameters, as far as a titration goes, and how each moves with them. By (1) of
 * stoichiometric-volumes.ts V = −S/T, so contents that a parameter adds, of charge D in that state, move it by
 *
 *   dV/dθ = −D/T of the flask,   −V·D/T of the titrant                                                (1)
 *
 * A running total is less by what was delivered before it began, and more by a bubble that was read.
 *
 * @internal
 */
export function fittedPoints(chemistry: Chemistry, values: Float64Array): readonly FittedPoint[] {
  const { balance, flask, titrant } = chemistryAt(chemistry, values);
  const mixture = { system: { ...chemistry.system, balance }, analyte: flask, titrant };
  const order = stepsPresent(mixture);
  const readMore = (mL: number) =>
    chemistry.parameters.map(({ moves }) => {
      if (moves.what === 'initialVolume') return -1;
      return moves.what === 'bubble' && mL > moves.after ? 1 : 0;
    });
  const gradientOf = ({ mL, states }: StoichiometricVolume) => {
    const done = order.slice(0, states[0]);
    const perMl = chargeOfState(doubles, titrant, balance.families, done);
    const ofBurette = readMore(mL);
    return chemistry.moves.map((move, j) => {
      if (!move || move.what === 'pKa') return numberAt(ofBurette, j);
      const added = chargeOfState(doubles, move.column, balance.families, done);
      return -(move.what === 'titrant' ? mL * added : added) / perMl;
    });
  };
  return stoichiometricVolumes(mixture, order)
    .filter(({ mL }) => mL > 0 && mL <= titrationLimits.mL)
    .map((point) => ({
      reaction: reactionOf(mixture, order, point.states, point.acid),
      mL: readMore(point.mL).reduce((total, more, j) => total + more * numberAt(values, j), point.mL),
      gradient: gradientOf(point),
    }));
}
