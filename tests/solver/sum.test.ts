import { expect, test } from 'vitest';
import { sum } from '../../src/solver/sum.js';

test('what cancels leaves nothing behind', () => {
  expect(sum([1, 1e100, 1, -1e100])).toBe(2);
  // the doubles nearest to these decimals add up, in whole numbers of 2⁻¹⁰⁷⁴, to
  expect(sum([0.1, 0.2, -0.3])).toBe(2 ** -55);
  expect(sum([5, -4.9, -0.1])).toBe(-3.608224830031759e-16);
});

test('ten tenths are one', () => {
  expect(sum(Array(10).fill(0.1))).toBe(1);
});

test('nothing adds up to zero', () => {
  expect(sum([])).toBe(0);
});
