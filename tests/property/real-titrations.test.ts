import fc from 'fast-check';
import {
  type ActivityModel,
  air,
  davies,
  daviesOf,
  debyeHuckelExtended,
  debyeHuckelLimiting,
  guntelberg,
  ideal,
  makeSolution,
  type Reagent,
  reagents,
  titrate,
} from 'protolysis';
import { expect, test } from 'vitest';
import { badNumberIn, everythingOf } from './answers.js';

const models: readonly ActivityModel[] = [
  ideal,
  davies,
  daviesOf({ linear: -1 }),
  debyeHuckelLimiting,
  debyeHuckelExtended,
  guntelberg,
];

const carbonates = ['sodiumCarbonate', 'sodiumHydrogenCarbonate', 'carbonDioxide'] as const;
const others = [
  'hydrochloricAcid',
  'sodiumHydroxide',
  'phosphoricAcid',
  'citricAcid',
  'ammonia',
  'sulfuricAcid',
  'calciumHydroxide',
  'disodiumEdtaDihydrate',
  'sodiumChloride',
] as const;
const reagent = fc.constantFrom(...carbonates, ...others).map((id) => reagents[id] as Reagent);
const solution = fc
  .record({
    mL: fc.constantFrom(0.01, 20, 1e6),
    contents: fc.uniqueArray(
      fc.record({
        reagent,
        molar: fc.double({ min: -9, max: 1, noNaN: true }).map((exponent) => 10 ** exponent),
      }),
      { maxLength: 3, selector: (one) => one.reagent.id },
    ),
  })
  .map(makeSolution);

const manner = fc.record(
  {
    activity: fc.constantFrom(...models),
    celsius: fc.constantFrom(0, 25, 60, 100),
    carbonDioxide: fc.oneof(
      fc.constant(air),
      fc.double({ min: 0, max: 1, noNaN: true }).map((escape_) => ({ ...air, escape: escape_ })),
    ),
  },
  { requiredKeys: ['activity'] },
);

test('whatever is titrated with whatever, under any conditions, every number is finite', () => {
  fc.assert(
    fc.property(solution, solution, manner, fc.boolean(), (analyte, titrant, conditions, boils) => {
      const open = conditions.carbonDioxide && !('escape' in conditions.carbonDioxide);
      const boilOut = boils && !open ? { boilOut: { mL: analyte.mL / 3 } } : {};
      const titration = titrate({ analyte, titrant, conditions, ...boilOut });
      for (const part of everythingOf(titration)) expect(badNumberIn(part)).toBeUndefined();
      for (const mL of [0, analyte.mL * 0.3, analyte.mL, analyte.mL * 100])
        expect(titration.pHAt(mL)).toBeCloseTo(titration.equilibriumAt(mL).pH, 6);
    }),
    { numRuns: 60 },
  );
}, 60_000);
