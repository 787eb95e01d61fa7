import type { IonMoments } from './ion-moments.js';

/** A direction in which a state moves: d ln a of H+ and dI, mol/L. */
export interface Direction {
  readonly activity: number;
  readonly strength: number;
}

/**
 * The change of ln a and I that compensates an error in net charge and ionic strength, both as amounts, like the
 * moments.
 *
 *   M·x = −(net, strength),   M = ∂(net charge, strength − I·V)/∂(ln a, I)        by ion-moments.ts (1) and (2)
 *
 * det M is negative wherever the smallest root exists.
 *
 * @internal
 */
export function compensatingChange(
  { zz, zs, zl, sl }: IonMoments,
  volume: number,
  net: number,
  strength: number,
): Direction & { readonly determinant: number } {
  const ofI = -Math.LN10 * zl;
  const strengthOfI = -(Math.LN10 / 2) * sl - volume;
  const determinant = zz * strengthOfI - (ofI * zs) / 2;
  return {
    activity: -(net * strengthOfI - strength * ofI) / determinant,
    strength: -(zz * strength - (net * zs) / 2) / determinant,
    determinant,
  };
}
