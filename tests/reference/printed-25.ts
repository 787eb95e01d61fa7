import type { Decimal } from 'decimal.js';
import { type ExactSolution, makeSolution } from 'protolysis/exact';
import { expect } from 'vitest';
import { strongIon } from '../make.js';
import { familyReagent, type SystemInput } from './vectors.js';

// The vectors print 25 digits of answers worked out to 60 by another route; what is left is the rounding of the last.

/** Whether a decimal is the one printed, to half a unit of the 25th digit and the rounding of our own last. */
export function expectPrinted(value: Decimal, printed: string): void {
  if (Number(printed) === 0) {
    expect(value.isZero()).toBe(true);
    return;
  }
  const unit = value
    .div(value)
    .times(10)
    .pow(value.e - 24);
  expect(value.minus(printed).abs().lte(unit.times('0.501')), `${value} for ${printed}`).toBe(true);
}

/** A system as an exact solution of one litre. */
export const solutionOf = ({ families, strong_ions }: SystemInput): ExactSolution =>
  makeSolution({
    contents: [
      ...families.map((family) => ({ reagent: familyReagent(family).reagent, molar: family.C })),
      ...strong_ions.map(({ name, z, C }) => ({ reagent: strongIon(name, z), molar: C })),
    ],
  });
