// Certified values of the NIST Statistical Reference Datasets (https://www.itl.nist.gov/div898/strd), data and values from
// memory; that ten digits agree is what speaks for the memory. Wampler1's data are a formula.
import { Matrix } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import { fitCovariance } from '../../src/measurement/fit/fit-covariance.js';
import { leastSquares } from '../../src/measurement/fit/least-squares.js';

interface Model {
  readonly at: (b: readonly number[], x: readonly number[]) => number;
  /** By each parameter. */
  readonly slopes: (b: readonly number[], x: readonly number[]) => readonly number[];
}

const unlimited = { from: -Infinity, to: Infinity };

function fitted(
  { at, slopes }: Model,
  x: readonly (readonly number[])[],
  y: readonly number[],
  start: readonly number[],
) {
  const found = leastSquares({
    at(parameters) {
      const b = [...parameters];
      return {
        residuals: Float64Array.from(y, (each, i) => at(b, x[i] ?? []) - each),
        jacobian: new Matrix(x.map((each) => [...slopes(b, each)])),
      };
    },
    start,
    limits: start.map(() => unlimited),
    negligible: 0,
    mostPasses: 200,
  });
  const s = Math.sqrt(found.sum / (y.length - start.length));
  return {
    ...found,
    s,
    deviations: fitCovariance(found.jacobian).deviations.map((d) => (d ?? Number.NaN) * s),
  };
}

/** Digits that agree, as NIST counts them. */
const digits = (found: number, certified: number) =>
  found === certified ? 16 : -Math.log10(Math.abs(found - certified) / Math.abs(certified));

const misraX = [
  77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0,
];
const misraY = [
  10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78,
];

const nonlinear = [
  {
    name: 'Misra1a',
    x: misraX,
    y: misraY,
    at: ([a = 0, b = 0], [x = 0]) => a * -Math.expm1(-b * x),
    slopes: ([a = 0, b = 0], [x = 0]) => [-Math.expm1(-b * x), a * x * Math.exp(-b * x)],
    starts: [
      [500, 0.0001],
      [250, 0.0005],
    ],
    values: [2.3894212918e2, 5.5015643181e-4],
    deviations: [2.7070075241, 7.2668688436e-6],
    sum: 1.2455138894e-1,
  },
  {
    name: 'Misra1b',
    x: misraX,
    y: misraY,
    at: ([a = 0, b = 0], [x = 0]) => a * (1 - (1 + (b * x) / 2) ** -2),
    slopes: ([a = 0, b = 0], [x = 0]) => [1 - (1 + (b * x) / 2) ** -2, a * x * (1 + (b * x) / 2) ** -3],
    starts: [
      [500, 0.0001],
      [300, 0.0002],
    ],
    values: [3.3799746163e2, 3.9039091287e-4],
    deviations: [3.1643950207, 4.2547321834e-6],
    sum: 7.5464681533e-2,
  },
  {
    name: 'Misra1c',
    x: misraX,
    y: misraY,
    at: ([a = 0, b = 0], [x = 0]) => a * (1 - (1 + 2 * b * x) ** -0.5),
    slopes: ([a = 0, b = 0], [x = 0]) => [1 - (1 + 2 * b * x) ** -0.5, a * x * (1 + 2 * b * x) ** -1.5],
    starts: [
      [500, 0.0001],
      [600, 0.0002],
    ],
    values: [6.3642725809e2, 2.0813627256e-4],
    deviations: [4.6638326572, 1.7728423155e-6],
    sum: 4.0966836971e-2,
  },
  {
    name: 'Misra1d',
    x: misraX,
    y: misraY,
    at: ([a = 0, b = 0], [x = 0]) => (a * b * x) / (1 + b * x),
    slopes: ([a = 0, b = 0], [x = 0]) => [(b * x) / (1 + b * x), (a * x) / (1 + b * x) ** 2],
    starts: [
      [500, 0.0001],
      [450, 0.0003],
    ],
    values: [4.3736970754e2, 3.0227324449e-4],
    deviations: [3.6489174345, 2.9334354479e-6],
    sum: 5.6419295283e-2,
  },
  {
    name: 'DanWood',
    x: [1.309, 1.471, 1.49, 1.565, 1.611, 1.68],
    y: [2.138, 3.421, 3.597, 4.34, 4.882, 5.66],
    at: ([a = 0, b = 0], [x = 0]) => a * x ** b,
    slopes: ([a = 0, b = 0], [x = 0]) => [x ** b, a * x ** b * Math.log(x)],
    starts: [
      [1, 5],
      [0.7, 4],
    ],
    values: [7.6886226176e-1, 3.8604055871],
    deviations: [1.828197386e-2, 5.1726610913e-2],
    sum: 4.3173084083e-3,
  },
] satisfies readonly (Model & Record<string, unknown>)[];

