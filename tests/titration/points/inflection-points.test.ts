import { makeSolution, reagents, titrate } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { acidWith } from '../../make.js';
import { titrationOf } from '../beakers.js';

const { aceticAcid, citricAcid, hydrochloricAcid, phosphoricAcid, sodiumCarbonate, sodiumHydroxide } =
  reagents;
const shown = [
  ['acetic acid', titrationOf([[aceticAcid, 0.1]], [[sodiumHydroxide, 0.1]])],
  ['phosphoric acid', titrationOf([[phosphoricAcid, 0.1]], [[sodiumHydroxide, 0.1]])],
  ['citric acid', titrationOf([[citricAcid, 0.1]], [[sodiumHydroxide, 0.1]])],
  ['carbonate', titrationOf([[sodiumCarbonate, 0.1]], [[hydrochloricAcid, 0.1]])],
] as const;

describe.each(shown)('inflections: %s', (_, titration) => {
  const { inflectionPoints } = titration;

  test('come in order of volume, steepest and flattest in turn', () => {
    expect(inflectionPoints.length).toBeGreaterThan(0);
    for (const [k, point] of inflectionPoints.entries()) {
      const before = inflectionPoints[k - 1];
      if (!before) continue;
      expect(point.mL).toBeGreaterThan(before.mL);
      expect(point.kind).not.toBe(before.kind);
    }
  });

  test('lie on the curve, with its slope', () => {
    for (const { mL, pH, slope } of inflectionPoints) {
      // V is as good as its condition, at worst 1e-10 mL here where the curve is steepest (below 1e4 per mL)
      expect(Math.abs(titration.pHAt(mL) - pH)).toBeLessThanOrEqual(1e-11);
      expect(Math.abs(titration.slopeAt(mL) / slope - 1)).toBeLessThanOrEqual(1e-9);
    }
  });

  test('are extremes of |slope|', () => {
    for (const { mL, slope, kind } of inflectionPoints)
      for (const away of [-1e-3, 1e-3]) {
        const rise = Math.abs(titration.slopeAt(mL + away)) - Math.abs(slope);
        if (kind === 'steepest') expect(rise).toBeLessThan(0);
        else expect(rise).toBeGreaterThan(0);
      }
  });
});

test('strong acid and base show one, where h = OH-: at equivalence, but for dilution', () => {
  const { inflectionPoints } = titrationOf([[hydrochloricAcid, 0.1]], [[sodiumHydroxide, 0.1]]);
  const steepest = inflectionPoints.filter(({ kind }) => kind === 'steepest');
  expect(steepest).toHaveLength(1);
  // h − Kw/h = c·(V₀ − V)/(V₀ + V): R = (h − w/h)/(h + w/h) − 2(h + w/h)/(h − w/h − c) = 0 near h = w/h = √w = 1e-7 gives
  // h − w/h = −8w/c to first order, so V₀ − V = 40·(−8w/c)/c = −3.2e-10 mL·… below 1e-9 mL
  expect(Math.abs((steepest[0]?.mL ?? 0) - 20)).toBeLessThanOrEqual(1e-9);
});

test('a curve that only dilutes has none', () => {
  expect(titrationOf([[hydrochloricAcid, 0.1]], [[hydrochloricAcid, 0.01]]).inflectionPoints).toHaveLength(0);
});

test('none is nearer to the titrant’s pH than log10(3)/n, n the most protons that one protolyte can lose', () => {
  // a titrant so weak that its pH is that of water to nine digits: what its curve is made of there is rounding
  for (const molar of [1e-3, 1e-4, 1e-5, 1.2e-6, 1e-7]) {
    const faint = acidWith('faint', 0, [15.06]).reagent;
    expect(titrationOf([], [[faint, molar]]).inflectionPoints).toEqual([]);
  }
  for (const [, { inflectionPoints, pHAt }] of shown)
    for (const { pH } of inflectionPoints)
      expect(Math.abs(pH - pHAt(1e9))).toBeGreaterThan(Math.log10(3) / 3);
});

