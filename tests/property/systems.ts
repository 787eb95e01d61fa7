import fc from 'fast-check';
import type { FamilyInput } from '../reference/vectors.js';

/** A random make-up: protolytes of any charge and order of constants, down to traces, and strong ions. */
export interface System {
  readonly pKw: number;
  readonly families: readonly (FamilyInput & { readonly molar: number })[];
  readonly ions: readonly { readonly formula: string; readonly charge: number; readonly molar: number }[];
}

/** Numbers of few digits, all as likely: fast-check's own doubles crowd about zero. */
const evenly = (from: number, to: number) =>
  fc.integer({ min: from * 1e6, max: to * 1e6 }).map((n) => n / 1e6);

/** Concentrations over twelve decades, nothing, and round numbers that cancel exactly. */
const molar = fc.oneof(
  { weight: 4, arbitrary: evenly(-12, 1).map((log) => 10 ** log) },
  { weight: 1, arbitrary: fc.constantFrom(0, 0.1, 0.05, 1, 1e-12, 10) },
);

/** Within protolyteLimits; equal, close and out of order included. */
const pKa = fc.oneof(
  { weight: 4, arbitrary: evenly(-2, 16) },
  { weight: 1, arbitrary: fc.constantFrom(-10, 20, 4.76, 4.76, 7, 7, 0, -1e-25) },
);

export const systems: fc.Arbitrary<System> = fc
  .record({
    pKw: fc.oneof(fc.constant(14), evenly(10, 20)),
    families: fc.array(
      fc.record({
        z0: fc.integer({ min: -2, max: 4 }),
        pKa: fc.array(pKa, { minLength: 1, maxLength: 6 }),
        inOrder: fc.boolean(),
        molar,
      }),
      { minLength: 1, maxLength: 4 },
    ),
    ions: fc.array(fc.record({ charge: fc.constantFrom(1, -1, 2, -2), molar }), { maxLength: 3 }),
  })
  .map(({ pKw, families, ions }) => ({
    pKw,
    families: families.map(({ z0, pKa: constants, inOrder, molar: total }, i) => ({
      name: `family ${i}`,
      z0,
      pKa: (inOrder ? constants.toSorted((a, b) => a - b) : constants).map(String),
      molar: total,
    })),
    ions: ions.map((ion, i) => ({ ...ion, formula: `ion ${i}` })),
  }));
