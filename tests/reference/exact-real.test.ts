import { defineProtolyte, type Source } from 'protolysis';
import { davies, exactEquilibrium, exactPH, makeSolution } from 'protolysis/exact';
import { describe, expect, test, vi } from 'vitest';
import { strongIon } from '../make.js';
import { expectPrinted, solutionOf } from './printed-25.js';
import { casesOf, type SystemInput } from './vectors.js';

vi.setConfig({ testTimeout: 60_000 });

interface Answer {
  readonly pH: string;
  readonly species: readonly { readonly name: string; readonly C: readonly string[] }[];
  readonly beta: string;
  readonly I: string;
}

describe.each(
  casesOf<{ id: string; title: string; input: SystemInput; answer: Answer & { gamma1: string } }>(
    'davies.json',
  ),
)('with Davies, $id $title', ({ input, answer }) => {
  const equilibrium = exactEquilibrium(solutionOf(input), { pKw: input.pKw, activity: davies, digits: 30 });

  test('every number to the 25 digits printed, and proven to be of the least ionic strength', () => {
    const { pH, ionicStrength, bufferCapacity, species, proven } = equilibrium;
    expectPrinted(pH, answer.pH);
    expectPrinted(ionicStrength, answer.I);
    expectPrinted(bufferCapacity, answer.beta);
    for (const { name, C } of answer.species)
      for (const [lost, { molar }] of species.filter(({ protolyteId }) => protolyteId === name).entries())
        expectPrinted(molar, C[lost] as string);
    const [hydrogen] = species;
    if (hydrogen) expectPrinted(hydrogen.activity.div(hydrogen.molar), answer.gamma1);
    expect(proven).toBe('least');
  });
});

const source: Source = { kind: 'fromMemory', note: 'an input of a mathematical test, not reference data' };

describe.each(
  casesOf<{
    id: string;
    title: string;
    input: SystemInput & { gas: { pKa: string[]; pKH: string; p: string } };
    answer: Answer & { gas_species: string[] };
  }>('open.json'),
)('open to carbon dioxide, $id $title', ({ input, answer }) => {
  test('every number to the 25 digits printed', () => {
    const protolyte = defineProtolyte({
      id: 'carbonic',
      name: 'carbonic acid',
      species: ['CO2(aq)', 'HCO3-', 'CO3(2-)'].map((formula, lost) => ({ formula, charge: -lost })),
      steps: input.gas.pKa.map((text) => ({ pKa: Number(text), source })),
    });
    const { pH, ionicStrength, bufferCapacity, species, proven } = exactEquilibrium(solutionOf(input), {
      pKw: input.pKw,
      carbonDioxide: { atm: input.gas.p, pKH: input.gas.pKH, protolyte },
      digits: 30,
    });
    expectPrinted(pH, answer.pH);
    expectPrinted(ionicStrength, answer.I);
    expectPrinted(bufferCapacity, answer.beta);
    const ofGas = species.filter(({ protolyteId }) => protolyteId === 'carbonic');
    for (const [lost, text] of answer.gas_species.entries())
      expectPrinted((ofGas[lost] as (typeof ofGas)[number]).molar, text);
    for (const { name, C } of answer.species)
      for (const [lost, { molar }] of species.filter(({ protolyteId }) => protolyteId === name).entries())
        expectPrinted(molar, C[lost] as string);
    expect(proven).toBe('only');
  });
});

describe.each(
  casesOf<{
    id: string;
    title: string;
    kind: string;
    input: SystemInput & { target_pH: string; activity: string };
    answer: { reagent: string; amount: string };
  }>('inverse.json').filter(({ kind }) => kind === 'addition'),
)('$id $title', ({ input, answer }) => {
  test('the addition printed brings the solution to its pH', () => {
    const reagent = strongIon('added', answer.reagent.includes('acid') ? -1 : 1);
    const contents = [...solutionOf(input).contents, { reagent, molar: answer.amount }];
    const { pH } = exactPH(makeSolution({ contents }), {
      pKw: input.pKw,
      ...(input.activity === 'davies' && { activity: davies }),
      digits: 30,
    });
    expect(pH.minus(input.target_pH).abs().toNumber()).toBeLessThan(1e-20);
  });
});
