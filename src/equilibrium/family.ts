import { doubles } from '../solver/arithmetic.js';
import { numberAt } from '../solver/number-at.js';
import type { Protolyte } from '../substance/protolyte.js';
import { sharesOf } from './shares.js';

/**
 * The constants of one protolyte, made ready for evaluation at many hydrogen-ion concentrations.
 *
 * Both K and 1/K are kept, each rounded once from the pKa: a species to the acid side needs h/K, one to the base side
 * K/h.
 */
export interface Family {
  /** Charge of the most protonated species. */
  readonly topCharge: number;
  /** Stepwise acidity constants, mol/L. */
  readonly constants: Float64Array;
  /** Their reciprocals. */
  readonly reciprocals: Float64Array;
  /** Whether every constant is smaller than the one before it, as in nearly all protolytes. */
  readonly inOrder: boolean;
}

/** The constants of a protolyte as a family. @internal */
export function familyOf({ species, steps }: Protolyte): Family {
  return {
    topCharge: species[0]?.charge ?? 0,
    constants: Float64Array.from(steps, ({ pKa }) => 10 ** -pKa),
    reciprocals: Float64Array.from(steps, ({ pKa }) => 10 ** pKa),
    inOrder: steps.every(
      ({ pKa }, step) => step === 0 || pKa >= (steps[step - 1] as (typeof steps)[number]).pKa,
    ),
  };
}

/**
 * How many protons the prevailing species has lost.
 *
 * Constants in order: the steps whose K exceeds h. Out of order: the j for which K₁…K_j/h^j is greatest.
 *
 * @internal
 */
export function prevailing({ constants, inOrder }: Family, h: number): number {
  let lost = 0;
  if (inOrder) {
    while (lost < constants.length && numberAt(constants, lost) > h) lost += 1;
    return lost;
  }
  let ratio = 1; // of the species reached to the greatest so far
  for (let step = 0; step < constants.length; step += 1) {
    ratio *= numberAt(constants, step) / h;
    if (ratio > 1) {
      lost = step + 1;
      ratio = 1;
    }
  }
  return lost;
}

/** The share of each species, from most to least protonated. @internal */
export const fractionsOf = (family: Family, h: number): number[] =>
  sharesOf(doubles, family.constants, h, prevailing(family, h));