test('a pair of inflections is found from the moment it appears', () => {
  // The first step of a diprotic acid shows once its pKa lie far enough apart: a steepest and a flattest point part from one
  // place. Their distance in pH grows with the root of what the gap exceeds its least value by, so halving the gap's bracket
  // to 1e-9 must come down to 1e-4 or so; a search that only compares neighbours 0.01 pH apart would stop at 1e-2.
  const inflections = (gap: number) =>
    titrationOf([[acidWith('a', 0, [4, 4 + gap]).reagent, 0.1]], [[sodiumHydroxide, 0.1]]).inflectionPoints;
  let [without, shown] = [0.5, 3];
  const fewest = inflections(without).length;
  expect(inflections(shown).length).toBe(fewest + 2);
  while (shown - without > 1e-9) {
    const middle = (without + shown) / 2;
    if (inflections(middle).length > fewest) shown = middle;
    else without = middle;
  }
  const all = inflections(shown).map(({ pH }) => pH);
  const nearest = Math.min(...all.slice(1).map((pH, k) => pH - (all[k] as number)));
  expect(nearest).toBeLessThanOrEqual(1e-3);
});

/** Two acid steps this far apart about pH 7, 1 mmol/L, with a base so strong that it adds next to no volume. */
const twoSteps = (gap: number) => {
  const acid = acidWith('a', 0, [7 - gap / 2, 7 + gap / 2]).reagent;
  return titrate({
    analyte: makeSolution({ mL: 20, contents: [{ reagent: acid, molar: 1e-3 }] }),
    titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 10 }] }),
  });
};

test('two steps show apart once their constants are more than sixteenfold apart', () => {
  // β = ln10·C·h(K₁h² + 4K₁K₂h + K₁²K₂)/(h² + K₁h + K₁K₂)² has a minimum at h² = K₁K₂ where K₁ > 16·K₂, else a maximum
  const inflections = (gap: number) => twoSteps(gap).inflectionPoints;
  const kindsOf = (gap: number) => inflections(gap).map(({ kind }) => kind);
  const threshold = Math.log10(16);
  // dilution by 2e-4 moves the place by no more than its power 2/3, 3e-3: a fold beside a pitchfork
  let [without, shown] = [threshold - 0.003, threshold + 0.003];
  const fewest = kindsOf(without).length;
  expect(kindsOf(shown)).toHaveLength(fewest + 2);
  while (shown - without > 1e-6) {
    const middle = (without + shown) / 2;
    const all = inflections(middle);
    for (const [k, { mL, kind }] of all.slice(1).entries()) {
      expect(mL).toBeGreaterThan(all[k]?.mL ?? 0);
      expect(kind).not.toBe(all[k]?.kind);
    }
    if (all.length > fewest) shown = middle;
    else without = middle;
  }
  // the two part with the root of the excess, here 1e-6: within one step of the grid of 0.01
  const all = inflections(shown).map(({ pH }) => pH);
  expect(all).toHaveLength(fewest + 2);
  expect(Math.min(...all.slice(1).map((pH, k) => pH - (all[k] ?? 0)))).toBeLessThanOrEqual(1e-2);
});

test.each([
  ['a base into an acid', [[citricAcid, 0.1]], [[sodiumHydroxide, 0.1]]],
  ['an acid into a base: pH falls', [[sodiumCarbonate, 0.1]], [[hydrochloricAcid, 0.1]]],
  ['from below pH 0 to above 14', [[hydrochloricAcid, 10]], [[sodiumHydroxide, 10]]],
] as const)('each inflection is an extreme of |slope|, in order of volume: %s', (_, analyte, titrant) => {
  const { inflectionPoints, slopeAt } = titrationOf(analyte, titrant);
  expect(inflectionPoints.length).toBeGreaterThan(0);
  for (const [k, { mL, slope, kind }] of inflectionPoints.entries()) {
    expect(mL).toBeGreaterThan(inflectionPoints[k - 1]?.mL ?? 0);
    for (const factor of [0.9999, 1.0001])
      expect(Math.abs(slopeAt(mL * factor)) < Math.abs(slope)).toBe(kind === 'steepest');
  }
});
