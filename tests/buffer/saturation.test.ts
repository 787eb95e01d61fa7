import { equilibrate, makeSolution, prepareBuffer, reagents, sourcesOf } from 'protolysis';
import { expect, test } from 'vitest';
import { saturatedWith } from '../../src/buffer/saturation.js';
import { solubilities } from '../../src/catalogue/solubilities.js';

const { potassiumHydrogenTartrate, calciumHydroxide, potassiumChloride } = reagents;
const held = (...contents: Parameters<typeof makeSolution>[0]['contents']) =>
  saturatedWith(equilibrate(makeSolution({ contents })), {})?.reagent.id;

test('the solubilities that rest on memory alone are these two', () =>
  expect(
    solubilities.flatMap(({ reagent, source }) => (source.kind === 'fromMemory' ? [reagent.id] : [])),
  ).toEqual(['potassiumHydrogenTartrate', 'calciumHydroxide']));

test.each([
  [potassiumHydrogenTartrate, 0.0341],
  [calciumHydroxide, 0.0203],
])('as much as dissolves, and not more', (reagent, molar) => {
  expect(held({ reagent, molar })).toBeUndefined();
  expect(held({ reagent, molar: molar * 1.001 })).toBe(reagent.id);
});

test('an ion in common makes a solid less soluble, a base takes its ion away', () => {
  const tartrate = { reagent: potassiumHydrogenTartrate, molar: 0.03 };
  expect(held(tartrate)).toBeUndefined();
  expect(held(tartrate, { reagent: potassiumChloride, molar: 0.1 })).toBe('potassiumHydrogenTartrate');
  expect(
    held(
      tartrate,
      { reagent: potassiumChloride, molar: 0.1 },
      { reagent: reagents.sodiumHydroxide, molar: 0.03 },
    ),
  ).toBeUndefined();
});

test('it makes no difference which reagents brought the ions', () =>
  expect(
    held(
      { reagent: reagents.calciumChloride, molar: 0.05 },
      { reagent: reagents.sodiumHydroxide, molar: 0.1 },
    ),
  ).toBe('calciumHydroxide'));

test('the recipe that fails for it names its source', () => {
  const answer = prepareBuffer({
    pH: 3.8,
    molar: 0.1,
    mL: 100,
    from: [potassiumHydrogenTartrate, reagents.sodiumHydroxide],
  });
  expect(sourcesOf(answer)[0]?.citation).toContain('Pure Appl. Chem. 74');
});
