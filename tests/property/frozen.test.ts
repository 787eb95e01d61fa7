import * as main from 'protolysis';
import * as acidsEntry from 'protolysis/acids';
import * as colour from 'protolysis/colour';
import * as exact from 'protolysis/exact';
import * as indicatorsEntry from 'protolysis/indicators';
import * as measurement from 'protolysis/measurement';
import * as reagentsEntry from 'protolysis/reagents';
import { describe, expect, test } from 'vitest';
import { changeable } from './changeable.js';

const { reagents, acids } = main;
const sample = main.makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
const acid = main.makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const titration = main.titrate({ analyte: sample, titrant: acid });
describe.each(
  Object.entries({ main, acidsEntry, colour, exact, indicatorsEntry, measurement, reagentsEntry }),
)('every export of %s', (name, entry) => {
  test('is frozen, deeply', () => expect(changeable(entry, name)).toEqual([]));
});

// That every result is frozen is looked at where every function meets good arguments: hostile.test.ts here, in exact/ and measurement/.

test('nothing that a caller does to a result reorders or changes a later answer', () => {
  expect(() => (titration.equivalencePoints as unknown[]).reverse()).toThrow(TypeError);
  expect(() => Object.assign(acids.acetic.steps[0] as object, { pKa: 3 })).toThrow(TypeError);
  expect(() => Object.assign(main.bufferDefaults, { dropSize: 1 })).toThrow(TypeError);
});
