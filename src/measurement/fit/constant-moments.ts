import { type Family, fractionsOf } from '../../equilibrium/family.js';
import { numberAt } from '../../solver/number-at.js';

/** What a constant moves at a fixed hydrogen-ion concentration, per mmol of its protolyte. @internal */
export interface ConstantMoments {
  /** dλ/d ln K, λ the mean number of protons lost. */
  readonly lost: number;
  /** ½ d⟨z²⟩/d ln K. */
  readonly strength: number;
}

/**
 * With α_j the share of the form that lost j protons and P = Σ_(j ≥ s) α_j of those past step s, dα_j/d ln K_s =
 * α_j·([j ≥ s] − P), so for any property x of the forms
 *
 *   d⟨x⟩/d ln K_s = Σ_(j ≥ s) α_j·x_j − P·⟨x⟩                                                        (1)
 *
 * Derived here.
 *
 * @param step - from 0
 * @internal
 */
export function constantMoments(family: Family, h: number, step: number): ConstantMoments {
  const shares = fractionsOf(family, h);
  const past = { share: 0, lost: 0, squares: 0 };
  const all = { lost: 0, squares: 0 };
  for (let j = 0; j < shares.length; j += 1) {
    const share = numberAt(shares, j);
    const squares = (family.topCharge - j) ** 2;
    all.lost += share * j;
    all.squares += share * squares;
    if (j <= step) continue;
    past.share += share;
    past.lost += share * j;
    past.squares += share * squares;
  }
  return {
    lost: past.lost - past.share * all.lost,
    strength: (past.squares - past.share * all.squares) / 2,
  };
}
