import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hydrocyanic } from '../../src/acids.js';
import { InputError } from '../../src/errors.js';
import { methylYellow } from '../../src/indicators.js';
import * as reagents from '../../src/reagents.js';
import { cautionsOf, type Handled, lastCaution } from '../../src/safety/cautions-of.js';
import { answerOrInputError, hostile, spoiled } from '../property/hostile.js';

const { hydrochloricAcid, sodiumCarbonate, sodiumChloride, sodiumHydroxide } = reagents;
const sample = { mL: 50, contents: [{ reagent: sodiumCarbonate, mmol: 2 }] };
const titrant = { mL: 1000, contents: [{ reagent: hydrochloricAcid, mmol: 100 }] };

test('each caution once, with the name of what it is about, and the deferring line last', () => {
  const cautions = cautionsOf([sample, titrant, sodiumCarbonate]);
  expect(cautions).toEqual([
    `sodium carbonate: ${sodiumCarbonate.hazard}`,
    `hydrochloric acid: ${hydrochloricAcid.hazard}`,
    lastCaution,
  ]);
});

test('what has no caution of its own, and pure water, still get the deferring line', () => {
  expect(cautionsOf(sodiumChloride)).toEqual([lastCaution]);
  expect(cautionsOf({ contents: [] })).toEqual([lastCaution]);
  expect(cautionsOf([])).toEqual([lastCaution]);
});

test('the deferring line names the safety data sheet, local rules and a qualified supervisor', () => {
  for (const words of ['safety data sheet', 'local rules', 'qualified supervisor'])
    expect(lastCaution).toContain(words);
});

test('concentrated acids say to pour acid into water, and alkalis that the eyes are in danger', () => {
  const { nitricAcid, perchloricAcid, sulfuricAcid, phosphoricAcid } = reagents;
  for (const acid of [hydrochloricAcid, nitricAcid, perchloricAcid, sulfuricAcid, phosphoricAcid])
    expect(cautionsOf(acid).join()).toContain('never water into acid');
  expect(cautionsOf(sodiumHydroxide).join()).toContain('eyes');
});

test('an indicator has its own', () => {
  expect(cautionsOf([methylYellow, sodiumChloride])).toEqual([
    `methyl yellow (dimethyl yellow): ${methylYellow.hazard}`,
    lastCaution,
  ]);
});

test('a protolyte has its own, and a reagent without words of its own has those of its protolytes', () => {
  const own = `${hydrocyanic.name}: ${hydrocyanic.hazard}`;
  expect(cautionsOf(hydrocyanic)).toEqual([own, lastCaution]);
  const cyanide = {
    id: 'potassiumCyanide',
    name: 'potassium cyanide',
    protolytes: [{ protolyte: hydrocyanic, count: 1 }],
    ions: [{ ion: { formula: 'K+', charge: 1 }, count: 1 }],
  };
  expect(cautionsOf(cyanide)).toEqual([own, lastCaution]);
});

test('a slip is not taken for something harmless', () => {
  expect(() => cautionsOf({ content: [] } as unknown as Handled)).toThrow('content');
  expect(() => cautionsOf([{ contents: [{ mmol: 1 }] }] as unknown as Handled[])).toThrow(
    'handled[0].contents[0].reagent',
  );
});

test('a list of a million bad items ends with a hundred faults', () => {
  const error = faultOf(() => cautionsOf({ contents: new Array(1e6) }));
  expect(error.issues.length).toBe(100);
});

test('of anything is a list that ends with the deferring line, or an InputError', () => {
  fc.assert(
    fc.property(fc.oneof(hostile, spoiled(titrant), spoiled([sample, titrant])), (value) => {
      const cautions = answerOrInputError(() => cautionsOf(value as Handled));
      if (cautions !== undefined) expect(cautions.at(-1)).toBe(lastCaution);
    }),
    { numRuns: 300 },
  );
});

function faultOf(call: () => unknown): InputError {
  try {
    call();
  } catch (error) {
    if (error instanceof InputError) return error;
  }
  throw new Error('no InputError');
}
