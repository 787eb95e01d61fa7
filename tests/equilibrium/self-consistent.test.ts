import fc from 'fast-check';
import {
  type ActivityModel,
  batesGuggenheim,
  davies,
  daviesOf,
  debyeHuckelExtended,
  debyeHuckelLimiting,
  defineProtolyte,
  defineReagent,
  equilibrate,
  guntelberg,
  ideal,
  makeSolution,
  pHOf,
  type Reagent,
  reagents,
  type Source,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { emptyIonMoments, ionMomentsAt } from '../../src/equilibrium/activity/ion-moments.js';
import type { IonColumn } from '../../src/equilibrium/activity/real-system.js';
import { takeConstants } from '../../src/equilibrium/activity/real-system.js';
import { emptyState, selfConsistent } from '../../src/equilibrium/activity/self-consistent.js';
import { readConditions } from '../../src/equilibrium/conditions.js';
import { emptyRoot, hydrogenIon } from '../../src/equilibrium/hydrogen-ion.js';
import { realSystemOf, systemOf } from '../../src/equilibrium/system.js';
import { Faults } from '../../src/input/faults.js';

const source: Source = { kind: 'fromMemory', note: 'an input of a mathematical test' };

const models: readonly ActivityModel[] = [
  ideal,
  davies,
  daviesOf({ linear: 0.2 }),
  daviesOf({ linear: 10 }),
  daviesOf({ linear: -10 }),
  debyeHuckelLimiting,
  guntelberg,
  batesGuggenheim,
  debyeHuckelExtended,
  { name: 'upside down', log10Gamma: (z, I) => z * z * Math.sqrt(I), source },
  { name: 'wavy', log10Gamma: (z, I) => z * Math.sin(20 * Math.sqrt(I)), source },
  { name: 'by sign', log10Gamma: (z, I) => (z < 0 ? 3 : -3) * Math.atan(I) * z * z * 0.2, source },
];

const protolyte = fc
  .record({
    top: fc.integer({ min: -3, max: 20 }),
    pKa: fc.array(fc.double({ min: -10, max: 20, noNaN: true }), { minLength: 1, maxLength: 16 }),
  })
  .filter(({ top, pKa }) => top - pKa.length >= -20);

const molar = fc.oneof(
  fc.double({ min: -12, max: Math.log10(60), noNaN: true }).map((x) => Math.min(60, 10 ** x)),
  fc.constant(0),
);

const solution = fc
  .record({
    acids: fc.array(fc.record({ protolyte, molar }), { maxLength: 3 }),
    ions: fc.array(fc.record({ charge: fc.integer({ min: -20, max: 20 }), molar }), { maxLength: 4 }),
    mL: fc.constantFrom(1e-3, 20, 1000, 1e9),
  })
  .map(({ acids, ions, mL }) => {
    const contents: { reagent: Reagent; molar: number }[] = [
      ...acids.map(({ protolyte: { top, pKa }, molar: c }, i) => ({
        reagent: defineReagent({
          id: `acid ${i}`,
          name: `acid ${i}`,
          protolytes: [
            {
              protolyte: defineProtolyte({
                id: `acid ${i}`,
                name: `acid ${i}`,
                species: [...pKa, 0].map((_, lost) => ({ formula: `A${lost}`, charge: top - lost })),
                steps: pKa.map((own) => ({ pKa: own, source })),
              }),
              count: 1,
            },
          ],
          ions: [],
        }),
        molar: c,
      })),
      ...ions.map(({ charge, molar: c }, i) => ({
        reagent: defineReagent({
          id: `ion ${i}`,
          name: `ion ${i}`,
          protolytes: [],
          ions: [{ ion: { formula: `X${i}`, charge }, count: 1 }],
        }),
        molar: c,
      })),
    ];
    return makeSolution({ mL, contents });
  });

describe('pH and ionic strength together', () => {
  test('are found for any solution and any model, with every number finite', () => {
    fc.assert(
      fc.property(solution, fc.constantFrom(...models), (sample, activity) => {
        const result = equilibrate(sample, { activity });
        const numbers = [
          result.pH,
          result.pcH,
          result.ionicStrength,
          result.bufferCapacity,
          ...result.species.flatMap(({ molar: c, activity: a, fraction }) => [c, a, fraction ?? 0]),
        ];
        expect(numbers.every(Number.isFinite)).toBe(true);
        expect(pHOf(sample, { activity })).toBe(result.pH);
        const carried = result.species.reduce((sum, { charge, molar: c }) => sum + Math.abs(charge) * c, 0);
        expect(Math.abs(result.chargeImbalance)).toBeLessThanOrEqual(1e-12 * carried);
      }),
      { numRuns: 2000 },
    );
  });

  test('agree: the ionic strength of the species is the one at which the coefficients were taken', () => {
    fc.assert(
      fc.property(solution, fc.constantFrom(...models), (sample, activity) => {
        const system = systemOf([sample], readConditions({ activity }, '', new Faults('test')));
        const real = realSystemOf(system);
        const state = selfConsistent(real, system.columns[0] as IonColumn, emptyState());
        const own = state.moments.strength / sample.mL;
        // The rounding of the ionic strength, times what the charge balance makes of it: 1e3 roundings.
        expect(Math.abs(own - state.ionicStrength)).toBeLessThanOrEqual(1e-12 * own);
      }),
      { numRuns: 2000 },
    );
  });

  test('are the least that agree: below, the species call for more than was assumed', () => {
    const real = models.filter(({ squareLaw }) => squareLaw);
    fc.assert(
      fc.property(solution, fc.constantFrom(...real), (sample, activity) => {
        const system = systemOf([sample], readConditions({ activity }, '', new Faults('test')));
        const real = realSystemOf(system);
        const column = system.columns[0] as IonColumn;
        const { ionicStrength } = selfConsistent(real, column, emptyState());
        for (let share = 0.05; share < 1; share += 0.05) {
          takeConstants(real, share * ionicStrength);
          const { h } = hydrogenIon(real.conditional, column, 0, emptyRoot());
          const { strength } = ionMomentsAt(real, column, h, emptyIonMoments());
          expect(strength / column.volume).toBeGreaterThan(share * ionicStrength);
        }
      }),
      { numRuns: 500 },
    );
  });

  test('are the least of three for a protolyte that gives up eight protons at once, by the limiting law', () => {
    // Far beyond the law's range. Sodium takes q of the 8 protons; on a grid of I the sign of J − I changes three times.
    for (let q = 0.005; q < 0.24; q += 0.005) {
      const oligomer = defineProtolyte({
        id: 'oligomer',
        name: 'oligomer',
        species: Array.from({ length: 9 }, (_, lost) => ({ formula: `A${lost}`, charge: -lost })),
        steps: Array.from({ length: 8 }, (_, k) => ({ pKa: 7 + 0.5 * (4 - k), source })),
      });
      const sample = makeSolution({
        contents: [
          {
            reagent: defineReagent({
              id: 'oligomer',
              name: 'oligomer',
              protolytes: [{ protolyte: oligomer, count: 1 }],
              ions: [],
            }),
            molar: 0.1,
          },
          { reagent: reagents.sodiumHydroxide, molar: 0.8 * q },
        ],
      });
      const system = systemOf(
        [sample],
        readConditions({ activity: debyeHuckelLimiting }, '', new Faults('test')),
      );
      const real = realSystemOf(system);
      const column = system.columns[0] as IonColumn;
      const excess = (ionicStrength: number) => {
        takeConstants(real, ionicStrength);
        const { h } = hydrogenIon(real.conditional, column, 0, emptyRoot());
        return ionMomentsAt(real, column, h, emptyIonMoments()).strength / column.volume - ionicStrength;
      };
      const grid = Array.from({ length: 400 }, (_, k) => 10 ** (-7 + k / 50));
      const changes = grid.filter((I, k) => k > 0 && excess(I) > 0 !== excess(grid[k - 1] as number) > 0);
      const { ionicStrength } = selfConsistent(real, column, emptyState());
      expect(changes.length).toBe(3);
      expect(ionicStrength).toBeLessThanOrEqual(changes[0] as number);
    }
  });
});
