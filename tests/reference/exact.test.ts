import type { Decimal } from 'decimal.js';
import { compareWithExact, exactEquilibrium, exactPH, exactTitration, makeSolution } from 'protolysis/exact';
import { describe, expect, test, vi } from 'vitest';
import { strongIon } from '../make.js';
import { expectPrinted, solutionOf } from './printed-25.js';
import {
  casesOf,
  familyReagent,
  type SystemInput,
  type TitrationInput,
  titrationOf as titrationInDoubles,
} from './vectors.js';

vi.setConfig({ testTimeout: 120_000 }); // 1700 equilibria to 40 digits: half a minute

function titrationOf({ pKw, V0, families, strong_ions }: TitrationInput) {
  const side = (mL: string, key: 'C_sample' | 'C_titrant') =>
    makeSolution({
      mL,
      contents: [
        ...families.map((family) => ({ reagent: familyReagent(family).reagent, molar: family[key] })),
        ...strong_ions.map((ion) => ({ reagent: strongIon(ion.name, ion.z), molar: ion[key] })),
      ],
    });
  return exactTitration(
    { analyte: side(V0, 'C_sample'), titrant: side('1000', 'C_titrant'), conditions: { pKw } },
    { digits: 40 },
  );
}

describe('group A to the 25 digits printed', () => {
  const cases = casesOf<{
    id: string;
    input: SystemInput;
    answer: {
      pH: string;
      species: { name: string; C: string[] }[];
      beta: string;
      I: string;
    };
    condition: string;
  }>('ideal.json');

  test('every pH', () => {
    expect(cases.length).toBe(200);
    for (const { input, answer } of cases)
      expectPrinted(exactPH(solutionOf(input), { pKw: input.pKw, digits: 40 }).pH, answer.pH);
  });

  test('every species, buffer capacity and ionic strength', () => {
    for (const { input, answer } of cases) {
      const { species, bufferCapacity, ionicStrength } = exactEquilibrium(solutionOf(input), {
        pKw: input.pKw,
        digits: 30,
      });
      expectPrinted(bufferCapacity, answer.beta);
      expectPrinted(ionicStrength, answer.I);
      for (const { name, C } of answer.species) {
        const own = species.filter(({ protolyteId }) => protolyteId === name);
        expect(own.length).toBe(C.length);
        for (const [lost, { molar }] of own.entries()) expectPrinted(molar, C[lost] as string);
      }
    }
  });

  // the README of the vectors defines the condition; the limit adds the rounding of the pH itself
  test('the conditioning limit is the one that the vectors give', () => {
    for (const { id, input, answer, condition } of cases) {
      const { limit, inLimits } = compareWithExact(solutionOf(input), { pKw: input.pKw });
      const expected = Number(condition) + 2.3e-16 * Math.max(1, Math.abs(Number(answer.pH)));
      expect(limit / expected, id).toBeGreaterThan(0.995); // three digits are printed
      const nearZero = input.families.some(({ pKa }) => pKa.some((pK) => Math.abs(Number(pK)) < 0.44));
      if (!nearZero) expect(limit / expected, id).toBeLessThan(1.005);
      expect(inLimits).toBeLessThanOrEqual(4);
    }
  });
});

describe.each(
  casesOf<{
    id: string;
    title: string;
    input: TitrationInput;
    points: { V: string; pH: string; dpH_dV: string }[];
    equivalence: { V: string }[];
  }>('titrations.json'),
)('$id $title to the 25 digits printed', ({ input, points, equivalence }) => {
  const titration = titrationOf(input);

  test('every pH', () => {
    for (const { V, pH } of points) expectPrinted(titration.pHAt(V).pH, pH);
  });

  test('slopes', () => {
    for (const { V, dpH_dV } of points.filter((_, k) => k % 4 === 0))
      expectPrinted(titration.slopeAt(V), dpH_dV);
  });

  test('every equivalence volume', () => {
    const found = titration.equivalencePoints.map(({ mL }) => numberOf(mL));
    for (const { V } of equivalence)
      expect(
        found.some((mL) => Math.abs(mL / Number(V) - 1) < 1e-14),
        V,
      ).toBe(true);
    const inDoubles = titrationInDoubles(input).equivalencePoints.map(({ mL }) => mL);
    expect(found.length).toBe(inDoubles.length);
    for (const [k, mL] of inDoubles.entries())
      expect(Math.abs(mL / (found[k] as number) - 1)).toBeLessThan(1e-14);
  });
});

describe.each(
  casesOf<{
    id: string;
    title: string;
    kind: string;
    input: TitrationInput & { target_pH: string };
    answer: { V: string };
  }>('inverse.json').filter(({ kind }) => kind === 'volume'),
)('$id $title to the 25 digits printed', ({ input, answer }) => {
  test('volume at a pH', () => {
    const volume = titrationOf(input).volumeAt(input.target_pH);
    expectPrinted(volume?.mL as Decimal, answer.V);
    expect(volume?.upper.minus(volume.lower).lte('2e-43')).toBe(true);
  });
});

const numberOf = (text: string): number => {
  const [top, bottom = '1'] = text.split('/');
  return Number(top) / Number(bottom);
};
