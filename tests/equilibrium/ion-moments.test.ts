import {
  acids,
  davies,
  defineProtolyte,
  ideal,
  makeSolution,
  type Protolyte,
  reagents,
  type Source,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { emptyIonMoments, ionMomentsAt } from '../../src/equilibrium/activity/ion-moments.js';
import { type IonColumn, makeRealSystem, takeConstants } from '../../src/equilibrium/activity/real-system.js';
import { balanceOf } from '../../src/equilibrium/charge-balance.js';
import { readConditions } from '../../src/equilibrium/conditions.js';
import { type Family, familyOf } from '../../src/equilibrium/family.js';
import { realSystemOf, systemOf } from '../../src/equilibrium/system.js';
import { Faults } from '../../src/input/faults.js';

const source: Source = { kind: 'commonPractice', note: 'an invented step' };

/** An acid of these charges, all of its steps of these pKa. */
const acidOf = (top: number, ...pKa: readonly number[]): Protolyte =>
  defineProtolyte({
    id: `acid ${top} ${pKa}`,
    name: 'acid',
    species: Array.from({ length: pKa.length + 1 }, (_, lost) => ({
      formula: `A${lost}`,
      charge: top - lost,
    })),
    steps: pKa.map((own) => ({ pKa: own, source })),
  });

const system = (activity: typeof davies, ...protolytes: readonly Protolyte[]) =>
  makeRealSystem(balanceOf(1e-14, protolytes.map(familyOf)), protolytes, null, [], { activity, celsius: 25 });

describe('a system with a law of activity', () => {
  test('tells ions apart by charge for a square law, by formula too for another', () => {
    const protolytes = [acids.phosphoric, acids.acetic];
    const charges = [
      { formula: 'H+', charge: 1 },
      { formula: 'OH-', charge: -1 },
    ];
    const { coefficients, hydrogen, hydroxide, kinds } = system(davies, ...protolytes);
    expect(coefficients.kinds.map(({ charge }) => charge)).toEqual([1, -1, 0, -2, -3]);
    expect([hydrogen, hydroxide]).toEqual([0, 1]);
    expect(kinds.map((own) => [...own])).toEqual([
      [2, 1, 3, 4],
      [2, 1],
    ]);
    const { squareLaw: _, ...distinct } = davies;
    const apart = system(distinct, ...protolytes);
    expect(apart.coefficients.kinds).toEqual([
      ...charges,
      ...protolytes.flatMap(({ species }) => species.map(({ formula, charge }) => ({ formula, charge }))),
    ]);
  });

  /** By Popoviciu, a quarter of the squared range of z² − z or of z² + z, whichever is greater. */
  test.each([
    [0, 1, 1], // 0, −1: z² − z = 0, 2
    [1, 1, 1], // 1, 0: z² + z = 2, 0
    [0, 2, 9], // 0, −1, −2: 0, 2, 6
    [2, 2, 9],
    [1, 2, 1], // 1, 0, −1: 0, 0, 2
    [-1, 2, 25], // −1, −2, −3: 2, 6, 12
    [3, 2, 25],
    [1, 3, 9], // 1, 0, −1, −2: 0, 0, 2, 6
  ])('knows how far z² ∓ z of a family can vary: charge %d and %d steps', (top, steps, most) => {
    const pKa = Array.from({ length: steps }, (_, k) => 3 + k);
    expect([...system(davies, acidOf(top, ...pKa)).spreads]).toEqual([most]);
  });

  test.each([
    [[3, 5], true],
    [[5, 5], true],
    [[5, 3], false],
    [[3, 5, 4], false],
    [[5, 3, 7], false],
  ] as const)('knows whether constants fall step by step: pKa %o', (pKa, falls) => {
    const real = system(ideal, acidOf(0, ...pKa));
    takeConstants(real, 0.1);
    const { inOrder } = real.conditional.families[0] as Family;
    expect(inOrder).toBe(falls);
  });
});

/** Free species and families by the definition: sums over all species, each with its share by K₁…K_j/h^j. */
function byDefinition(real: ReturnType<typeof realSystemOf>, column: IonColumn, h: number) {
  const { conditional, coefficients, kinds, gasKinds } = real;
  const slope = (kind: number | undefined) => coefficients.slope[kind as number] as number;
  const { volume, amounts } = column;
  const total = { net: column.charge, squares: column.squares, zz: 0, zs: 0, zl: 0, sl: 0 };
  const add = (species: readonly { z: number; n: number; l: number }[], fixed: boolean) => {
    const sum = (f: (one: { z: number; l: number }) => number) =>
      species.reduce((all, one) => all + one.n * f(one), 0);
    const all = sum(() => 1);
    const pair = (f: (one: { z: number; l: number }) => number, g: typeof f) =>
      sum((one) => f(one) * g(one)) - (fixed && all > 0 ? (sum(f) * sum(g)) / all : 0);
    total.net += sum(({ z }) => z);
    total.squares += sum(({ z }) => z * z);
    total.zz += pair(
      ({ z }) => z,
      ({ z }) => z,
    );
    total.zs += pair(
      ({ z }) => z,
      ({ z }) => z * z,
    );
    total.zl += pair(
      ({ z }) => z,
      ({ l }) => l,
    );
    total.sl += pair(
      ({ z }) => z * z,
      ({ l }) => l,
    );
  };
  add(
    [
      { z: 1, n: volume * h, l: slope(real.hydrogen) },
      { z: -1, n: (volume * conditional.kw) / h, l: slope(real.hydroxide) },
      ...[...(conditional.gas ?? [])].map((level, j) => ({
        z: -(j + 1),
        n: (volume * level) / h ** (j + 1),
        l: slope(gasKinds[j + 1]),
      })),
    ],
    false,
  );
  for (const [i, { constants, topCharge }] of conditional.families.entries()) {
    const weights = [1];
    for (const k of constants) weights.push(((weights.at(-1) as number) * k) / h);
    const all = weights.reduce((sum, one) => sum + one, 0);
    add(
      weights.map((weight, lost) => ({
        z: topCharge - lost,
        n: ((amounts[i] as number) * weight) / all,
        l: slope(kinds[i]?.[lost]),
      })),
      true,
    );
  }
  const { net, squares, zz, zs, zl, sl } = total;
  return { net, strength: squares / 2, zz, zs, zl, sl };
}

describe('moments are the sums that define them', () => {
  const sample = makeSolution({
    mL: 20,
    contents: [
      { reagent: reagents.disodiumHydrogenPhosphate, molar: 0.03 },
      { reagent: reagents.ammonia, molar: 0.02 },
      { reagent: reagents.sodiumHydrogenCarbonate, molar: 0.05 },
    ],
  });
  const bySpecies = {
    name: 'by formula',
    log10Gamma: (z: number, I: number, _: number, formula = '') =>
      -z * z * Math.sqrt(I) * (0.3 + formula.length / 50),
    source,
  };

  test.each([
    [davies, undefined],
    [davies, { atm: 0.3 }],
    [bySpecies, { atm: 0.3 }],
    [bySpecies, undefined],
  ])('#%#', (activity, carbonDioxide) => {
    const given = { activity, ...(carbonDioxide ? { carbonDioxide } : {}) };
    const own = systemOf([sample], readConditions(given, '', new Faults('test')));
    const real = realSystemOf(own);
    takeConstants(real, 0.1);
    const column = own.columns[0] as IonColumn;
    for (const pH of [1, 4, 6.5, 8, 11]) {
      const expected = byDefinition(real, column, 10 ** -pH);
      const { net, strength, zz, zs, zl, sl } = ionMomentsAt(real, column, 10 ** -pH, emptyIonMoments());
      const scale = 1e-13 * Math.max(1, expected.strength); // roundings of sums of this size
      for (const [key, value] of Object.entries({ net, strength, zz, zs, zl, sl }))
        expect(Math.abs(value - expected[key as 'net'])).toBeLessThanOrEqual(
          scale * (key.includes('l') ? 10 : 1) + 1e-13 * Math.abs(expected[key as 'net']),
        );
    }
  });

  test('of nothing are zero', () => {
    expect(Object.values(emptyIonMoments())).toEqual([0, 0, 0, 0, 0, 0]);
  });
});
