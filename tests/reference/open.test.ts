import { defineProtolyte, equilibrate, molarOf, type Source } from 'protolysis';
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
  readonly input: SystemInput & {
    readonly gas: { readonly pKa: readonly string[]; readonly pKH: string; readonly p: string };
  };
  readonly answer: {
    readonly pH: string;
    readonly gas_species: readonly string[];
    readonly beta: string;
    readonly I: string;
  };
  readonly condition: string;
}

const source: Source = { kind: 'fromMemory', note: 'an input of a mathematical test, not reference data' };

/** Group D, all 18: vectors/open.json against a 60-digit solver of its own; tolerances as vectors/README.md derives them. */
describe.each(casesOf<Case>('open.json'))('$id $title', ({ input, answer, condition }) => {
  const gas = defineProtolyte({
    id: 'carbonic',
    name: 'carbonic acid',
    species: [
      { formula: 'CO2(aq)', charge: 0 },
      { formula: 'HCO3-', charge: -1 },
      { formula: 'CO3(2-)', charge: -2 },
    ],
    steps: input.gas.pKa.map((text) => ({ pKa: Number(text), source })),
  });
  const families = input.families.map((family) => ({ ...family, ...familyReagent(family) }));
  const equilibrium = equilibrate(solutionOf(input), {
    pKw: Number(input.pKw),
    carbonDioxide: { atm: Number(input.gas.p), pKH: Number(input.gas.pKH), protolyte: gas },
  });
  const pH = Number(answer.pH);
  const all = [...families, input.gas].map(({ pKa }) =>
    pKa.reduce((sum, text) => sum + Math.abs(Number(text)), 0),
  );
  const protons = Math.max(...[...families, input.gas].map(({ pKa }) => pKa.length));
  const allowed = relativeTolerance(condition, pH, protons, [String(Math.max(...all))]);

  test('pH', () => {
    expect(Math.abs(equilibrium.pH - pH)).toBeLessThanOrEqual(tolerance(condition, pH));
  });

  test('the gas and its ions', () => {
    const pKs = [...input.gas.pKa, input.gas.pKH];
    for (const [lost, text] of answer.gas_species.entries()) {
      const reference = Number(text);
      const near = relativeTolerance(condition, pH, lost, pKs);
      const { formula } = gas.species[lost] as (typeof gas.species)[number];
      expect(Math.abs(molarOf(equilibrium, gas, formula) - reference)).toBeLessThanOrEqual(near * reference);
    }
  });

  test('capacity and ionic strength', () => {
    expect(Math.abs(equilibrium.bufferCapacity / Number(answer.beta) - 1)).toBeLessThanOrEqual(allowed);
    expect(Math.abs(equilibrium.ionicStrength / Number(answer.I) - 1)).toBeLessThanOrEqual(allowed);
  });
});
