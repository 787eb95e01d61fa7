import type { IonColumn } from '../../equilibrium/activity/real-system.js';
import type { Family } from '../../equilibrium/family.js';
import { type StepAt, stepsInOrder } from '../../equilibrium/steps-in-order.js';
import { type Arithmetic, doubles } from '../../solver/arithmetic.js';
import { numberAt } from '../../solver/number-at.js';
import type { MixtureModel } from '../model/mixture-model.js';

/** A volume at which a state is neutral without free H+ or OH-. */
export interface StoichiometricVolume {
  readonly mL: number;
  /** How many steps are done; several where they tie. */
  readonly states: readonly number[];
  /** Whether the titrant acts as an acid there: its charge in the state, T_k, is below zero. */
  readonly acid: boolean;
}

/** The steps of all protolytes that are really there, in the order in which protons leave. @internal */
export function stepsPresent({ analyte, titrant, system }: MixtureModel): StepAt[] {
  const isPresent = (family: number) =>
    numberAt(analyte.amounts, family) > 0 || numberAt(titrant.amounts, family) > 0;
  return stepsInOrder(system.balance.families.map(({ constants }) => constants)).filter(({ family }) =>
    isPresent(family),
  );
}

/** Net charge with these steps done and no others, and no free H+ or OH-. @internal */
export function chargeOfState<N>(
  { of, plus, times }: Arithmetic<N>,
  { charge, amounts }: { readonly charge: N; readonly amounts: ArrayLike<N> },
  families: readonly { readonly topCharge: number }[],
  done: readonly StepAt[],
): N {
  const lost = families.map((_, i) => done.filter(({ family }) => family === i).length);
  return families.reduce(
    (total, { topCharge }, i) => plus(total, times(amounts[i] as N, of(topCharge - numberAt(lost, i)))),
    charge,
  );
}

/**
 * The volumes of all whole states, in ascending order, those at V ≤ 0 too: the half-way points need them.
 *
 * State k has the first k of the ordered steps done and none of the rest. With S_k and T_k the charge of the analyte
 * (mmol) and of one mL of titrant in that state,
 *
 *   S_k + V·T_k = 0,   so V_k = −S_k/T_k                                                            (1)
 *
 * A state that is neutral at no volume (T_k = 0) or at every volume (0/0) gives none. T_k falls with k, and
 * neighbouring points on a curve have T_k of one sign: at V ≤ 0 a state of the other sign lies beyond the titrant
 * itself and is left out. The curve itself is not used.
 *
 * @internal
 */
export function stoichiometricVolumes(
  { analyte, titrant, system }: MixtureModel,
  order: readonly StepAt[],
): StoichiometricVolume[] {
  const { families } = system.balance;
  const volumes: { mL: number; state: number; acid: boolean }[] = [];
  for (let state = 0; state <= order.length; state += 1) {
    const done = order.slice(0, state);
    const perMl = chargeBeyondRounding(titrant, families, done);
    const mL = -chargeBeyondRounding(analyte, families, done) / perMl;
    if (Number.isFinite(mL)) volumes.push({ mL, state, acid: perMl < 0 });
  }
  const sides = new Set(volumes.filter(({ mL }) => mL > 0).map(({ acid }) => acid));
  return tied(volumes.filter(({ acid }) => sides.has(acid)).sort((first, second) => first.mL - second.mL));
}

/**
 * The charge of a state, and zero where its terms cancel to their last digits: phosphoric acid with three parts of
 * sodium hydroxide is at its last point, not 1e-15 mL before it. An amount has been rounded a few times before; 32
 * roundings are allowed.
 *
 * @internal
 */
export function chargeBeyondRounding(
  column: IonColumn,
  families: readonly Family[],
  done: readonly StepAt[],
): number {
  const net = chargeOfState(doubles, column, families, done);
  const { amounts, squares } = column; // Σ n·z² of the ions is no less than Σ n·|z|
  const size = families.reduce(
    (total, { topCharge, constants }, i) =>
      total + numberAt(amounts, i) * Math.max(Math.abs(topCharge), Math.abs(topCharge - constants.length)),
    squares,
  );
  return Math.abs(net) <= 32 * 2 ** -53 * size ? 0 : net;
}

/** Volumes that differ by rounding alone are one point. */
function tied(volumes: readonly { mL: number; state: number; acid: boolean }[]): StoichiometricVolume[] {
  const points: { mL: number; states: number[]; acid: boolean }[] = [];
  for (const { mL, state, acid } of volumes) {
    const last = points.at(-1);
    if (last && mL - last.mL <= 1e-12 * Math.abs(mL)) last.states.push(state);
    else points.push({ mL, states: [state], acid });
  }
  return points;
}
