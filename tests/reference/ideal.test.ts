import { equilibrate, molarOf, pHOf } from 'protolysis';
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
    readonly OH: string;
    readonly species: readonly { readonly name: string; readonly C: readonly string[] }[];
    readonly beta: string;
    readonly I: string;
  };
  readonly condition: string;
}

/** Group A, all 200: vectors/ideal.json against a 60-digit solver of its own; tolerances as vectors/README.md derives them. */
describe.each(casesOf<Case>('ideal.json'))('$id $title', ({ input, answer, condition }) => {
  const families = input.families.map((family) => ({ ...family, ...familyReagent(family) }));
  const solution = solutionOf(input);
  const conditions = { pKw: Number(input.pKw) };
  const pH = Number(answer.pH);
  const equilibrium = equilibrate(solution, conditions);

  test('pH', () => {
    expect(Math.abs(equilibrium.pH - pH)).toBeLessThanOrEqual(tolerance(condition, pH));
    expect(pHOf(solution, conditions)).toBe(equilibrium.pH);
  });

  test('every species', () => {
    for (const [index, { name, C }] of answer.species.entries()) {
      const { protolyte, pKa } = families[index] as (typeof families)[number];
      expect(protolyte.id).toBe(name);
      const prevailing = C.reduce((best, text, j) => (Number(text) > Number(C[best]) ? j : best), 0);
      for (const [lost, text] of C.entries()) {
        const reference = Number(text);
        const formula = protolyte.species[lost]?.formula ?? '';
        const allowed = relativeTolerance(condition, pH, Math.abs(lost - prevailing), pKa);
        expect(Math.abs(molarOf(equilibrium, protolyte, formula) - reference)).toBeLessThanOrEqual(
          allowed * reference,
        );
      }
    }
  });

  test('capacity and ionic strength', () => {
    const protons = Math.max(1, ...families.map(({ pKa }) => pKa.length));
    const sums = families.map(({ pKa }) => pKa.reduce((sum, text) => sum + Math.abs(Number(text)), 0));
    const allowed = relativeTolerance(condition, pH, protons, [String(Math.max(0, ...sums))]);
    expect(Math.abs(equilibrium.bufferCapacity / Number(answer.beta) - 1)).toBeLessThanOrEqual(allowed);
    expect(Math.abs(equilibrium.ionicStrength / Number(answer.I) - 1)).toBeLessThanOrEqual(allowed);
  });
});
