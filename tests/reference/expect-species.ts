import { type Equilibrium, molarOf } from 'protolysis';
import { expect } from 'vitest';
import { familyReagent, relativeTolerance, type SystemInput } from './vectors.js';

/** What groups A and C say of a system. */
interface Answer {
  readonly pH: string;
  readonly H: string;
  readonly species: readonly { readonly name: string; readonly C: readonly string[] }[];
  readonly beta: string;
  readonly I: string;
}

export interface SystemCase {
  readonly id: string;
  readonly title: string;
  readonly input: SystemInput;
  readonly answer: Answer;
  readonly condition: string;
}

/** Every species within the tolerance of vectors/README.md for its distance from the prevailing one. */
export function expectSpecies(equilibrium: Equilibrium, { input, answer, condition }: SystemCase): void {
  for (const [index, { name, C }] of answer.species.entries()) {
    const family = input.families[index] as (typeof input.families)[number];
    const { protolyte } = familyReagent(family);
    expect(protolyte.id).toBe(name);
    const prevailing = C.reduce((best, text, j) => (Number(text) > Number(C[best]) ? j : best), 0);
    for (const [lost, text] of C.entries()) {
      const reference = Number(text);
      const formula = protolyte.species[lost]?.formula ?? '';
      const allowed = relativeTolerance(
        condition,
        Number(answer.pH),
        Math.abs(lost - prevailing),
        family.pKa,
      );
      expect(Math.abs(molarOf(equilibrium, protolyte, formula) - reference)).toBeLessThanOrEqual(
        allowed * reference,
      );
    }
  }
}

/** Capacity and ionic strength within the tolerance of vectors/README.md. */
export function expectSums(equilibrium: Equilibrium, { input, answer, condition }: SystemCase): void {
  const protons = Math.max(1, ...input.families.map(({ pKa }) => pKa.length));
  const sums = input.families.map(({ pKa }) => pKa.reduce((sum, text) => sum + Math.abs(Number(text)), 0));
  const allowed = relativeTolerance(condition, Number(answer.pH), protons, [String(Math.max(0, ...sums))]);
  expect(Math.abs(equilibrium.bufferCapacity / Number(answer.beta) - 1)).toBeLessThanOrEqual(allowed);
  expect(Math.abs(equilibrium.ionicStrength / Number(answer.I) - 1)).toBeLessThanOrEqual(allowed);
}
