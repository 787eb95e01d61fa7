import fc from 'fast-check';
import type { Titration } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { faultsOf } from '../faults-of.js';
import { read } from '../tree.js';
import { badNumberIn, everythingOf } from './answers.js';
import { changeable } from './changeable.js';
import { answerOrInputError, copyOf, hostileArguments, pathsOf, spoiled, valueAt } from './hostile.js';
import {
  buffers,
  calls,
  entries,
  exported,
  good,
  goodForTitration,
  handouts,
  methods,
  plots,
  titration,
} from './hostile-calls.js';

test('every function that any entry exports, and every method of a titration, is met here', () => {
  const elsewhere = ['exact', 'measurement']; // tests/exact/hostile-input.test.ts, tests/measurement/hostile-input.test.ts
  expect([...Object.keys(entries), ...elsewhere].sort()).toEqual(
    Object.keys(JSON.parse(read('package.json')).tsup.entry).sort(),
  );
  expect(exported.map(([name]) => name).sort()).toEqual(
    Object.keys({ ...good, ...buffers, ...plots, ...handouts }).sort(),
  );
  expect(methods.map(([name]) => name).sort()).toEqual(Object.keys(goodForTitration).sort());
});

/** A titration is asked for all it has. */
function expectSound(answer: unknown): void {
  const isTitration = typeof answer === 'object' && answer !== null && 'pHAt' in answer;
  for (const part of isTitration ? everythingOf(answer as Titration) : [answer])
    expect(badNumberIn(part)).toBeUndefined();
  if (typeof answer === 'object' && answer !== null && 'svg' in answer)
    expect(answer.svg).not.toMatch(/="[^"]*(?:NaN|Infinity|undefined)/);
}

const numbersIn = (values: readonly unknown[]) =>
  pathsOf(values).filter((path) => typeof valueAt(values, path) === 'number');

function withNaN(values: readonly unknown[], ...paths: readonly string[][]): readonly unknown[] {
  const copy = copyOf(values) as unknown as Record<string, unknown>;
  for (const path of paths) {
    const holder = valueAt(copy, path.slice(0, -1)) as Record<string, unknown>;
    holder[path.at(-1) ?? ''] = Number.NaN;
  }
  return copy as unknown as readonly unknown[];
}

describe.each(calls)('$name', ({ call, examples }) => {
  const run = (values: readonly unknown[]) => call(...(values as never[]));

  test('answers to good arguments, without NaN, and leaves them as they were', () => {
    expect(examples.length).toBeGreaterThan(0);
    for (const values of examples) {
      const before = copyOf(values);
      const answer = run(values);
      expectSound(answer);
      expect(changeable(answer, 'result')).toEqual([]);
      if (call !== titration.pHs) expect(values).toEqual(before); // it fills the array that it is given
    }
  });

  test('answers to anything else with an InputError and nothing else', () => {
    fc.assert(
      fc.property(hostileArguments, (make) => expectSound(answerOrInputError(() => run(make())))),
      { numRuns: 150 },
    );
  });

  test('answers to good arguments with one thing spoiled likewise', () => {
    for (const values of examples)
      fc.assert(
        fc.property(spoiled(values), (bad) => expectSound(answerOrInputError(() => run(bad)))),
        { numRuns: 200 },
      );
  });

  test('lists all that is not a number in one call', () => {
    for (const values of examples) {
      const faulty = numbersIn(values).filter(
        (path) => faultsOf(() => run(withNaN(values, path))).length > 0,
      );
      const told = faultsOf(() => run(withNaN(values, ...faulty)));
      // more than a hundred end the reading of a call
      expect(told.filter(({ code }) => code === 'not-finite')).toHaveLength(Math.min(faulty.length, 100));
    }
  });
});
