import type { Reagent } from 'protolysis';
import type { Random } from '../../src/measurement/statistics/random.js';
import { acidWith, strongIon } from '../make.js';

/** One of the many: reagents with their concentrations, mol/L, and a pKw. */
export interface RandomSystem {
  readonly contents: readonly { readonly reagent: Reagent; readonly molar: number }[];
  readonly pKw: number;
}

/**
 * Up to four acids of up to six steps and up to three strong ions: concentrations over fifteen decades and nothing, pKa over the
 * whole range that is allowed, in order and out of it, equal ones and round ones that cancel exactly among them.
 */
export function randomSystem({ uniform }: Random): RandomSystem {
  const between = (from: number, to: number) => from + (to - from) * uniform();
  const whole = (from: number, to: number) => Math.floor(between(from, to + 1));
  const pick = (values: readonly number[]) => values[whole(0, values.length - 1)] ?? 0;
  const molar = () => (uniform() < 0.2 ? pick([0, 0.1, 0.05, 1, 1e-12, 10]) : 10 ** between(-14, 1.2));
  const pKa = () => (uniform() < 0.2 ? pick([-10, 20, 4.76, 7, 0, -1e-25]) : between(-10, 20));

  const acids = Array.from({ length: whole(0, 4) }, (_, k) => {
    const steps = Array.from({ length: whole(1, 6) }, pKa);
    const inTurn = uniform() < 0.7 ? steps.toSorted((a, b) => a - b) : steps;
    return { reagent: acidWith(`acid ${k}`, whole(-2, 4), inTurn).reagent, molar: molar() };
  });
  const ions = Array.from({ length: whole(0, 3) }, (_, k) => {
    return { reagent: strongIon(`ion ${k}`, pick([1, -1, 2, -2])), molar: molar() };
  });
  return { contents: [...acids, ...ions], pKw: uniform() < 0.5 ? 14 : between(10, 20) };
}
