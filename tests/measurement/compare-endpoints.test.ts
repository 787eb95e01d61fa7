import { compareEndpoints } from 'protolysis/measurement';
import { expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const readings = {
  mL: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9],
  pH: [2, 2.1, 2.3, 2.6, 3, 7, 11.1, 11.3, 11.5, 11.6],
  notes: [],
};

test('each method has its row, and an end point by a fit its own', () => {
  const fitted = { value: 5.1, standardUncertainty: 0.01, degreesOfFreedom: 7 };
  const rows = compareEndpoints(readings, { flask: 20, others: [{ method: 'fit', estimate: fitted }] });
  expect(rows.map(({ method }) => method)).toEqual([
    'steepestSlope',
    'zeroSecondDerivative',
    'granExcess',
    'fit',
  ]);
  expect(rows.at(-1)).toEqual({ method: 'fit', point: 1, mL: 5.1, standardUncertainty: 0.01, notes: [] });
});

test('several end points found by one other way are numbered as those of a method are', () => {
  const at = (value: number) => ({ value, standardUncertainty: 0.01, degreesOfFreedom: 7 });
  const others = [
    { method: 'fit', estimate: at(2.5) },
    { method: 'indicator', estimate: at(5.2) },
    { method: 'fit', estimate: at(5.1) },
  ];
  const rows = compareEndpoints(readings, { methods: [], others });
  expect(rows.map(({ method, point }) => [method, point])).toEqual([
    ['fit', 1],
    ['indicator', 1],
    ['fit', 2],
  ]);
});

test('a method that needs the volume in the flask asks for it', () =>
  expect(listed(() => compareEndpoints(readings, { methods: ['granStrong'] }))).toEqual([
    'missing options.flask',
  ]));
