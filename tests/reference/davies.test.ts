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
