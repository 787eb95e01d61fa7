import { takeBends } from '../../equilibrium/activity/coefficients.js';
import { compensatingChange, type Direction } from '../../equilibrium/activity/compensating-change.js';
import { emptyIonMoments, ionMomentsAt } from '../../equilibrium/activity/ion-moments.js';
import type { IonColumn, RealSystem } from '../../equilibrium/activity/real-system.js';
import { secondDerivativesAlong } from '../../equilibrium/activity/second-derivatives.js';
import type { RealState } from '../../equilibrium/activity/self-consistent.js';

/** What is in the beaker, and its first and second derivative with respect to the volume of titrant, mL. */
export interface MovingColumn {
  readonly column: IonColumn;
  readonly first: IonColumn;
  /** null where the column is linear in the volume. */
  readonly second: IonColumn | null;
}

/**
 * How a solved state moves with the volume of titrant, per mL.
 *
 * With x = (ln a, I) and G = (net charge, strength − I·V) of the mixture, G(x, V) = 0 (self-consistent.ts). Let T be
 * what one more mL adds to G at fixed x, and M = ∂G/∂x:
 *
 *   x′ = −M⁻¹·T                                                                                      (1)
 *
 * @param state - solved for this column, with the coefficients of `real` taken there
 * @internal
 */
export function firstDerivatives(
  real: RealSystem,
  state: RealState,
  { volume }: IonColumn,
  first: IonColumn,
): Direction {
  const { net, strength } = ionMomentsAt(real, first, state.h, emptyIonMoments());
  return compensatingChange(state.moments, volume, net, strength - state.ionicStrength * first.volume);
}

/**
 * The second derivatives, per mL². With M_T = ∂T/∂x,
 *
 *   x″ = −M⁻¹·(2·M_T·x′ + G_xx[x′, x′] + G_VV)                                                       (2)
 *
 * @param slope - x′ of (1)
 * @internal
 */
export function secondDerivatives(
  real: RealSystem,
  state: RealState,
  { column, first, second }: MovingColumn,
  slope: Direction,
): Direction {
  takeBends(real.coefficients);
  const added = ionMomentsAt(real, first, state.h, emptyIonMoments());
  const alongState = secondDerivativesAlong(real, column, state.h, slope);
  const alongVolume = second ? ionMomentsAt(real, second, state.h, emptyIonMoments()) : emptyIonMoments();
  const mixed = {
    net: added.zz * slope.activity - Math.LN10 * added.zl * slope.strength,
    strength: (added.zs / 2) * slope.activity - ((Math.LN10 / 2) * added.sl + first.volume) * slope.strength,
  };
  return compensatingChange(
    state.moments,
    column.volume,
    2 * mixed.net + alongState.net + alongVolume.net,
    2 * mixed.strength + alongState.strength + alongVolume.strength,
  );
}
