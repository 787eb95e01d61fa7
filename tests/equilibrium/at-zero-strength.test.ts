import {
  acids,
  batesGuggenheim,
  davies,
  defineProtolyte,
  defineReagent,
  equilibrate,
  makeSolution,
  mix,
  pHOf,
  reagents,
  type Step,
} from 'protolysis';
import { davies as daviesLaw, exactPH, makeSolution as makeExactSolution } from 'protolysis/exact';
import { describe, expect, test } from 'vitest';

/** Disodium EDTA, half neutralised to the fifth step, at an ionic strength of 0.1 mol/L. */
const edta = defineReagent({
  id: 'edta-h2',
  name: 'EDTA',
  protolytes: [{ protolyte: acids.edta, count: 1 }],
  ions: [{ ion: { formula: 'Na+', charge: 1 }, count: 2.5 }],
});
const half = makeSolution({
  mL: 1000,
  contents: [
    { reagent: edta, molar: 0.01 },
    { reagent: reagents.potassiumChloride, molar: 0.055 },
  ],
});

describe('a constant that was measured in a salt medium', () => {
  test('gives the pH that it was measured to give, at the strength of the medium', () => {
    // By hand: pcH = pK′ + log10([HY³⁻]/[H₂Y²⁻]) = 6.13 half way; pH = pcH − log10 γ(H) = 6.13 + 0.107 = 6.24.
    const { pH, pcH, ionicStrength } = equilibrate(half, { activity: davies });
    expect(ionicStrength).toBeCloseTo(0.1, 2);
    expect(pcH).toBeCloseTo(6.13, 2);
    expect(pH).toBeCloseTo(6.24, 2);
  });

  test('gives it under any law, since the law that brings it to zero strength brings it back', () => {
    expect(equilibrate(half, { activity: batesGuggenheim }).pcH).toBeCloseTo(6.13, 2);
  });

  test('counts the activity of H+ once where the constant is a mixed one', () => {
    const mixed = defineProtolyte({
      ...acids.edta,
      id: 'edta-mixed',
      steps: acids.edta.steps.map((step: Step) => ({ ...step, convention: 'mixed' as const })),
    });
    const solution = makeSolution({
      contents: [
        {
          reagent: defineReagent({ ...edta, id: 'x', protolytes: [{ protolyte: mixed, count: 1 }] }),
          molar: 0.01,
        },
        { reagent: reagents.potassiumChloride, molar: 0.055 },
      ],
    });
    expect(pHOf(solution, { activity: davies })).toBeCloseTo(6.13, 2);
  });

  test('stays as it is in an ideal solution', () => {
    expect(pHOf(half)).toBeCloseTo(6.13, 2);
    expect(equilibrate(half).notes.filter((note) => note.includes('zero ionic strength'))).toEqual([]);
  });

  test('is named in the notes, every medium of its protolyte apart', () => {
    const { notes } = equilibrate(half, { activity: davies });
    const [one, tenth] = notes.filter((note) => note.includes('brought to zero'));
    expect(one).toMatch(
      /step 1 was measured at ionic strength 1 mol\/L .* Davies \(0.3 I\), beyond the range/,
    );
    expect(tenth).toMatch(
      /steps 2, 3, 4, 5 and 6 were measured at ionic strength 0.1 mol\/L .* Davies \(0.3 I\)\.$/,
    );
  });

  test('is dealt with alike by the exact entry, and by a mixture of copies that went through JSON', () => {
    const doubles = pHOf(half, { activity: davies });
    const exactHalf = makeExactSolution({
      contents: [
        { reagent: edta, molar: '0.01' },
        { reagent: reagents.potassiumChloride, molar: '0.055' },
      ],
    });
    const { pH } = exactPH(exactHalf, { digits: 25, activity: daviesLaw });
    expect(Math.abs(Number(pH) - doubles)).toBeLessThan(1e-13);
    expect(pHOf(mix(half, JSON.parse(JSON.stringify(half))), { activity: davies })).toBeCloseTo(doubles, 12);
  });

  test('clashes with the same number of another medium under one id', () => {
    const other = defineProtolyte({
      ...acids.edta,
      steps: acids.edta.steps.map((step: Step) => ({ ...step, ionicStrength: 0.5 })),
    });
    const salt = defineReagent({ ...edta, id: 'other', protolytes: [{ protolyte: other, count: 1 }] });
    expect(() => mix(half, makeSolution({ mL: 1000, contents: [{ reagent: salt, molar: 0.01 }] }))).toThrow(
      /edta/,
    );
  });
});
