import { air, type Conditions, compareModels, reagents, titrationLimits } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';
import { acidWith } from '../make.js';
import { titrationOf } from './beakers.js';

const { ammoniumChloride, hydrochloricAcid, sodiumCarbonate, sodiumHydroxide } = reagents;
const pKw = 14;

/** Acid, then ammonium, with a base: with pKw held, temperature moves the middle of the curve and neither end. */
const ammonium = () =>
  titrationOf(
    [
      [hydrochloricAcid, 0.05],
      [ammoniumChloride, 0.1],
    ],
    [[sodiumHydroxide, 0.1]],
  );
const strong = () => titrationOf([[hydrochloricAcid, 0.1]], [[sodiumHydroxide, 0.1]]);

describe('the greatest difference', () => {
  test.each([
    ['between, where neither end differs', ammonium, { celsius: 40, pKw: 13.995 }],
    ['between, the other way round', ammonium, { celsius: 5, pKw: 13.995 }],
    ['between, near its least slope', ammonium, { celsius: 60, pKw: 13.995 }],
    ['at the end, of an acid with a base', strong, { pKw }],
    [
      'in the step of carbonate',
      () => titrationOf([[sodiumCarbonate, 0.05]], [[hydrochloricAcid, 0.1]]),
      { celsius: 60 },
    ],
  ] as [string, () => ReturnType<typeof strong>, Conditions][])(
    'is nowhere exceeded: %s',
    (_, make, conditions) => {
      const titration = make();
      const [comparison] = compareModels(titration, [conditions], { upTo: 40 });
      if (!comparison) throw new Error('one comparison for one set of conditions');
      const { curve, largest, titration: other } = comparison;
      expect(largest.pH).toBe(other.pHAt(largest.mL) - titration.pHAt(largest.mL));
      const around = Array.from({ length: 401 }, (_, k) => largest.mL + (k - 200) * 1e-3);
      const volumes = [...curve.mL, ...around.filter((mL) => mL >= 0 && mL <= 40)];
      const [pHs, others] = [titration.pHs(volumes), other.pHs(volumes)];
      // the search ends within the root of the rounding of pH, 1e-15, of the top: its height is good to a few roundings
      for (const [k, pH] of pHs.entries())
        expect(Math.abs((others[k] ?? 99) - pH)).toBeLessThanOrEqual(Math.abs(largest.pH) + 1e-13);
    },
  );

  test('at the end is that of pKw there, at the very end', () => {
    // h − Kw/h = −c: so dilute that each drop of base still counts
    const faint = titrationOf([[hydrochloricAcid, 1e-6]], [[sodiumHydroxide, 1e-6]]);
    const [comparison] = compareModels(faint, [{ pKw }], { upTo: 40 });
    const c = (1e-6 * (40 - 20)) / 60;
    const pHAt = (Kw: number) => -Math.log10((2 * Kw) / (c + Math.sqrt(c * c + 4 * Kw)));
    expect(comparison?.largest.mL).toBe(40);
    expect(comparison?.largest.pH).toBeCloseTo(pHAt(10 ** -pKw) - pHAt(10 ** -13.995), 10);
  });

  test('at the start is found there', () => {
    const base = titrationOf([[sodiumHydroxide, 1e-6]], [[hydrochloricAcid, 1e-6]]);
    expect(compareModels(base, [{ pKw }])[0]?.largest.mL).toBe(0);
  });

  test('of a curve and itself is nothing, at the start', () => {
    expect(compareModels(strong(), [{}])[0]?.largest).toEqual({ mL: 0, pH: 0 });
  });
});

describe('the curve of a comparison', () => {
  test('has the volumes of both curves, each once and in order, to 1.5 times the last equivalence volume', () => {
    const titration = ammonium();
    const [comparison] = compareModels(titration, [{ celsius: 40 }]);
    const { mL, pH } = comparison?.curve ?? { mL: [], pH: [] };
    expect([mL[0], mL.at(-1)]).toEqual([0, 45]);
    for (const [k, volume] of mL.slice(1).entries()) expect(volume).toBeGreaterThan(mL[k] as number);
    const both = [titration, comparison?.titration].flatMap(
      (one) => one?.curve({ maxStep: 0.05, upTo: 45 }).mL ?? [],
    );
    expect(new Set(mL)).toEqual(new Set(both));
    for (const [k, volume] of mL.entries())
      expect(pH[k]).toBeCloseTo(comparison?.titration.pHAt(volume) ?? 0, 10);
  });

  test('ends where it is told to', () => {
    expect(compareModels(strong(), [{ pKw }], { upTo: 7 })[0]?.curve.mL.at(-1)).toBe(7);
    expect(compareModels(strong(), [{ pKw }], {})[0]?.curve.mL.at(-1)).toBe(30);
  });

  test('comes with its conditions', () => {
    const conditions = { celsius: 40, pKw: 13.5 };
    expect(compareModels(strong(), [conditions])[0]?.conditions).toEqual(conditions);
  });
});

describe('faults of compareModels', () => {
  const compare = (options: object, conditions: Conditions = {}) =>
    listed(() => compareModels(strong(), [conditions], options));

  test('upTo goes as far as a titration', () => {
    expect(compare({ upTo: 0 })).toEqual(['out-of-range options.upTo']);
    expect(compare({ upTo: 2 * titrationLimits.mL })).toEqual(['out-of-range options.upTo']);
    expect(compare({ upTo: titrationLimits.mL })).toEqual([]);
    expect(compare({ upto: 5 })).toEqual(['unknown-key options.upto']);
  });

  test('other constants for the carbon dioxide of the air than for what the beaker holds', () => {
    const { protolyte } = acidWith('carbonic', 0, [6, 10]);
    const titration = titrationOf([[sodiumCarbonate, 0.1]], [[hydrochloricAcid, 0.1]]);
    const conditions = { carbonDioxide: { ...air, protolyte } };
    expect(listed(() => compareModels(titration, [{}, conditions as Conditions]))).toEqual([
      'conflict conditions[1].carbonDioxide.protolyte',
    ]);
  });
});
