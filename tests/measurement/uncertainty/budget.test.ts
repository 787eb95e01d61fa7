import fc from 'fast-check';
import { uncertaintyBudget } from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';
import { faultsOf } from '../../faults-of.js';

const estimate = (value: number, standardUncertainty: number, degreesOfFreedom: number | null = null) => ({
  value,
  standardUncertainty,
  degreesOfFreedom,
});

describe('uncertaintyBudget', () => {
  test('adds absolute uncertainties of a sum, and relative ones of a product, as squares', () => {
    const inputs = { a: estimate(10, 0.3), b: estimate(4, 0.4) };
    expect(uncertaintyBudget(inputs, ({ a, b }) => a - b).standardUncertainty).toBeCloseTo(0.5, 9);
    const { value, standardUncertainty } = uncertaintyBudget(inputs, ({ a, b }) => a / b);
    expect(standardUncertainty / value).toBeCloseTo(Math.hypot(0.03, 0.1), 8);
  });

  test('analytic sensitivities and central differences agree to 1e-9', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        (x, y) => {
          const inputs = { x: estimate(x, x / 100), y: estimate(y, y / 50) };
          const model = ({ x, y }: { x: number; y: number }) => Math.log(x) * y + x ** 2 / y;
          const sensitivities = { x: y / x + (2 * x) / y, y: Math.log(x) - x ** 2 / y ** 2 };
          const byDifferences = uncertaintyBudget(inputs, model);
          const analytic = uncertaintyBudget(inputs, model, { sensitivities });
          // an error of 1e-10 of the larger terms, that may cancel in the derivative by y
          const scale = Math.abs(y / x) * x + (2 * x ** 2) / y + Math.abs(Math.log(x)) * y;
          expect(Math.abs(byDifferences.standardUncertainty - analytic.standardUncertainty)).toBeLessThan(
            1e-9 * scale,
          );
        },
      ),
    ));

  test('an input of value zero has its sensitivity too', () => {
    const { contributions } = uncertaintyBudget(
      { offset: estimate(0, 0.02), mL: 25 },
      ({ offset, mL }) => 3 * (mL - offset),
    );
    expect(contributions[0]?.sensitivity).toBeCloseTo(-3, 9);
    expect(contributions[0]?.contribution).toBeCloseTo(0.06, 9);
    expect(contributions.map(({ percent }) => percent)).toEqual([100, 0]);
  });

  test('a result without uncertainty has infinitely many degrees of freedom', () => {
    const { standardUncertainty, degreesOfFreedom, expandedUncertainty } = uncertaintyBudget(
      { a: 2 },
      ({ a }) => a,
    );
    expect([standardUncertainty, degreesOfFreedom, expandedUncertainty]).toEqual([0, null, 0]);
  });

  test('percentages add up to 100, and degrees of freedom lie between the fewest and the sum', () => {
    const freedom = fc.integer({ min: 1, max: 50 });
    const part = fc.double({ min: 1e-3, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(part, freedom), { minLength: 1, maxLength: 8 }), (parts) => {
        const inputs = Object.fromEntries(parts.map(([u, nu], k) => [`x${k}`, estimate(k, u, nu)]));
        const budget = uncertaintyBudget(inputs, (values) =>
          Object.values(values).reduce((a, b) => a + b, 0),
        );
        expect(budget.contributions.reduce((sum, { percent }) => sum + percent, 0)).toBeCloseTo(100, 8);
        // the bounds hold exactly (GUM, G.4.1, note); a part in 1e8 is for the differences
        const freedoms = parts.map(([, nu]) => nu);
        expect(budget.degreesOfFreedom).toBeGreaterThanOrEqual(Math.min(...freedoms) * (1 - 1e-8));
        expect(budget.degreesOfFreedom).toBeLessThanOrEqual(freedoms.reduce((a, b) => a + b) * (1 + 1e-8));
      }),
    );
  });

  test('the result of one budget is an input of the next', () => {
    const molar = uncertaintyBudget({ mmol: estimate(2.5, 0.001, 4), mL: 25 }, ({ mmol, mL }) => mmol / mL);
    const withMore = { ...molar, notes: [] }; // as a result of standardiseTitrant has
    const again = uncertaintyBudget({ molar: withMore }, ({ molar }) => molar * 25);
    expect(again.standardUncertainty).toBeCloseTo(0.001, 10);
    expect(again.degreesOfFreedom).toBeCloseTo(4, 6);
  });

  test('names a model that fails, and one that gives no number', () => {
    const broken = () => {
      throw new Error('no');
    };
    expect(faultsOf(() => uncertaintyBudget({ a: 1 }, broken))[0]?.path).toBe('model');
    expect(faultsOf(() => uncertaintyBudget({ a: 0 }, ({ a }) => 1 / a))[0]?.path).toBe('model');
    expect(faultsOf(() => uncertaintyBudget({ a: 0 }, ({ a }) => Math.sqrt(a)))[0]?.expected).toContain(
      'about the estimates',
    );
  });

  test('tells a misspelt key of an estimate', () => {
    const bad = { value: 1, standardUncertainty: 0, degreesOfFreedom: null, distributoin: 'normal' };
    expect(faultsOf(() => uncertaintyBudget({ a: bad as never }, () => 1))[0]?.code).toBe('unknown-key');
  });
});
