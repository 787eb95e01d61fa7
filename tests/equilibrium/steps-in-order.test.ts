import { expect, test } from 'vitest';
import { stepsInOrder } from '../../src/equilibrium/steps-in-order.js';

const orderOf = (...pKa: readonly (readonly number[])[]) =>
  stepsInOrder(pKa.map((own) => own.map((value) => 10 ** -value))).map(
    ({ family, step }) => `${family}.${step}`,
  );

test('protons leave in order of pKa, whatever acid they belong to', () => {
  expect(orderOf([2.148, 7.198, 12.35], [4.756])).toEqual(['0.0', '1.0', '0.1', '0.2']);
});

test('those of one acid always leave in their own sequence', () => {
  expect(orderOf([6, 4], [5])).toEqual(['1.0', '0.0', '0.1']);
});

test('acids that tie leave in the order given', () => {
  expect(orderOf([5], [5])).toEqual(['0.0', '1.0']);
});

test('no acid, no step', () => {
  expect(orderOf()).toEqual([]);
});
