import fc from 'fast-check';
import {
  acids,
  air,
  type Conditions,
  davies,
  equilibrate,
  makeSolution,
  pHOf,
  reagents,
  type Solution,
  strongAdditionTo,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';
import { casesOf, type SystemInput, solutionOf, tolerance } from '../reference/vectors.js';

interface Addition {
  readonly id: string;
  readonly title: string;
  readonly kind: 'volume' | 'addition';
  readonly input: SystemInput & { readonly target_pH: string; readonly activity: 'ideal' | 'davies' };
  readonly answer: { readonly reagent: string; readonly amount: string };
  readonly condition: string;
}

const additions = casesOf<Addition>('inverse.json').filter(({ kind }) => kind === 'addition');

/** Group E: vectors/inverse.json, tolerances as vectors/README.md derives them. */
describe.each(additions)('$id $title, $input.activity', ({ input, answer, condition }) => {
  test('reagent and amount', () => {
    const addition = strongAdditionTo(solutionOf(input), Number(input.target_pH), {
      pKw: Number(input.pKw),
      ...(input.activity === 'davies' && { activity: davies }),
    });
    if (addition.status !== 'found') return expect.unreachable(addition.reason);
    expect(addition.reagent.id).toBe(
      answer.reagent === 'strong base' ? 'sodiumHydroxide' : 'hydrochloricAcid',
    );
    const amount = Number(answer.amount);
    expect(Math.abs(addition.molar - amount)).toBeLessThanOrEqual(tolerance(condition, amount));
  });
});

const sample = (molar: number): Solution =>
  makeSolution({
    mL: 40,
    contents: [
      { reagent: reagents.sodiumDihydrogenPhosphate, molar },
      { reagent: reagents.sodiumAcetate, molar: molar / 2 },
    ],
  });

test('in the ideal case the amount is the net charge that the target pH leaves, with its sign', () => {
  // −( h − Kw/h + Q + Σ C·z̄ ), z̄ of one acetate pair written out: E. g. Butler, Ionic Equilibrium, the charge balance
  const [K, kw, h] = [10 ** -4.756, 10 ** -13.995, 10 ** -5.5];
  const charge = h - kw / h - (0.1 * K) / (K + h);
  const acetic = makeSolution({ contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] });
  const addition = strongAdditionTo(acetic, 5.5);
  expect(addition.status === 'found' && addition.molar).toBeCloseTo(-charge, 15);
});

test('acid and then as much base bring back the pH, and the amounts agree', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-3, max: 0.5, noNaN: true }),
      fc.double({ min: 0, max: 13, noNaN: true }),
      (molar, pH) => {
        const before = sample(molar);
        const there = strongAdditionTo(before, pH);
        if (there.status !== 'found') return expect.unreachable(there.reason);
        const back = strongAdditionTo(there.solution, pHOf(before));
        if (back.status !== 'found') return expect.unreachable(back.reason);
        expect(pHOf(there.solution)).toBeCloseTo(pH, 10);
        expect(pHOf(back.solution)).toBeCloseTo(pHOf(before), 10);
        // the amount that restores a pH is good to β times the pH's rounding, and to the rounding of the sum
        expect(Math.abs(back.mmol - there.mmol)).toBeLessThanOrEqual(1e-13 * Math.max(there.mmol, 1));
      },
    ),
    { numRuns: 100 },
  );
});

test('nothing is added where the pH is there already', () => {
  const solution = sample(0.1);
  const addition = strongAdditionTo(solution, pHOf(solution));
  expect(addition).toMatchObject({ status: 'found', mmol: 0 });
});

test('a pH that no strong acid or base reaches is a result, not an error', () => {
  const addition = strongAdditionTo(sample(0.1), 16);
  expect(addition.status).toBe('out-of-reach');
  expect(addition.status === 'out-of-reach' && addition.nearest).toBeCloseTo(13.995 + Math.log10(60), 1);
});

test('the volume stays, and the ion added counts in the ionic strength', () => {
  const solution = sample(0.1);
  const addition = strongAdditionTo(solution, 3);
  if (addition.status !== 'found') return expect.unreachable(addition.reason);
  expect(addition.solution.mL).toBe(40);
  const chloride = equilibrate(addition.solution).species.find(({ formula }) => formula === 'Cl-');
  expect(chloride?.molar).toBeCloseTo(addition.molar, 15);
});

test('nothing is added for a pH that is there but for its last bit', () => {
  for (const molar of [1e-4, 0.01, 0.1, 0.5]) {
    const solution = sample(molar);
    for (const rounding of [Number.EPSILON, -Number.EPSILON])
      expect(strongAdditionTo(solution, pHOf(solution) * (1 + rounding))).toMatchObject({ mmol: 0 });
  }
});

test('what a solution holds of the strong acid already counts towards what it may hold', () => {
  const strong = makeSolution({
    mL: 10,
    contents: [
      { reagent: reagents.sodiumAcetate, molar: 0.5 },
      { reagent: reagents.hydrochloricAcid, molar: 40 },
    ],
  });
  const addition = strongAdditionTo(strong, -2);
  // 60 mol/L of acid, less the 0.5 that acetate takes up
  expect(addition.status === 'out-of-reach' && addition.nearest).toBeCloseTo(-Math.log10(59.5), 3);
});

test.each([
  [{ ...air, escape: 0.5 }, davies],
  [{ ...air, escape: 1 }, davies],
  [{ ...air, escape: 0.5 }, undefined],
  [air, davies],
])('the pH is met where carbon dioxide escapes or is exchanged, %#', (carbonDioxide, activity) => {
  const conditions = { carbonDioxide, ...(activity && { activity }) };
  const soda = makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
  for (const pH of [5, 7.5]) {
    const addition = strongAdditionTo(soda, pH, conditions);
    if (addition.status !== 'found') return expect.unreachable(addition.reason);
    expect(pHOf(addition.solution, conditions)).toBeCloseTo(pH, 10);
  }
});

test('refuses a gas under the id of a protolyte that has other constants', () => {
  const [first, second] = acids.carbonic.steps;
  const protolyte = { ...acids.carbonic, steps: [{ ...first, pKa: 6.4 }, second] };
  const soda = makeSolution({ contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.1 }] });
  const conditions = { carbonDioxide: { ...air, protolyte } } as Conditions;
  expect(listed(() => strongAdditionTo(soda, 7, conditions))).toEqual([
    'conflict conditions.carbonDioxide.protolyte',
  ]);
});
