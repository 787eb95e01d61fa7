import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeable } from '../property/changeable.js';
import { answerOrInputError, hostileArguments, spoiled } from '../property/hostile.js';
import { callables, good } from './hostile-calls.js';

test('every function of the entry, and every method of a titration, is met here', () => {
  expect(callables.map(([name]) => name).sort()).toEqual(Object.keys(good).sort());
});

describe.each(callables)('%s', (name, call) => {
  const run = (values: readonly unknown[]) => call(...(values as never[]));
  const values = good[name] ?? [];

  test('answers to good arguments', () => {
    expect(changeable(run(values), 'result')).toEqual([]);
  });

  test('answers to anything else with an InputError and nothing else', () => {
    fc.assert(
      fc.property(hostileArguments, (make) => void answerOrInputError(() => run(make()))),
      { numRuns: 100 },
    );
  });

  test('answers to good arguments with one thing spoiled likewise', () => {
    fc.assert(
      fc.property(spoiled(values), (bad) => void answerOrInputError(() => run(bad))),
      { numRuns: 100 },
    );
  });
});
