import {
  acids,
  defineProtolyte,
  equilibrate,
  ideal,
  makeSolution,
  type Protolyte,
  pHOf,
  pHsOf,
  reagents,
  type Source,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { readConditions } from '../../src/equilibrium/conditions.js';
import { Faults } from '../../src/input/faults.js';
import { listed } from '../faults-of.js';

const water = makeSolution({ contents: [] });
const seltzer = makeSolution({ contents: [{ reagent: reagents.carbonDioxide, molar: 0.01 }] });
const source: Source = { kind: 'commonPractice', note: 'an input of this test' };

const pH = (conditions: object) => pHOf(water, conditions);
const gas = (more: object) => pH({ carbonDioxide: { atm: 1e-3, ...more } });

/** What is one too far, and its fault; then what is just allowed. */
const limits: readonly [(more: object) => unknown, object, string, object][] = [
  [pH, { celsius: -0.1 }, 'celsius', { celsius: 0 }],
  [pH, { celsius: 100.1 }, 'celsius', { celsius: 100 }],
  [pH, { pKw: 9.9 }, 'pKw', { pKw: 10 }],
  [pH, { pKw: 20.1 }, 'pKw', { pKw: 20 }],
  [gas, { atm: -1e-9 }, 'carbonDioxide.atm', { atm: 0 }],
  [gas, { atm: 100.1 }, 'carbonDioxide.atm', { atm: 100 }],
  [gas, { escape: -0.1 }, 'carbonDioxide.escape', { escape: 0 }],
  [gas, { escape: 1.1 }, 'carbonDioxide.escape', { escape: 1 }],
  [gas, { pKH: -2.1 }, 'carbonDioxide.pKH', { pKH: -2 }],
  [gas, { pKH: 5.1 }, 'carbonDioxide.pKH', { pKH: 5 }],
  [gas, { year: -10001 }, 'carbonDioxide.year', { year: -10000 }],
  [gas, { year: 10001 }, 'carbonDioxide.year', { year: 10000 }],
];

test.each(limits)('conditions go as far as their limits, %#', (call, beyond, path, allowed) => {
  expect(listed(() => call(beyond))).toEqual([`out-of-range conditions.${path}`]);
  expect(listed(() => call(allowed))).toEqual([]);
});

describe('the protolyte of the gas', () => {
  /** Carbonic acid with another first constant, and the charge with which it begins. */
  const other = (charge = 0, id = 'carbonic') =>
    defineProtolyte({
      id,
      name: 'another gas',
      species: [0, 1].map((lost) => ({ formula: `${id} ${lost}`, charge: charge - lost })),
      steps: [{ pKa: 6.3, source }],
    });

  test('is neutral', () => {
    expect(listed(() => gas({ protolyte: other(1) }))).toEqual([
      'out-of-range conditions.carbonDioxide.protolyte.species[0].charge',
    ]);
    expect(listed(() => gas({ protolyte: other() }))).toEqual([]);
  });

  test('is refused for what is wrong with it, and not for a charge that could not be read', () => {
    const at = 'conditions.carbonDioxide.protolyte';
    expect(listed(() => gas({ protolyte: { ...other(), species: [] } }))).toEqual([
      `out-of-range ${at}.species`,
    ]);
    expect(listed(() => gas({ protolyte: { ...other(1), name: '' } }))).toEqual([`out-of-range ${at}.name`]);
  });

  test('has one set of constants, that of the solution', () => {
    const conflict = ['conflict conditions.carbonDioxide.protolyte'];
    const open = (protolyte: Protolyte) => ({ carbonDioxide: { atm: 1e-3, protolyte } });
    const columns = { contents: [{ reagent: reagents.carbonDioxide, molar: [0.01] }] };
    expect(listed(() => pHOf(seltzer, open(other())))).toEqual(conflict);
    expect(listed(() => equilibrate(seltzer, open(other())))).toEqual(conflict);
    expect(listed(() => pHsOf(columns, open(other())))).toEqual(conflict);
    // the same constants, another id, and another acid beside it
    expect(listed(() => pHOf(seltzer, open(acids.carbonic)))).toEqual([]);
    expect(listed(() => pHOf(seltzer, open(structuredClone(acids.carbonic))))).toEqual([]);
    expect(listed(() => pHOf(seltzer, open(other(0, 'other'))))).toEqual([]);
    const vinegar = makeSolution({ contents: [{ reagent: reagents.aceticAcid, molar: 0.01 }] });
    expect(listed(() => pHOf(vinegar, open(other())))).toEqual([]);
  });

  test('is not compared where it could not be read', () => {
    const bad = { carbonDioxide: { atm: 1e-3, protolyte: 7 } };
    expect(listed(() => pHOf(seltzer, bad as never))).toEqual([
      'wrong-type conditions.carbonDioxide.protolyte',
    ]);
  });
});

test('the source of a pressure is read', () => {
  expect(listed(() => gas({ source: { kind: 'rumour' } }))).toEqual([
    'wrong-type conditions.carbonDioxide.source.kind',
  ]);
  expect(listed(() => gas({ source }))).toEqual([]);
});

describe('conditions as they were read', () => {
  const given = (conditions?: object) => {
    const faults = new Faults('test');
    const read = readConditions(conditions, 'conditions', faults);
    faults.done();
    return read.given;
  };

  test('keep what was given, and add nothing but the temperature', () => {
    const all = { celsius: 37, pKw: 13.6, activity: ideal, carbonDioxide: { atm: 1e-3, source } };
    expect(given()).toEqual({ celsius: 25 });
    expect(Object.keys(given({}))).toEqual(['celsius']);
    expect(given(all)).toEqual(all);
    expect(given({ pKw: 14 })).toEqual({ celsius: 25, pKw: 14 });
    expect(equilibrate(water, all).conditions).toEqual(all);
  });

  test('keep the ideal law itself', () => {
    expect(given({ activity: ideal }).activity).toBe(ideal);
  });
});

describe('the range of Henry’s constant', () => {
  // Plummer and Busenberg (1982) fitted it from 0 to 90 °C
  const notes = (celsius: number, more: object = { carbonDioxide: { atm: 1e-3 } }) =>
    equilibrate(water, { celsius, ...more }).notes.filter((note) => note.includes('Henry'));

  test('is told of beyond it', () => {
    expect(notes(90.1)).toEqual([
      "Carbon dioxide: 90.1 °C is outside the range of Henry's constant, 0 to 90 °C.",
    ]);
  });

  test.each([0, 25, 90])('is not told of within it, at %d °C', (celsius) => {
    expect(notes(celsius)).toEqual([]);
  });

  test('is not told of where the constant was given or there is no gas', () => {
    expect(notes(95, { carbonDioxide: { atm: 1e-3, pKH: 2 } })).toEqual([]);
    expect(notes(95, {})).toEqual([]);
  });
});
