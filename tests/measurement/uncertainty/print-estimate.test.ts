import { printEstimate, printResult } from 'protolysis/measurement';
import { expect, test } from 'vitest';

test.each([
  [0.1021374, 0.0000996, '0.10214, standard uncertainty 0.00010'],
  [24.31, 0.0204, '24.310, standard uncertainty 0.020'],
  [1.2, 34, '1, standard uncertainty 34'],
  [12346, 678, '1.235·10^4, standard uncertainty 0.068·10^4'],
  [0.0000123456, 0.00000012, '1.235·10^-5, standard uncertainty 0.012·10^-5'],
  [-0.0004, 0.02, '0.000, standard uncertainty 0.020'],
  [0, 0.5, '0.00, standard uncertainty 0.50'],
  [3.25, 0, '3.25, standard uncertainty 0'],
  [0.9499129687500001, 0, '0.9499129688, standard uncertainty 0'],
  [1.7926642292723198, 7.34e-18, '1.792664229, standard uncertainty 7.3e-18'],
])('%s with u = %s is printed as %s', (value, standardUncertainty, printed) => {
  expect(printEstimate({ value, standardUncertainty, degreesOfFreedom: null })).toBe(printed);
});

test('a result of inputs without uncertainty says so', () => {
  const result = {
    value: 0.9499129687500001,
    standardUncertainty: 0,
    degreesOfFreedom: null,
    level: 0.95,
    coverageFactor: 1.96,
    expandedUncertainty: 0,
    contributions: [],
  };
  expect(printResult(result, 'g/g')).toBe('0.9499129688 g/g, no uncertainty given');
});

test('a result names its coverage factor and its level', () => {
  const result = {
    value: 0.9512,
    standardUncertainty: 0.0021,
    degreesOfFreedom: 9.3,
    level: 0.95,
    coverageFactor: 2.2506,
    expandedUncertainty: 0.00473,
    contributions: [],
  };
  expect(printResult(result, 'g/g')).toBe('(0.9512 ± 0.0047) g/g, k = 2.3 for 95 %');
});
