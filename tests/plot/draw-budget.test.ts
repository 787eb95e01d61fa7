import { uncertaintyBudget } from 'protolysis/measurement';
import { drawBudget, plotLimits } from 'protolysis/plot';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';
import { attribute, textsOf } from './texts-of.js';

const exactly = (standardUncertainty: number) => ({ value: 1, standardUncertainty, degreesOfFreedom: null });
/** A sum, so that each input's share of the variance is that of its own: (1, 2, 4)/√21 squared. */
const budget = uncertaintyBudget(
  { small: exactly(1), large: exactly(4), middle: exactly(2), exact: 7 },
  ({ small, large, middle, exact }) => small + large + middle + exact,
);
const { svg, description } = drawBudget(budget);
const bars = (text: string) =>
  [...text.matchAll(/<rect [^>]*fill="#3c5a78"[^>]*>/g)].map(([tag]) => Number(attribute(tag, 'width')));
const said = (text: string) => textsOf(text).map((one) => one.text);

describe('a picture of a budget', () => {
  test('has a bar for each input, the largest first, as long as its share of the variance', () => {
    expect(said(svg).slice(1, 5)).toEqual([
      'large: 76.2\u00A0%',
      'middle: 19.0\u00A0%',
      'small: 4.8\u00A0%',
      'exact: 0.0\u00A0%',
    ]);
    const lengths = bars(svg);
    const ticks = textsOf(svg).filter(({ text }) => /^\d+$/.test(text));
    const whole = (ticks.at(-1)?.x ?? 0) - (ticks[0]?.x ?? 0); // 0 to 100
    expect([ticks[0]?.text, ticks.at(-1)?.text]).toEqual(['0', '100']);
    for (const [k, share] of [16 / 21, 4 / 21, 1 / 21, 0].entries())
      expect((lengths[k] ?? 0) / whole).toBeCloseTo(share, 3); // px are written to a hundredth
  });

  test('says the same in words', () =>
    expect(description).toBe(
      'Shares of the variance: large: 76.2\u00A0%; middle: 19.0\u00A0%; small: 4.8\u00A0%; exact: 0.0\u00A0%.',
    ));

  test('names inputs in words where their keys are words run together, and no others', () => {
    const inputs = { buretteError: exactly(1), molarMass: exactly(1), pKa: exactly(1), NaCl: exactly(1) };
    const sum = uncertaintyBudget(inputs, (x) => x.buretteError + x.molarMass + x.pKa + x.NaCl);
    expect(drawBudget(sum).description).toBe(
      'Shares of the variance: burette error: 25.0\u00A0%; molar mass: 25.0\u00A0%; pKa: 25.0\u00A0%; NaCl: 25.0\u00A0%.',
    );
  });

  test('names by its quantity an input whose key is a unit', () => {
    const inputs = { molar: exactly(1), grams: exactly(1), mL: exactly(1), constructor: exactly(1) };
    const sum = uncertaintyBudget(inputs, (x) => x.molar + x.grams + x.mL + x.constructor);
    expect(drawBudget(sum).description).toBe(
      'Shares of the variance: concentration: 25.0\u00A0%; mass: 25.0\u00A0%; volume: 25.0\u00A0%; constructor: 25.0\u00A0%.',
    );
  });

  test('gathers in its last bar what there are more inputs than it has bars', () => {
    const names = Array.from({ length: 20 }, (_, k) => `input ${k}`);
    const many = uncertaintyBudget(Object.fromEntries(names.map((name) => [name, exactly(1)])), (values) =>
      Object.values(values).reduce((sum, value) => sum + value, 0),
    );
    const shown = drawBudget(many).svg;
    expect(bars(shown)).toHaveLength(plotLimits.bars);
    expect(said(shown)).toContain('9 other inputs: 45.0\u00A0%');
  });

  test('of a share that is there but small says that it is less than a tenth of a percent', () => {
    const unlike = uncertaintyBudget({ a: exactly(1), b: exactly(1e-3) }, ({ a, b }) => a + b);
    expect(said(drawBudget(unlike).svg)).toContain('b: <\u00A00.1\u00A0%');
  });

  test('refuses what is no budget', () => {
    expect(listed(() => drawBudget({ contributions: [] }))).toEqual(['out-of-range budget.contributions']);
    expect(listed(() => drawBudget({} as never))).toEqual(['missing budget.contributions']);
  });
});
