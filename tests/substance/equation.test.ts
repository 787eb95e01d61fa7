import { describe, expect, test } from 'vitest';
import { equation } from '../../src/substance/equation.js';

const terms = (...formulas: string[]) => formulas.map((formula) => ({ count: 1, formula }));

describe('water stands where the equation balances', () => {
  test.each([
    ['a label that hides water', ['HCO3-', 'H+'], ['CO2(aq)'], 'HCO₃⁻ + H⁺ → CO₂(aq) + H₂O'],
    ['water that was given too much', ['B(OH)3', 'OH-'], ['B(OH)4-', 'H2O'], 'B(OH)₃ + OH⁻ → B(OH)₄⁻'],
    ['a gas that a base takes up', ['CO2(aq)', 'OH-'], ['HCO3-', 'H2O'], 'CO₂(aq) + OH⁻ → HCO₃⁻'],
    ['on the left', ['CO2(aq)', 'CO3(2-)'], ['HCO3-', 'HCO3-'], 'CO₂(aq) + CO₃²⁻ + H₂O → 2 HCO₃⁻'],
    ['nothing but water', ['H+', 'OH-'], [], 'H⁺ + OH⁻ → H₂O'],
    ['none where it balances without', ['NH3', 'H+'], ['NH4+'], 'NH₃ + H⁺ → NH₄⁺'],
    ['as it was given beside labels', ['HEPES', 'OH-'], ['HEPES-', 'H2O'], 'HEPES + OH⁻ → HEPES⁻ + H₂O'],
  ])('%s', (_, left, right, printed) => expect(equation(terms(...left), terms(...right))).toBe(printed));
});
