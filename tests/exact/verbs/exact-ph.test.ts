import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { defineProtolyte, defineReagent, reagents } from 'protolysis';
import { aliquot, exactPH, makeSolution, mix } from 'protolysis/exact';
import { describe, expect, test } from 'vitest';
import { type Ratio, ratioOf, ratios, textOf } from '../../../src/exact/numbers/ratio.js';

const { hydrochloricAcid, sodiumCarbonate, aceticAcid } = reagents;
const ratio = (text: string): Ratio => ratioOf(text) as Ratio;
const settings = () => ({
  ...Object.fromEntries(
    (['precision', 'rounding', 'toExpNeg', 'toExpPos', 'minE', 'maxE', 'modulo', 'crypto'] as const).map(
      (key) => [key, Decimal[key]],
    ),
  ),
});

describe('the pH to any number of digits', () => {
  test('of pure water is half of pKw', () => {
    const { pH, lower, upper } = exactPH(makeSolution({ contents: [] }), { pKw: '13.995', digits: 500 });
    expect(pH.toString()).toBe('6.9975');
    expect(upper.minus(lower).toString()).toBe('2e-503');
  });

  // h² − c·h − Kw = 0 with c² = Kw: h is the golden ratio times c
  test('of 1e-7 mol/L strong acid is 7 − log10 φ', () => {
    const acid = makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: '1e-7' }] });
    const { pH, lower, upper } = exactPH(acid, { pKw: 14, digits: 500 });
    const Wide = Decimal.clone({ defaults: true, precision: 530 });
    const phi = new Wide(5).sqrt().plus(1).div(2);
    const closed = new Wide(7).minus(phi.log(10));
    expect(closed.gt(lower) && closed.lt(upper)).toBe(true);
    expect(pH.minus(closed).abs().lt('1e-500')).toBe(true);
  });

  // a mixture made to have pH k: with whole pKa every share is a fraction, so that the strong charge which balances it is one
  test('of a mixture made for a whole pH is that pH', () => {
    const pKa = fc.integer({ min: -3, max: 17 });
    const family = fc.record({
      top: fc.integer({ min: -1, max: 3 }),
      pKas: fc.array(pKa, { minLength: 1, maxLength: 4 }),
      mmol: fc.integer({ min: 1, max: 900 }),
    });
    fc.assert(
      fc.property(fc.array(family, { maxLength: 3 }), fc.integer({ min: 0, max: 14 }), (families, k) => {
        const h = ratio(`1e-${k}`);
        let charge = ratios.minus(h, ratios.over(ratio('1e-14'), h));
        const contents = families.map(({ top, pKas, mmol }, i) => {
          let term = ratios.of(1);
          let [all, lost] = [term, ratios.of(0)];
          for (const [j, pK] of pKas.entries()) {
            term = ratios.times(term, ratio(`1e${k - pK}`));
            all = ratios.plus(all, term);
            lost = ratios.plus(lost, ratios.times(ratios.of(j + 1), term));
          }
          const mean = ratios.minus(ratios.of(top), ratios.over(lost, all));
          charge = ratios.plus(charge, ratios.times(ratio(`${mmol}e-4`), mean));
          return { reagent: single(`family ${i}`, top, pKas), molar: `${mmol}e-4` };
        });
        const balancing = charge.numerator < 0n ? plus : minus;
        const molar = textOf(charge.numerator < 0n ? ratios.minus(ratios.of(0), charge) : charge);
        const solution = makeSolution({ contents: [...contents, { reagent: balancing, molar }] });
        const { pH, lower, upper } = exactPH(solution, { pKw: 14, digits: 120 });
        expect(pH.toString()).toBe(`${k}`);
        expect(lower.lt(k) && upper.gt(k)).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  test('holds where doubles have nothing left: acid and base that differ in the 40th digit', () => {
    const difference = '0.1000000000000000000000000000000000000001';
    const solution = makeSolution({
      contents: [
        { reagent: hydrochloricAcid, molar: difference },
        { reagent: reagents.sodiumHydroxide, molar: '0.1' },
      ],
    });
    // c = 1e-40: pH = 7 − log10(x + √(1 + x²)), x = c/2e-7, which is x·log10(e) but for x³
    const { pH } = exactPH(solution, { pKw: 14, digits: 60 });
    const log10e = Decimal.clone({ defaults: true, precision: 60 }).exp(1).log(10);
    expect(pH.minus(7).div('-5e-34').minus(log10e).abs().lt('1e-26')).toBe(true);
  });

  test('narrows as digits are added', () => {
    const soda = makeSolution({ contents: [{ reagent: sodiumCarbonate, molar: '0.05' }] });
    const [few, many] = [exactPH(soda, { digits: 5 }), exactPH(soda, { digits: 60 })];
    expect(many.pH.gt(few.lower) && many.pH.lt(few.upper)).toBe(true);
    expect(many.upper.minus(many.lower).toString()).toBe('2e-63');
  });

  test('is that of the quantities, not of the order in which they were poured', () => {
    const acid = makeSolution({ mL: '10', contents: [{ reagent: aceticAcid, molar: '1/3' }] });
    const soda = makeSolution({
      mL: '7',
      contents: [{ reagent: sodiumCarbonate, grams: '0.1', purity: '0.95' }],
    });
    expect(`${exactPH(mix(acid, soda)).pH}`).toBe(`${exactPH(mix(soda, acid)).pH}`);
    expect(`${exactPH(aliquot(acid, { mL: '0.3' })).pH}`).toBe(`${exactPH(acid).pH}`);
  });

  test('leaves the shared Decimal as it was', () => {
    const before = settings();
    exactPH(makeSolution({ contents: [{ reagent: aceticAcid, molar: '0.1' }] }), { digits: 200 });
    expect(settings()).toEqual(before);
  });

  test('is the same whatever the shared Decimal is set to', () => {
    const solution = makeSolution({ contents: [{ reagent: aceticAcid, molar: '0.1' }] });
    const { pH } = exactPH(solution);
    const before = settings();
    try {
      Decimal.set({ precision: 3, rounding: 0, toExpNeg: 0, minE: -5, maxE: 5 });
      expect(exactPH(solution).pH.toFixed()).toBe(pH.toFixed());
    } finally {
      Decimal.set(before);
    }
  });
});

test.each([0, 501, 2.5, Number.NaN, '50', null])('%j digits are refused', (digits) => {
  expect(() => exactPH(makeSolution({ contents: [] }), { digits: digits as number })).toThrow('digits');
});

/** One protolyte that brings no ion. */
function single(id: string, top: number, pKas: readonly number[]) {
  const protolyte = defineProtolyte({
    id,
    name: id,
    species: [...pKas, 0].map((_, j) => ({ formula: `${id} ${j}`, charge: top - j })),
    steps: pKas.map((pKa) => ({ pKa, source: { kind: 'commonPractice', note: 'made up for this test' } })),
  });
  return defineReagent({ id, name: id, protolytes: [{ protolyte, count: 1 }], ions: [] });
}
const plus = defineReagent({
  id: 'plus',
  name: 'plus',
  protolytes: [],
  ions: [{ ion: { formula: 'X+', charge: 1 }, count: 1 }],
});
const minus = defineReagent({
  id: 'minus',
  name: 'minus',
  protolytes: [],
  ions: [{ ion: { formula: 'X-', charge: -1 }, count: 1 }],
});
