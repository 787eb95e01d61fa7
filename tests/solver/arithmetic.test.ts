import { expect, test } from 'vitest';
import { doubles, polynomial } from '../../src/solver/arithmetic.js';

test('the arithmetic of doubles is that of the language', () => {
  const { of, plus, minus, times, over, decimal } = doubles;
  expect([of(7), decimal(0.1)]).toEqual([7, 0.1]);
  expect([plus(7, 2), minus(7, 2), times(7, 2), over(7, 2)]).toEqual([9, 5, 14, 3.5]);
});

test('a polynomial takes its coefficients from the constant upwards', () => {
  expect(polynomial(doubles, [5], 3)).toBe(5);
  expect(polynomial(doubles, [1, -2, 3], 4)).toBe(1 - 2 * 4 + 3 * 16);
});
