import type { IonMoments } from './ion-moments.js';

/** A direction in which a state moves: d ln a of H+ and dI, mol/L. */
export interface Direction {
  readonly activity: number;
  readonly strength: number;
}

/**
 * The change of ln a and I that makes up for what net charge and ionic strength (amount, like the moments) are off by.
 *
 *   M·x = −(net, strength),   M = ∂(net charge, strength − I·V)/∂(ln a, I)        by ion-moments.ts (1) and (2)
 *
 * det M is negative wherever the least root has not ceased to exist.
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
