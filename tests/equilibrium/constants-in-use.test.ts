import {
  air,
  davies,
  equilibrate,
  makeSolution,
  pKHAt,
  pKwAt,
  reagents,
  sourcesOf,
  titrate,
} from 'protolysis';
import { expect, test } from 'vitest';

const acid = makeSolution({ mL: 1000, contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const base = makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] });
const namesIn = (conditions?: Parameters<typeof equilibrate>[1]) =>
  equilibrate(acid, conditions).constants.map(({ name }) => name);

test('by default a result rests on the ion product of water, and on none that the caller gave', () => {
  expect(namesIn()).toEqual(['ion product of water, pKw']);
  expect(namesIn({ pKw: 14 })).toEqual([]);
});

test('away from 25 °C it rests on the density of water too, in the air on Henry and on carbonic acid', () => {
  const { constants } = equilibrate(acid, { celsius: 37, carbonDioxide: air });
  expect(constants.map(({ name }) => name)).toEqual([
    'ion product of water, pKw',
    'density of water, g/mL, for its pKw',
    'Henry’s constant of carbon dioxide, pKH',
    'carbonic acid, pKa 1',
    'carbonic acid, pKa 2',
  ]);
  const [pKw, density, pKH] = constants.map(({ value }) => value);
  expect(pKw).toBe(pKwAt(37));
  expect(density).toBeCloseTo(0.99333, 5); // Kaye & Laby, density of water at 37 °C (from memory)
  expect(pKH).toBe(pKHAt(37));
});

test('the sources of a titration name all that it took: substances, water, gas, the law of activity and what that rests on', () => {
  const titration = titrate({
    analyte: acid,
    titrant: base,
    conditions: { activity: davies, carbonDioxide: air },
  });
  const citations = sourcesOf(titration)
    .map(({ citation }) => citation)
    .join('\n');
  for (const author of ['IAPWS', 'Plummer', 'Goldberg', 'Davies', 'Kell', 'Malmberg', 'Prohaska'])
    expect(citations).toContain(author);
});
