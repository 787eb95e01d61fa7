import fc from 'fast-check';
import {
  acids,
  davies,
  debyeHuckelAt,
  equilibrate,
  estimateByLogRatio,
  makeSolution,
  type Protolyte,
  pHOf,
  pKaAt,
  type Reagent,
  reagents,
} from 'protolysis';
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

test('in the ideal case the ratio is all of the error, activity and temperature no part of it', () => {
  const { error, parts } = estimated([aceticAcid, 1e-3], [sodiumAcetate, 4e-3]);
  expect(parts).toEqual({
    ratio: expect.closeTo(error, 12),
    activity: expect.closeTo(0, 12),
    temperature: expect.closeTo(0, 12),
  });
});

test('activity adds A·(√I/(1 + √I) − 0.3·I) for an acid without charge, temperature pKa(25 °C) − pKa(t)', () => {
  const buffer = solution([aceticAcid, 0.05], [sodiumAcetate, 0.2]);
  const warm = estimateByLogRatio(buffer, { activity: davies, celsius: 37 });
  if (warm.status === 'no-pair') return expect.unreachable(warm.reason);
  const { A } = debyeHuckelAt(37);
  const { ionicStrength: I, species } = equilibrate(buffer, { activity: davies, celsius: 37 });
  // Davies (1962): A = 0.509 at 25 °C, in proportion to the A of Debye and Hückel elsewhere
  const gamma = ((0.509 * A) / debyeHuckelAt(25).A) * (Math.sqrt(I) / (1 + Math.sqrt(I)) - 0.3 * I);
  expect(warm.parts.activity).toBeCloseTo(gamma, 10);
  const [pKa] = pKaAt(acids.acetic, 37) as [number];
  expect(warm.parts.temperature).toBeCloseTo(4.756 - pKa, 10);
  const there = (formula: string) => species.find((one) => one.formula === formula)?.molar as number;
  expect(warm.parts.ratio).toBeCloseTo(Math.log10(4 / (there('CH3COO-') / there('CH3COOH'))), 10);
});

test('the stronger acid is half used up before the weaker one begins', () => {
  const { protolyteId, base } = estimated(
    [reagents.trisHydrochloride, 0.05],
    [aceticAcid, 0.05],
    [sodiumHydroxide, 0.02],
  );
  expect([protolyteId, base.molar]).toEqual(['acetic', expect.closeTo(0.02, 12)]);
});

test('a protolyte of which there is nothing changes nothing, and neither does the volume', () => {
  const of = (mL: number, ...more: [Reagent, number][]) =>
    estimateByLogRatio({
      mL,
      contents: [...more, [aceticAcid, 1e-4] as const, [sodiumAcetate, 2e-4] as const].map(
        ([reagent, molar]) => ({ reagent, mmol: molar * mL }),
      ),
    });
  const plain = of(1);
  expect(plain).toMatchObject({ status: 'estimated', pH: expect.closeTo(4.756 + Math.log10(2), 10) });
  expect(of(1, [reagents.phosphoricAcid, 0], [reagents.tris, 0])).toMatchObject(plain);
  for (const mL of [1e-4, 1e5])
    expect(of(mL)).toMatchObject({ pH: expect.closeTo(4.756 + Math.log10(2), 10) });
});

test('of isomers under one formula each has its own ratio', () => {
  // maleic acid, the stronger, is all monoanion; fumaric acid is half there
  const isomer = (protolyte: Protolyte): Reagent => ({
    id: `${protolyte.id} acid`,
    name: `${protolyte.name}`,
    protolytes: [{ protolyte, count: 1 }],
    ions: [],
  });
  const { protolyteId, error, parts } = estimated(
    [isomer(acids.maleic), 0.05],
    [isomer(acids.fumaric), 0.05],
    [sodiumHydroxide, 0.075],
  );
  expect(protolyteId).toBe('fumaric');
  expect(parts.ratio).toBeCloseTo(error, 10); // ideal, at 25 °C
  expect(parts.temperature).toBeCloseTo(0, 10);
});
