import { Matrix } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import { leastSquares } from '../../../src/measurement/fit/least-squares.js';

const unlimited = { from: -Infinity, to: Infinity };

/** y = a + b·x through (0, 1), (1, 3), (2, 5). */
const straight = {
  at: ([a = 0, b = 0]: Float64Array) => ({
    residuals: Float64Array.of(a - 1, a + b - 3, a + 2 * b - 5),
    jacobian: new Matrix([
      [1, 0],
      [1, 1],
      [1, 2],
    ]),
  }),
  start: [0, 0],
  limits: [unlimited, unlimited],
  negligible: 1e-24,
  mostPasses: 200,
};

describe('leastSquares', () => {
  test('goes to the line through points on a line', () => {
    const { status, parameters } = leastSquares(straight);
    expect(status).toBe('converged');
    expect(parameters[0]).toBeCloseTo(1, 10);
    expect(parameters[1]).toBeCloseTo(2, 10);
  });

  test('stops a parameter at its limit, and finds the best of the others there', () => {
    const limits = [unlimited, { from: -1, to: 1.5 }];
    const { status, parameters, atLimit } = leastSquares({ ...straight, limits });
    expect(status).toBe('converged');
    expect(atLimit).toEqual([false, true]);
    expect(parameters[1]).toBe(1.5);
    expect(parameters[0]).toBeCloseTo(1.5, 8); // the mean of y − 1.5·x; S tells √(1e-16) apart
  });

  test('leaves a limit where the sum falls inwards', () => {
    const limits = [unlimited, { from: -1, to: 5 }];
    expect(leastSquares({ ...straight, start: [0, 5], limits }).parameters[1]).toBeCloseTo(2, 10);
  });

  test('ends where no step is nearer: derivatives of the wrong sign', () => {
    const wrong = {
      ...straight,
      at: (b: Float64Array) => ({ ...straight.at(b), jacobian: straight.at(b).jacobian.neg() }),
    };
    expect(leastSquares(wrong).status).toBe('no-descent');
  });

  test('steps back from where the model has no answer', () => {
    const root = {
      at: ([a = 0]: Float64Array) => ({
        residuals: Float64Array.of(Math.log(a)), // none below zero
        jacobian: new Matrix([[1 / a]]),
      }),
      start: [10],
      limits: [unlimited],
      negligible: 1e-24,
      mostPasses: 200,
    };
    expect(leastSquares(root).parameters[0]).toBeCloseTo(1, 10);
  });

  test('goes far in a curved valley (J. J. Moré, B. S. Garbow, K. E. Hillstrom 1981, problem 1: Rosenbrock)', () => {
    const { status, parameters } = leastSquares({
      at: ([x = 0, y = 0]: Float64Array) => ({
        residuals: Float64Array.of(10 * (y - x * x), 1 - x),
        jacobian: new Matrix([
          [-20 * x, 10],
          [-1, 0],
        ]),
      }),
      start: [-1.2, 1],
      limits: [unlimited, unlimited],
      negligible: 1e-24,
      mostPasses: 200,
    });
    expect(status).toBe('converged');
    expect(parameters[0]).toBeCloseTo(1, 10);
    expect(parameters[1]).toBeCloseTo(1, 10);
  });
});
