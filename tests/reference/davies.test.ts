import { davies, equilibrate, pHOf } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { expectSpecies, expectSums, type SystemCase } from './expect-species.js';
import { casesOf, type SystemInput, solutionOf, tolerance } from './vectors.js';

/** Group C, all 60: vectors/davies.json against a solver of its own; tolerances as vectors/README.md derives them. */
describe.each(casesOf<SystemCase>('davies.json'))('$id $title', (one) => {
  const { input, answer, condition } = one;
  const solution = solutionOf(input);
  const conditions = { pKw: Number(input.pKw), activity: davies };
  const pH = Number(answer.pH);
  const equilibrium = equilibrate(solution, conditions);

  test('pH', () => {
    expect(Math.abs(equilibrium.pH - pH)).toBeLessThanOrEqual(tolerance(condition, pH));
    expect(pHOf(solution, conditions)).toBe(equilibrium.pH);
    const pcH = -Math.log10(Number(answer.H));
    expect(Math.abs(equilibrium.pcH - pcH)).toBeLessThanOrEqual(tolerance(condition, pcH));
  });

  test('every species', () => expectSpecies(equilibrium, one));
  test('capacity and ionic strength', () => expectSums(equilibrium, one));
});

interface Addition {
  readonly id: string;
  readonly title: string;
  readonly kind: string;
  readonly input: SystemInput & { readonly target_pH: string; readonly activity: string };
  readonly answer: { readonly reagent: string; readonly amount: string };
  readonly condition: string;
}

/** Group E, the additions with activity, put back: the amount given reaches the pH asked for. */
describe.each(
  casesOf<Addition>('inverse.json').filter(
    ({ kind, input }) => kind === 'addition' && input.activity === 'davies',
  ),
)('$id $title', ({ input, answer, condition }) => {
  test('reaches its pH', () => {
    const ion = answer.reagent === 'strong base' ? { name: 'added+', z: 1 } : { name: 'added-', z: -1 };
    const solution = solutionOf({
      ...input,
      strong_ions: [...input.strong_ions, { ...ion, C: answer.amount }],
    });
    const { pH, bufferCapacity } = equilibrate(solution, { pKw: Number(input.pKw), activity: davies });
    const target = Number(input.target_pH);
    // The tolerance of an amount, over the capacity, and the rounding of a pH.
    const allowed = tolerance(condition, 0) / bufferCapacity + 4 * 2.3e-16 * target;
    expect(Math.abs(pH - target)).toBeLessThanOrEqual(allowed);
  });
});
