import fc from 'fast-check';
import {
  type ActivityModel,
  absorbCarbonDioxide,
  acids,
  air,
  compareModels,
  compareWater,
  daviesOf,
  debyeHuckelAt,
  debyeHuckelExtendedOf,
  equilibrate,
  makeSolution,
  pHOf,
  pKaAt,
  pKHAt,
  pKwAt,
  reagents,
  titrate,
  waters,
} from 'protolysis';
import { expect, test } from 'vitest';
import { answerOrInputError, hostile, spoiled } from './hostile.js';

const sample = makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const conditions = { celsius: 30, pKw: 13.9, carbonDioxide: { ...air, escape: 0.5, pKH: 1.5 } };
const titration = titrate({ analyte: sample, titrant });

// biome-ignore lint/suspicious/noExplicitAny: what a caller without types may give
type Any = any;

/** Each call with one argument gone wrong. */
const calls: Readonly<Record<string, (value: Any) => unknown>> = {
  absorbCarbonDioxide: (value) => absorbCarbonDioxide(value, { share: 0.1 }),
  'absorbCarbonDioxide, options': (value) => absorbCarbonDioxide(titrant, value),
  compareModels: (value) => compareModels(value, [{}]),
  'compareModels, conditions': (value) => compareModels(titration, value),
  'compareModels, one of them': (value) => compareModels(titration, [value]),
  'compareModels, options': (value) => compareModels(titration, [{}], value),
  compareWater: (value) => compareWater(value, { water: waters.inAir, mL: 10 }),
  'compareWater, use': (value) => compareWater({ analyte: sample, titrant }, value),
  'compareWater, endpoints': (value) =>
    compareWater({ analyte: sample, titrant }, { water: waters.inAir, mL: 10, endpoints: value }),
  daviesOf: (value) => daviesOf(value),
  'daviesOf, linear': (value) => daviesOf({ linear: value }),
  debyeHuckelAt: (value) => debyeHuckelAt(value),
  debyeHuckelExtendedOf: (value) => debyeHuckelExtendedOf(value),
  'debyeHuckelExtendedOf, sizes': (value) => debyeHuckelExtendedOf({ sizes: value }),
  'equilibrate, conditions': (value) => equilibrate(sample, value),
  'pHOf, activity': (value) => pHOf(sample, { activity: value }),
  'pHOf, log10Gamma': (value) =>
    pHOf(sample, {
      activity: { name: 'a', log10Gamma: () => value, source: { kind: 'commonPractice', note: 'a' } },
    }),
  'pHOf, celsius': (value) => pHOf(sample, { celsius: value }),
  'pHOf, carbonDioxide': (value) => pHOf(sample, { carbonDioxide: value }),
  'pHOf, escape': (value) => pHOf(sample, { carbonDioxide: { atm: 0.01, escape: value } }),
  'pHOf, gas': (value) => pHOf(sample, { carbonDioxide: { atm: 0.01, protolyte: value } }),
  pKaAt: (value) => pKaAt(value, 25),
  'pKaAt, celsius': (value) => pKaAt(acids.tris, value),
  pKHAt: (value) => pKHAt(value),
  pKwAt: (value) => pKwAt(value),
  'titrate, boilOut': (value) => titrate({ analyte: sample, titrant, boilOut: value }),
  'titrate, conditions': (value) => titrate({ analyte: sample, titrant, conditions: value }),
};

test.each(Object.keys(calls))('%s answers or throws an InputError', (name) => {
  fc.assert(fc.property(hostile, (value) => void answerOrInputError(() => calls[name]?.(value))));
});

test('conditions with one part spoiled give a finite pH or an InputError', () => {
  fc.assert(
    fc.property(spoiled(conditions), (value) => {
      const pH = answerOrInputError(() => pHOf(sample, value as Any));
      if (pH !== undefined) expect(pH).toSatisfy(Number.isFinite);
    }),
  );
});

test('each bad condition is named', () => {
  const bad = { celsius: 300, pKw: 'x', carbonDioxide: { atm: -1, escape: 2 } };
  expect(() => pHOf(sample, bad as Any)).toThrow(
    /conditions\.celsius.*conditions\.carbonDioxide\.atm.*conditions\.carbonDioxide\.escape.*conditions\.pKw/s,
  );
});

test('a gas that shares its id with a protolyte of the solution must share its constants', () => {
  const other = {
    ...acids.carbonic,
    steps: acids.carbonic.steps.map((step) => ({ ...step, pKa: step.pKa + 0.1 })),
  };
  expect(() => pHOf(sample, { carbonDioxide: { atm: 0.01, protolyte: other } })).toThrow(
    /one set of constants/,
  );
});

test('a model that throws is refused', () => {
  const activity: ActivityModel = {
    name: 'thrower',
    log10Gamma: () => {
      throw new Error('no');
    },
    source: { kind: 'commonPractice', note: 'none' },
  };
  expect(() => pHOf(sample, { activity })).toThrow(/a function that does not throw/);
});
