import { davies, equilibrate, pHOf } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { expectSpecies, expectSums, type SystemCase } from './expect-species.js';
import { casesOf, solutionOf, tolerance } from './vectors.js';

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
