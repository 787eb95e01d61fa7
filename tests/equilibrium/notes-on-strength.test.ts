import {
  acids,
  capacityOver,
  davies,
  defineProtolyte,
  defineReagent,
  equilibrate,
  makeSolution,
  reagents,
  type Step,
  titrate,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { notesOnStrength } from '../../src/equilibrium/activity/notes-on-strength.js';
import type { ConditionsInUse } from '../../src/equilibrium/conditions.js';

const salt = (molar: number) => makeSolution({ contents: [{ reagent: reagents.potassiumChloride, molar }] });

describe('the notes on ionic strength', () => {
  test('say nothing at the end of a law’s range, whatever the rounding of a sum', () => {
    const read = { activity: davies } as ConditionsInUse;
    expect(notesOnStrength(read, 0.5 + 4e-14)).toEqual([]);
    expect(notesOnStrength(read, 0.5 + 1e-6)).toHaveLength(1);
    expect(equilibrate(salt(0.51), { activity: davies }).notes.join()).toMatch(/beyond its range, up to 0.5/);
  });

  test.each(['sulfuricAcid', 'hydrochloricAcid'] as const)(
    'say that 5 mol/L %s has no pH to be used',
    (acid) => {
      const strong = makeSolution({ mL: 20, contents: [{ reagent: reagents[acid], molar: 5 }] });
      for (const conditions of [{}, { activity: davies }])
        expect(equilibrate(strong, conditions).notes.join()).toMatch(/Do not use this pH as a number/);
      expect(titrate({ analyte: strong, titrant: salt(0.1) }).notes.join()).toMatch(/Do not use/);
    },
  );

  test('say so of no solution of a teaching laboratory', () => {
    expect(equilibrate(salt(0.9)).notes).toEqual([]);
  });
});

describe('a capacity that is not above zero', () => {
  const [step] = acids.acetic.steps as readonly [Step];
  const protolyte = defineProtolyte({
    id: 'eleven',
    name: 'an acid of eleven equal steps',
    species: Array.from({ length: 12 }, (_, lost) => ({ formula: `A(${lost})`, charge: -lost })),
    steps: Array.from({ length: 11 }, () => ({ ...step, pKa: 6 })),
  });
  const reagent = defineReagent({
    id: 'eleven-salt',
    name: 'its salt',
    protolytes: [{ protolyte, count: 1 }],
    ions: [{ ion: { formula: 'Na+', charge: 1 }, count: 5.5 }],
  });
  const solution = makeSolution({ mL: 20, contents: [{ reagent, molar: 0.01 }] });
  const note = /capacity is not above zero/;

  test('is noted by equilibrate, capacityOver and a titration', () => {
    const { bufferCapacity, notes } = equilibrate(solution, { activity: davies });
    expect(bufferCapacity).toBeLessThanOrEqual(0);
    expect(notes.join()).toMatch(note);
    const titrant = makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] });
    expect(titrate({ analyte: solution, titrant, conditions: { activity: davies } }).notes.join()).toMatch(
      note,
    );
  });

  test('is not noted where it is above zero', () => {
    expect(equilibrate(solution).notes.join()).not.toMatch(note);
    expect(capacityOver(solution, { from: 5, to: 7 }).notes.join()).not.toMatch(note);
  });
});
