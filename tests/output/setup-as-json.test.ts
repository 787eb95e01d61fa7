import {
  type ActivityModel,
  air,
  davies,
  makeSolution,
  parseSetup,
  printSetup,
  reagents,
  type TitrationSetup,
  titrate,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const analyte = makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const setups: Readonly<Record<string, TitrationSetup>> = {
  ideal: { analyte, titrant },
  real: { analyte, titrant, conditions: { activity: davies, celsius: 40 } },
  'under air': { analyte, titrant, conditions: { carbonDioxide: air } },
  'boiled out': { analyte, titrant, boilOut: { mL: 19 } },
};

describe.each(Object.entries(setups))('a setup, %s, as JSON', (_, setup) => {
  const titration = titrate(setup);
  const again = titrate(parseSetup(printSetup(titration)));

  test('gives the same curve, to the last bit', () =>
    expect(again.curve({ every: 5, upTo: 30 })).toEqual(titration.curve({ every: 5, upTo: 30 })));

  test('is printed the same again', () => expect(printSetup(again)).toBe(printSetup(titration)));
});

test('a model made of functions is refused: JSON would lose it in silence', () => {
  const own: ActivityModel = {
    name: 'my own',
    log10Gamma: () => 0,
    source: { kind: 'commonPractice', note: 'an invented model' },
  };
  const titration = titrate({ analyte, titrant, conditions: { activity: own } });
  expect(listed(() => printSetup(titration))).toEqual(['conflict titration.setup.conditions.activity']);
});

test.each([
  ['no text', 5, ['wrong-type json']],
  ['nothing', '', ['out-of-range json']],
  ['no JSON', '{ analyte', ['wrong-type json']],
  ['a list', '[1]', ['wrong-type json']],
  ['a list a million deep', '['.repeat(1e6), ['wrong-type json']],
  ['half a setup', '{"analyte":{"mL":5,"contents":[]}}', ['missing setup.titrant']],
  [
    'a key it does not know',
    printSetup(titrate(setups.ideal as TitrationSetup)).replace('"titrant"', '"titrent"'),
    null,
  ],
])('%s is refused', (_, json, faults) => {
  const told = listed(() => parseSetup(json as string));
  if (faults) expect(told).toEqual(faults);
  else expect(told).toContain('unknown-key setup.titrent');
});
