import fc from 'fast-check';
import { settlingError, settlingWait, usualWait } from 'protolysis/measurement';
import { expect, test } from 'vitest';

test('after one time constant 1/e is missing, after none all', () => {
  expect(settlingError({ change: -2, timeConstant: 4 }, { seconds: 4 })).toBeCloseTo(-2 / Math.E, 12);
  expect(settlingError({ change: -2, timeConstant: 4 }, { seconds: 0 })).toBe(-2);
});

test('the wait for an error leaves that error', () =>
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 10, noNaN: true }),
      fc.double({ min: 0.5, max: 60, noNaN: true }),
      fc.double({ min: 1e-4, max: 0.09, noNaN: true }),
      (change, timeConstant, error) => {
        const seconds = settlingWait({ change, timeConstant }, { error });
        expect(settlingError({ change, timeConstant }, { seconds }) / error).toBeCloseTo(1, 9);
      },
    ),
  ));

test('a change within the error needs no wait', () =>
  expect(settlingWait({ change: 0.01, timeConstant: 4 }, { error: 0.01 })).toBe(0));

test('the usual wait settles a probe of 2 s to 0.01 after a small step, not one of 6 s', () => {
  expect(settlingWait({ change: 0.5, timeConstant: 2 }, { error: 0.01 })).toBeLessThan(usualWait.from);
  expect(settlingWait({ change: 0.5, timeConstant: 6 }, { error: 0.01 })).toBeGreaterThan(usualWait.to);
});
