import { equilibrate, pHOf } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { expectSpecies, expectSums, type SystemCase } from './expect-species.js';
import { casesOf, solutionOf, tolerance } from './vectors.js';

/** Group A, all 200: vectors/ideal.json against a 60-digit solver of its own; tolerances as vectors/README.md derives them. */
describe.each(casesOf<SystemCase>('ideal.json'))('$id $title', (one) => {
  const { input, answer, condition } = one;
  const solution = solutionOf(input);
  const conditions = { pKw: Number(input.pKw) };
  const pH = Number(answer.pH);
  const equilibrium = equilibrate(solution, conditions);

  test('pH', () => {
    expect(Math.abs(equilibrium.pH - pH)).toBeLessThanOrEqual(tolerance(condition, pH));
    expect(pHOf(solution, conditions)).toBe(equilibrium.pH);
  });

  test('every species', () => expectSpecies(equilibrium, one));
  test('capacity and ionic strength', () => expectSums(equilibrium, one));
});
