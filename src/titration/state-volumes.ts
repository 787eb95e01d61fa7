import { type StepAt, stepsInOrder } from '../equilibrium/steps.js';
import { type Arithmetic, doubles } from '../solver/arithmetic.js';
import { type Engine, titrantIsAcid } from './engine.js';

/** A volume at which a state is neutral without free H+ or OH-; `states`: numbers of steps done, several where they tie. */
export interface StateVolume {
  readonly mL: number;
  readonly states: readonly number[];
}

/** The steps of all protolytes that are really there, in the order in which protons leave. @internal */
export function stepsPresent({ analyte, titrant, setting }: Engine): StepAt[] {
  const there = (family: number) =>
    (analyte.amounts[family] as number) > 0 || (titrant.amounts[family] as number) > 0;
  return stepsInOrder(setting.balance.families.map(({ constants }) => constants)).filter(({ family }) =>
    there(family),
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
    (total, { topCharge }, i) => plus(total, times(amounts[i] as N, of(topCharge - (lost[i] as number)))),
    charge,
  );
}

/**
 * The volumes of all whole states, in ascending order, those at V ≤ 0 too: the half-way points need them.
 *
 * State k has the first k of the ordered steps done and none of the rest. With S_k and T_k the charge of the analyte (mmol)
 * and of one mL of titrant in that state,
 *
 *   S_k + V·T_k = 0,   so V_k = −S_k/T_k                                                            (1)
 *
 * A state that is neutral at no volume (T_k = 0) or at every one (0/0) gives none. Of those at V < 0 only the ones before the
 * analyte count: where T_k has not the sign of the titrant's charge at the start of the curve, the state lies beyond the titrant
 * itself and is no point's neighbour. Nothing is read off the curve.
 *
 * @internal
 */
export function stateVolumes(engine: Engine, order: readonly StepAt[]): StateVolume[] {
  const { analyte, titrant } = engine;
  const { families } = engine.setting.balance;
  const acid = titrantIsAcid(engine);
  const volumes: { mL: number; state: number }[] = [];
  for (let state = 0; state <= order.length; state += 1) {
    const done = order.slice(0, state);
    const perMl = chargeOfState(doubles, titrant, families, done);
    const mL = -chargeOfState(doubles, analyte, families, done) / perMl;
    if (Number.isFinite(mL) && (mL > 0 || perMl < 0 === acid)) volumes.push({ mL, state });
  }
  return tied(volumes.sort((one, other) => one.mL - other.mL));
}

/** Volumes that differ by rounding alone are one point. */
function tied(volumes: readonly { mL: number; state: number }[]): StateVolume[] {
  const points: { mL: number; states: number[] }[] = [];
  for (const { mL, state } of volumes) {
    const last = points.at(-1);
    if (last && mL - last.mL <= 1e-12 * Math.abs(mL)) last.states.push(state);
    else points.push({ mL, states: [state] });
  }
  return points;
}
