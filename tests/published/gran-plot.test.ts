import { compareEndpoints, findEndpoints } from 'protolysis/measurement';
import { expect, test } from 'vitest';

// OpenStax Chemistry 14.7, table: 25.00 mL of 0.100 mol/L acetic acid (Ka 1.8e-5) with 0.100 mol/L sodium hydroxide; ten of
// its rows checked against the page, the others from memory. The method: G. Gran, Analyst 77, 661 (1952).
const mL = [0, 5, 10, 15, 20, 22, 24, 24.5, 24.9, 25, 25.1, 25.5, 26, 28, 30, 35, 40, 45, 50];
const pH = [
  2.87, 4.14, 4.57, 4.92, 5.35, 5.61, 6.13, 6.44, 7.14, 8.72, 10.3, 11.0, 11.29, 11.75, 11.96, 12.22, 12.36,
  12.46, 12.52,
];
const readings = { mL, pH, notes: [] };

// The lines were worked out apart from this package and rounded to 0.01 mL.
test('V·10^-pH before the end point meets zero at 24.97 mL, (25 + V)·10^(pH - 14) after it at 25.00 mL', () => {
  const before = findEndpoints(readings, { method: 'granWeak', window: { from: 5, to: 24.5 } });
  const after = findEndpoints(readings, { method: 'granExcess', flask: 25, window: { from: 25.5, to: 50 } });
  expect(before.endpoints[0]?.mL).toBeCloseTo(24.97, 2);
  expect(after.endpoints[0]?.mL).toBeCloseTo(25.0, 2);
});

test('every method puts the end point within a drop or two, 0.1 mL, of the 25.00 mL of the table', () => {
  for (const { mL: at, method } of compareEndpoints(readings, {
    methods: ['steepestSlope', 'zeroSecondDerivative', 'granWeak', 'granExcess'],
    flask: 25,
  }))
    expect([method, Math.abs(at - 25) < 0.1]).toEqual([method, true]);
});
