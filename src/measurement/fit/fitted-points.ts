import { doubles } from '../../solver/arithmetic.js';
import { numberAt } from '../../solver/number-at.js';
import { reactionOf } from '../../titration/points/reaction.js';
import {
  chargeOfState,
  type StoichiometricVolume,
  stepsPresent,
  stoichiometricVolumes,
} from '../../titration/points/stoichiometric-volumes.js';
import { isReached } from '../../titration/titration-limits.js';
import { type Chemistry, chemistryAt } from './chemistry.js';
import { isPast } from './distortion.js';
import type { FitParameter } from './parameter-moves.js';

/** An equivalence point of a fit, as a running total. @internal */
export interface FittedPoint {
  readonly reaction: string;
  /** mL, as it would be read. */
  readonly mL: number;
  /** mL that has left the burette by then. */
  readonly poured: number;
  /** mL per unit of each parameter. */
  readonly gradient: readonly number[];
}

/**
 * The equivalence points at some values of the parameters, as far as a titration goes, and how each moves with them. By (1) of
 * stoichiometric-volumes.ts V = −S/T, so contents that a parameter adds, of charge D in that state, move it by
 *
 *   dV/dθ = −D/T of the flask,   −V·D/T of the titrant                                                (1)
 *
 * A running total is more by an initial reading that nobody subtracted, and by a bubble that was read.
 *
 * @internal
 */
export function fittedPoints(chemistry: Chemistry, values: Float64Array): readonly FittedPoint[] {
  const { balance, flask, titrant } = chemistryAt(chemistry, values);
  const mixture = { system: { ...chemistry.system, balance }, analyte: flask, titrant };
  const order = stepsPresent(mixture);
  const gradientOf = ({ mL, states }: StoichiometricVolume, ofBurette: readonly number[]) => {
    const done = order.slice(0, states[0]);
    const perMl = chargeOfState(doubles, titrant, balance.families, done);
    return chemistry.moves.map((move, j) => {
      if (!move || move.what === 'pKa') return numberAt(ofBurette, j);
      const added = chargeOfState(doubles, move.column, balance.families, done);
      return -(move.what === 'titrant' ? mL * added : added) / perMl;
    });
  };
  return stoichiometricVolumes(mixture, order)
    .filter(({ mL }) => isReached(mL))
    .map((point) => {
      const { total, gradient } = asTotal(chemistry.parameters, values, point.mL);
      const reaction = reactionOf(mixture, order, point.states, point.acid);
      return { reaction, mL: total, poured: point.mL, gradient: gradientOf(point, gradient) };
    });
}

/** A volume poured, as the total read for it: one fault of the burette after another, since a bubble leaves at a total. */
function asTotal(parameters: readonly FitParameter[], values: ArrayLike<number>, poured: number) {
  const gradient = parameters.map(() => 0);
  let total = poured;
  for (const { moves, j } of inOrder(parameters)) {
    const more = moves.what === 'initialReading' || isPast(moves, total) ? 1 : 0;
    total += more * numberAt(values, j);
    gradient[j] = more;
  }
  return { total, gradient };
}

/** The faults of the burette in the order in which they act. */
const inOrder = (parameters: readonly FitParameter[]) =>
  parameters
    .map(({ moves }, j) => ({ moves, j, after: moves.what === 'airBubble' ? moves.after : -1 }))
    .filter(({ moves }) => moves.what === 'airBubble' || moves.what === 'initialReading')
    .sort((a, b) => a.after - b.after);
