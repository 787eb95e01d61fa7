import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as acids from '../../src/acids.js';
import { InputError } from '../../src/input/input-error.js';
import { defineProtolyte } from '../../src/substance/define-protolyte.js';
import type { Protolyte } from '../../src/substance/protolyte.js';
import { answerOrInputError, hostile, spoiled } from '../property/hostile.js';

const source = { kind: 'commonPractice', note: 'made up' } as const;
const diprotic = (first: number, second: number): Protolyte => ({
  id: 'made-up',
  name: 'made-up acid',
  species: [
    { formula: 'H2A', charge: 0 },
    { formula: 'HA-', charge: -1 },
    { formula: 'A(2-)', charge: -2 },
  ],
  steps: [
    { pKa: first, source },
    { pKa: second, source },
  ],
});

const faultsOf = (value: unknown): (readonly [string, string])[] => {
  try {
    defineProtolyte(value as Protolyte);
    return [];
  } catch (error) {
    return (error as InputError).issues.map(({ code, path }) => [code, path] as const);
  }
};

test('a protolyte in order comes back as it was given', () => {
  expect(defineProtolyte(diprotic(4, 9))).toEqual(diprotic(4, 9));
  expect(defineProtolyte(diprotic(4, 4))).toEqual(diprotic(4, 4));
});

test('steps out of order are accepted with a note, which a second definition does not repeat', () => {
  const once = defineProtolyte(diprotic(9, 4));
  expect(once.notes).toEqual([
    'made-up acid: pKa 2 is below pKa 1, so the species between them never prevails.',
  ]);
  expect(once.steps.map(({ pKa }) => pKa)).toEqual([9, 4]);
  expect(defineProtolyte(once)).toEqual(once);
});

test('every acid of the catalogue, which nothing reads at import, is sound, and as good after a trip through JSON', () => {
  for (const acid of Object.values(acids)) {
    const copy = JSON.parse(JSON.stringify(acid));
    expect(copy).toEqual(acid);
    expect(defineProtolyte(copy)).toEqual(acid);
  }
});

test('any text will do as a label', () => {
  const [first, ...rest] = diprotic(4, 9).species;
  expect(first).toBeDefined();
  expect(
    faultsOf({ ...diprotic(4, 9), species: [{ formula: 'the acid form', charge: 0 }, ...rest] }),
  ).toEqual([]);
});

test('all faults of a call are listed together', () => {
  const bad = {
    id: 7,
    species: [
      { formula: 'HA', charge: 0 },
      { formula: 'HA', charge: -2, colour: 'red' },
    ],
    steps: [{ pKa: 21, dh: 3, source: { kind: 'published', work: 'Harris', page: 7 } }, { pKa: 3 }],
    alternatives: [{ step: 3, pKa: Number.NaN, source }],
    notes: [''],
  };
  expect(faultsOf(bad).sort()).toEqual(
    [
      ['wrong-type', 'id'],
      ['missing', 'name'],
      ['unknown-key', 'species[1].colour'],
      ['conflict', 'species[1].formula'],
      ['conflict', 'species[1].charge'],
      ['conflict', 'steps'],
      ['unknown-key', 'steps[0].dh'],
      ['out-of-range', 'steps[0].pKa'],
      ['unknown-key', 'steps[0].source.page'],
      ['missing', 'steps[0].source.where'],
      ['missing', 'steps[1].source'],
      ['out-of-range', 'alternatives[0].step'],
      ['not-finite', 'alternatives[0].pKa'],
      ['out-of-range', 'notes[0]'],
    ].sort(),
  );
});

test.each([undefined, null, 5, 'acetic', []])(
  '%s instead of a protolyte is one fault, not one for each key',
  (value) => {
    expect(faultsOf(value)).toEqual([[value === undefined ? 'missing' : 'wrong-type', 'the argument']]);
  },
);

test.each([
  ['pKa', -10],
  ['pKa', 20],
])('the limits of %s are allowed: %d', (_, pKa) => {
  expect(faultsOf(diprotic(-10, pKa))).toEqual([]);
});

test('one species, or more than 16 steps, is too few or too many', () => {
  const many = Array.from({ length: 18 }, (_, index) => ({ formula: `A${index}`, charge: 9 - index }));
  const steps = Array.from({ length: 17 }, () => ({ pKa: 5, source }));
  expect(faultsOf({ ...diprotic(4, 9), species: many, steps })).toEqual([
    ['out-of-range', 'species'],
    ['out-of-range', 'steps'],
  ]);
  expect(faultsOf({ ...diprotic(4, 9), species: many.slice(1), steps: steps.slice(1) })).toEqual([]);
  expect(faultsOf({ ...diprotic(4, 9), species: many.slice(0, 1), steps: [] })).toEqual([
    ['out-of-range', 'species'],
    ['out-of-range', 'steps'],
  ]);
});

test('the message of an error says what was given and what is allowed', () => {
  expect(() => defineProtolyte(diprotic(4, 25))).toThrow(
    new InputError('defineProtolyte', [
      { code: 'out-of-range', path: 'steps[1].pKa', expected: 'a pKa, from -10 to 20', received: '25' },
    ]),
  );
});

test('anything, or a good protolyte with anything in it, is answered or an InputError', () => {
  fc.assert(
    fc.property(fc.oneof(hostile, spoiled(acids.edta), spoiled(diprotic(9, 4))), (value) => {
      const answer = answerOrInputError(() => defineProtolyte(value as Protolyte));
      if (answer !== undefined) expect(answer.species.length).toBe(answer.steps.length + 1);
    }),
    { numRuns: 500 },
  );
});
