import { davies, equilibrate, molarOf, pHOf } from 'protolysis';
import { describe, expect, test } from 'vitest';
import {
  casesOf,
  familyReagent,
  relativeTolerance,
  type SystemInput,
  solutionOf,
  tolerance,
} from './vectors.js';

interface Case {
  readonly id: string;
  readonly title: string;
  readonly input: SystemInput;
  readonly answer: {
    readonly pH: string;
    readonly H: string;
    readonly species: readonly { readonly name: string; readonly C: readonly string[] }[];
    readonly beta: string;
    readonly I: string;
  };
  readonly condition: string;
}

/** Group C, all 60: vectors/davies.json against a solver of its own; tolerances as vectors/README.md derives them. */
describe.each(casesOf<Case>('davies.json'))('$id $title', ({ input, answer, condition }) => {
  const families = input.families.map((family) => ({ ...family, ...familyReagent(family) }));
  const solution = solutionOf(input);
  const conditions = { pKw: Number(input.pKw), activity: davies };
  const pH = Number(answer.pH);
  const equilibrium = equilibrate(solution, conditions);
  const protons = Math.max(1, ...families.map(({ pKa }) => pKa.length));
  const sums = families.map(({ pKa }) => pKa.reduce((sum, text) => sum + Math.abs(Number(text)), 0));
  const allowed = relativeTolerance(condition, pH, protons, [String(Math.max(0, ...sums))]);

  test('pH', () => {
    expect(Math.abs(equilibrium.pH - pH)).toBeLessThanOrEqual(tolerance(condition, pH));
    expect(pHOf(solution, conditions)).toBe(equilibrium.pH);
    const pcH = -Math.log10(Number(answer.H));
    expect(Math.abs(equilibrium.pcH - pcH)).toBeLessThanOrEqual(tolerance(condition, pcH));
  });

  test('every species', () => {
    for (const [index, { name, C }] of answer.species.entries()) {
      const { protolyte, pKa } = families[index] as (typeof families)[number];
      expect(protolyte.id).toBe(name);
      const prevailing = C.reduce((best, text, j) => (Number(text) > Number(C[best]) ? j : best), 0);
      for (const [lost, text] of C.entries()) {
        const reference = Number(text);
        const formula = protolyte.species[lost]?.formula ?? '';
        const near = relativeTolerance(condition, pH, Math.abs(lost - prevailing), pKa);
        expect(Math.abs(molarOf(equilibrium, protolyte, formula) - reference)).toBeLessThanOrEqual(
          near * reference,
        );
      }
    }
  });

  test('ionic strength', () => {
    expect(Math.abs(equilibrium.ionicStrength / Number(answer.I) - 1)).toBeLessThanOrEqual(allowed);
  });

  test('capacity', () => {
    expect(Math.abs(equilibrium.bufferCapacity / Number(answer.beta) - 1)).toBeLessThanOrEqual(allowed);
  });
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
