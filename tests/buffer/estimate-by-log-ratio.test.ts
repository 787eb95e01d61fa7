import fc from 'fast-check';
import { acids, estimateByLogRatio, makeSolution, pHOf, type Reagent, reagents } from 'protolysis';
import { expect, test } from 'vitest';

const solution = (...contents: [Reagent, number][]) =>
  makeSolution({ contents: contents.map(([reagent, molar]) => ({ reagent, molar })) });
const estimated = (...contents: [Reagent, number][]) => {
  const estimate = estimateByLogRatio(solution(...contents));
  if (estimate.status === 'no-pair') throw new Error(estimate.reason);
  return estimate;
};
const { aceticAcid, sodiumAcetate, sodiumHydroxide, hydrochloricAcid, dichloroaceticAcid } = {
  ...reagents,
  dichloroaceticAcid: {
    id: 'dichloroacetic acid',
    name: 'dichloroacetic acid',
    protolytes: [{ protolyte: acids.dichloroacetic, count: 1 }],
    ions: [],
  } satisfies Reagent,
};

test('is pKa + log10 of what was poured', () => {
  const { pH, acid, base, pKa } = estimated([aceticAcid, 0.2], [sodiumAcetate, 0.05]);
  expect(pKa).toBe(4.756);
  expect(pH).toBeCloseTo(4.756 + Math.log10(0.25), 12);
  expect([acid, base]).toEqual([
    { formula: 'CH3COOH', molar: expect.closeTo(0.2, 12) },
    { formula: 'CH3COO-', molar: expect.closeTo(0.05, 12) },
  ]);
});

test('strong base and acid turn the forms into each other first', () => {
  const direct = estimated([aceticAcid, 0.06], [sodiumAcetate, 0.04]);
  expect(estimated([aceticAcid, 0.1], [sodiumHydroxide, 0.04]).pH).toBeCloseTo(direct.pH, 12);
  expect(estimated([sodiumAcetate, 0.1], [hydrochloricAcid, 0.06]).pH).toBeCloseTo(direct.pH, 12);
});

test('finds the pair in a mixture: what leaves its protons first is used up first', () => {
  const { protolyteId, step } = estimated(
    [reagents.sodiumDihydrogenPhosphate, 0.05],
    [aceticAcid, 0.05],
    [sodiumHydroxide, 0.07],
  );
  expect([protolyteId, step]).toEqual(['phosphoric', 2]);
});

test('is within 0.001 for 0.1 mol/L within one unit of the pKa, and fails dilute, far off and for a strong acid', () => {
  expect(Math.abs(estimated([aceticAcid, 0.05], [sodiumAcetate, 0.05]).error)).toBeLessThan(1e-3);
  expect(Math.abs(estimated([aceticAcid, 5e-6], [sodiumAcetate, 5e-6]).error)).toBeGreaterThan(0.5);
  expect(Math.abs(estimated([aceticAcid, 0.0999], [sodiumAcetate, 0.0001]).error)).toBeGreaterThan(0.5);
  expect(Math.abs(estimated([dichloroaceticAcid, 0.01], [sodiumHydroxide, 0.005]).error)).toBeGreaterThan(
    0.3,
  );
});

test('the error is what the amounts that really stand there make of it: K = h·(b + h)/(a − h)', () => {
  const [a, b, K] = [1e-3, 1e-3, 10 ** -4.756];
  // from the quadratic h² + (b + K)·h − K·a = 0, water left out: [OH-]·(1/a + 1/b)/ln10 = 5e-7
  const h = (-(b + K) + Math.sqrt((b + K) ** 2 + 4 * K * a)) / 2;
  const { error, parts } = estimated([aceticAcid, a], [sodiumAcetate, b]);
  expect(Math.abs(error - (4.756 + Math.log10(h)))).toBeLessThan(1e-6);
  expect(parts.ratio).toBeCloseTo(error, 12);
});

test('an acid alone, a salt alone and an excess of strong acid have no pair', () => {
  for (const contents of [
    [[aceticAcid, 0.1]],
    [[sodiumAcetate, 0.1]],
    [
      [sodiumAcetate, 0.1],
      [hydrochloricAcid, 0.2],
    ],
    [[hydrochloricAcid, 0.1]],
    [[reagents.sodiumHydrogenCarbonate, 0.1]],
  ] as [Reagent, number][][]) {
    const one = solution(...contents);
    expect(estimateByLogRatio(one)).toMatchObject({ status: 'no-pair', exact: pHOf(one) });
  }
});

test('the parts of the error add up to it', () => {
  const amount = fc.double({ min: 1e-6, max: 1, noNaN: true });
  fc.assert(
    fc.property(amount, amount, (acid, base) => {
      const { pH, exact, error, parts } = estimated(
        [reagents.tris, base],
        [reagents.trisHydrochloride, acid],
      );
      expect(error).toBe(pH - exact);
      expect(parts.ratio + parts.activity + parts.temperature).toBeCloseTo(error, 12);
    }),
  );
});
