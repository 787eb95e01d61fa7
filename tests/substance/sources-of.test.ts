import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as acids from '../../src/acids.js';
import { works } from '../../src/bibliography.js';
import { atomicWeightsSource } from '../../src/catalogue/atomic-weights.js';
import * as reagents from '../../src/reagents.js';
import { defineReagent } from '../../src/substance/reagent.js';
import { sourcesOf } from '../../src/substance/sources-of.js';
import { answerOrInputError, hostile, spoiled } from '../property/hostile.js';

test('of a protolyte: the source of each step, with the work spelled out, and of what else it says', () => {
  expect(sourcesOf(acids.phenol)).toEqual([
    {
      source: acids.phenol.steps[0]?.source,
      for: ['phenol: step 1'],
      citation: `${works['fernandez-hepler-1959']}, value at 25 °C; checked: IUPAC Digitized pKa Dataset (reliable, 9.994)`,
    },
    {
      source: acids.phenol.steps[0]?.thermalSource,
      for: ['phenol: step 1, dH and dCp'],
      citation: `from memory of ${works['fernandez-hepler-1959']}: not checked against the page`,
    },
    {
      source: acids.phenol.notForBuffers?.source,
      for: ['phenol: notForBuffers'],
      citation: expect.stringMatching(/^common practice: /),
    },
  ]);
});

test('of a solution: each source once, with all that rests on it', () => {
  const contents = [
    { reagent: reagents.sodiumCarbonate, mmol: 1 },
    { reagent: reagents.sodiumHydrogenCarbonate, mmol: 1 },
    { reagent: reagents.hydrochloricAcid, mmol: 1 },
  ];
  const uses = sourcesOf({ mL: 100, contents });
  expect(new Set(uses.map(({ citation }) => citation)).size).toBe(uses.length);
  expect(uses.find(({ source }) => source === atomicWeightsSource)?.for).toEqual([
    'sodium carbonate: molar mass',
    'sodium hydrogen carbonate: molar mass',
    'hydrochloric acid: molar mass',
  ]);
  expect(uses.flatMap((use) => use.for).filter((text) => text.startsWith('carbonic acid'))).toEqual([
    'carbonic acid: step 1',
    'carbonic acid: step 1, dH and dCp',
    'carbonic acid: step 2, dH and dCp',
    'carbonic acid: step 1, log10 K(T)',
    'carbonic acid: step 2',
    'carbonic acid: step 2, log10 K(T)',
  ]);
});

test('values that are kept beside those in use are not used', () => {
  expect(acids.nitrous.alternatives?.length).toBe(2);
  expect(JSON.stringify(sourcesOf(acids.nitrous))).not.toContain('Sydney');
});

test('a copy that came through JSON has the same sources', () => {
  for (const reagent of Object.values(reagents))
    expect(sourcesOf(JSON.parse(JSON.stringify(reagent)))).toEqual(sourcesOf(reagent));
});

test("a user's own work, and one that has the name of a prototype key, are cited by name", () => {
  const own = (work: string) => ({ name: 'x', source: { kind: 'published', work, where: 'p. 1' } });
  expect(sourcesOf(own('Harris 2010'))[0]?.citation).toBe('Harris 2010, p. 1');
  expect(sourcesOf(own('constructor'))[0]?.citation).toBe('constructor, p. 1');
  expect(sourcesOf(own('__proto__'))[0]?.citation).toBe('__proto__, p. 1');
});

test('a source with a wrong part is a fault, not left out', () => {
  const slip = { acids: [{ name: 'x', source: { kind: 'published', work: 'Harris 2010', wher: 'p. 1' } }] };
  expect(() => sourcesOf(slip)).toThrow('acids[0].source.wher');
});

test('getters are not called', () => {
  const trap = {
    get source(): never {
      throw new Error('called');
    },
    inner: { name: 'inner', source: { kind: 'commonPractice', note: 'a rule' } },
  };
  expect(sourcesOf(trap).map(({ citation }) => citation)).toEqual(['common practice: a rule']);
});

test('the atomic weights are no source of a molar mass that the caller brought', () => {
  const own = defineReagent({ ...reagents.sodiumChloride, molarMass: 58.5 });
  expect(sourcesOf(reagents.sodiumChloride).map(({ source }) => source)).toEqual([atomicWeightsSource]);
  expect(sourcesOf(own)).toEqual([]);
});

test('rings, depth and breadth do no harm', () => {
  const ring: Record<string, unknown> = { acid: acids.phenol };
  ring.self = ring;
  expect(sourcesOf(ring)).toEqual(sourcesOf(acids.phenol));
  let deep: object = acids.phenol;
  for (let level = 0; level < 1e5; level += 1) deep = { deep };
  expect(sourcesOf(deep)).toEqual(sourcesOf(acids.phenol));
  const broad = Array.from({ length: 3e5 }, () => ({}));
  expect(sourcesOf([...broad, acids.phenol])).toEqual(sourcesOf(acids.phenol));
});

test('of anything is a list or an InputError', () => {
  fc.assert(
    fc.property(fc.oneof(hostile, spoiled(reagents.aceticAcid)), (value) => {
      const uses = answerOrInputError(() => sourcesOf(value as object));
      for (const use of uses ?? []) expect(typeof use.citation).toBe('string');
    }),
    { numRuns: 500 },
  );
});