describe.each(nonlinear)('$name', ({ x, y, at, slopes, starts, values, deviations, sum }) => {
  test.each(starts.map((start) => ({ start })))('from $start: ten digits', ({ start }) => {
    const points = x.map((each) => [each]);
    const found = fitted({ at, slopes }, points, y, start);
    expect(found.status).toBe('converged');
    // the certified values have eleven digits
    for (const [j, value] of values.entries())
      expect(digits(found.parameters[j] ?? 0, value)).toBeGreaterThan(10);
    expect(digits(found.sum, sum)).toBeGreaterThan(10);
    // a deviation moves with the parameters: at their eleventh digit it is good to nine
    for (const [j, value] of deviations.entries())
      expect(digits(found.deviations[j] ?? 0, value)).toBeGreaterThan(9);
  });
});

const linear: Model = {
  at: (b, x) => x.reduce((sum, each, j) => sum + each * (b[j] ?? 0), 0),
  slopes: (_, x) => x,
};

test('Longley, seven parameters that are hard to tell apart: eight digits', () => {
  const columns = [
    [83, 88.5, 88.2, 89.5, 96.2, 98.1, 99, 100, 101.2, 104.6, 108.4, 110.8, 112.6, 114.2, 115.7, 116.9],
    [
      234289, 259426, 258054, 284599, 328975, 346999, 365385, 363112, 397469, 419180, 442769, 444546, 482704,
      502601, 518173, 554894,
    ],
    [2356, 2325, 3682, 3351, 2099, 1932, 1870, 3578, 2904, 2822, 2936, 4681, 3813, 3931, 4806, 4007],
    [1590, 1456, 1616, 1650, 3099, 3594, 3547, 3350, 3048, 2857, 2798, 2637, 2552, 2514, 2572, 2827],
    [
      107608, 108632, 109773, 110929, 112075, 113270, 115094, 116219, 117388, 118734, 120445, 121950, 123366,
      125368, 127852, 130081,
    ],
    Array.from({ length: 16 }, (_, k) => 1947 + k),
  ];
  const y = [
    60323, 61122, 60171, 61187, 63221, 63639, 64989, 63761, 66019, 67857, 68169, 66513, 68655, 69564, 69331,
    70551,
  ];
  const x = y.map((_, i) => [1, ...columns.map((column) => column[i] ?? 0)]);
  const found = fitted(linear, x, y, [0, 0, 0, 0, 0, 0, 0]);
  const certified = [
    [-3482258.63459582, 890420.383607373],
    [15.0618722713733, 84.9149257747669],
    [-0.035819179292591, 0.0334910077722432],
    [-2.02022980381683, 0.488399681651699],
    [-1.03322686717359, 0.214274163161675],
    [-0.0511041056535807, 0.22607320006937],
    [1829.15146461355, 455.478499142212],
  ];
  // the condition of its columns, scaled, is 4e4: of sixteen digits that many are lost in the step, and as many again in
  // the sum that ends the search
  for (const [j, [value, deviation]] of certified.entries()) {
    expect(digits(found.parameters[j] ?? 0, value as number)).toBeGreaterThan(8);
    expect(digits(found.deviations[j] ?? 0, deviation as number)).toBeGreaterThan(8);
  }
  expect(digits(found.s, 304.854073561965)).toBeGreaterThan(10);
});

test('Wampler1, a polynomial of fifth degree without scatter: each coefficient is 1', () => {
  const x = Array.from({ length: 21 }, (_, k) => Array.from({ length: 6 }, (_, power) => k ** power));
  const found = fitted(
    linear,
    x,
    x.map((powers) => powers.reduce((sum, each) => sum + each)),
    [0, 0, 0, 0, 0, 0],
  );
  for (const value of found.parameters) expect(digits(value, 1)).toBeGreaterThan(8);
});
