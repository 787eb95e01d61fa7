import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { faultsOf } from '../faults-of.js';
import { badNumberIn } from '../property/answers.js';
import { changeable } from '../property/changeable.js';
import {
  answerOrInputError,
  copyOf,
  hostileArguments,
  pathsOf,
  spoiled,
  valueAt,
} from '../property/hostile.js';
import { exported, good } from './hostile-calls.js';

test('every function of the entry is met here', () =>
  expect(exported.map(([name]) => name).sort()).toEqual(Object.keys(good).sort()));

/** What promises came to: each must be kept with a sound answer or broken with an InputError. */
const promises: Promise<unknown>[] = [];
const settled = (answer: unknown): unknown => {
  if (!(answer instanceof Promise)) return answer;
  const check = answer.then(
    (kept) => badNumberIn(kept),
    (error) => (error?.name === 'InputError' ? undefined : error),
  );
  promises.push(check);
  return undefined;
};
afterAll(
  async () => expect((await Promise.all(promises)).filter((bad) => bad !== undefined)).toEqual([]),
  60_000, // for a busy machine, as any test
);

const numbersIn = (values: readonly unknown[]) =>
  pathsOf(values).filter((path) => typeof valueAt(values, path) === 'number');

function withNaN(values: readonly unknown[], path: readonly string[]): readonly unknown[] {
  const copy = copyOf(values) as unknown as Record<string, unknown>;
  const holder = valueAt(copy, path.slice(0, -1)) as Record<string, unknown>;
  holder[path.at(-1) ?? ''] = Number.NaN;
  return copy as unknown as readonly unknown[];
}

describe.each(exported)('%s', (name, call) => {
  const examples = good[name] ?? [];
  const run = (values: readonly unknown[]) => settled(call(...(values as never[])));
  const expectSound = (answer: unknown): void => {
    expect(badNumberIn(answer)).toBeUndefined();
  };

  test('answers to good arguments, without NaN, and leaves them as they were', () => {
    for (const values of examples) {
      const before = copyOf(values);
      const answer = run(values);
      expectSound(answer);
      expect(changeable(answer, 'result')).toEqual([]);
      expect(values).toEqual(before);
    }
  });

  test('answers to anything else with an InputError and nothing else', () =>
    fc.assert(
      fc.property(hostileArguments, (make) => expectSound(answerOrInputError(() => run(make())))),
      { numRuns: 100 },
    ));

  test('answers to good arguments with one thing spoiled likewise', () => {
    for (const values of examples)
      fc.assert(
        fc.property(spoiled(values), (bad) => expectSound(answerOrInputError(() => run(bad)))),
        { numRuns: 150 },
      );
  });

  test('never answers NaN with NaN: what it reads is refused, what it does not read is no matter', () => {
    for (const values of examples)
      for (const path of numbersIn(values)) {
        const told = faultsOf(() => expectSound(run(withNaN(values, path))));
        expect(told.every(({ code }) => code === 'not-finite')).toBe(true);
      }
  });
});
