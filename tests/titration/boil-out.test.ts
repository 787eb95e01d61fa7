import { reagents, titrate } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { beaker, burette } from './beakers.js';

const { hydrochloricAcid, sodiumCarbonate } = reagents;
const at = 30;
const setup = { analyte: beaker([sodiumCarbonate, 0.1]), titrant: burette([hydrochloricAcid, 0.1]) };
const boiled = () => titrate({ ...setup, boilOut: { mL: at } });

describe('a titration with a boil-out is one curve', () => {
  test('sampled by steps of pH: in order, each piece with its own ends', () => {
    const titration = boiled();
    const { mL, pH, slope } = titration.curve({ maxStep: 0.1, upTo: 45 });
    expect([mL[0], mL.at(-1)]).toEqual([0, 45]);
    expect([pH.length, slope.length]).toEqual([mL.length, mL.length]);
    expect(mL.filter((volume) => volume === at)).toHaveLength(1);
    for (const [k, volume] of mL.entries()) {
      expect(volume).toBeGreaterThan(mL[k - 1] ?? -1);
      expect(Math.abs((pH[k] ?? 0) - titration.pHAt(volume))).toBeLessThanOrEqual(1e-9);
      expect(Math.abs((slope[k] ?? 0) / titration.slopeAt(volume) - 1)).toBeLessThanOrEqual(1e-6);
    }
    // but for the leap of the boiling itself, no step is wider than asked
    const wide = pH.slice(1).filter((value, k) => Math.abs(value - (pH[k] ?? 0)) > 0.1 + 1e-9);
    expect(wide).toHaveLength(1);
  });

  test('that ends before, or at, the boiling is the curve without it', () => {
    const plain = titrate(setup);
    for (const upTo of [20, at])
      expect(boiled().curve({ maxStep: 0.1, upTo })).toEqual(plain.curve({ maxStep: 0.1, upTo }));
  });

  test('asked at any volumes, in any order, answers the same each way', () => {
    const titration = boiled();
    const volumes = [35, 10, at, 0, 39.9, at + 1e-6];
    const { mL, pH, slope } = titration.curve({ volumes });
    expect(mL).toEqual(volumes);
    expect(pH).toEqual(volumes.map((volume) => titration.pHAt(volume)));
    expect(slope).toEqual(volumes.map((volume) => titration.slopeAt(volume)));
    expect([...titration.pHs(volumes)]).toEqual(pH);
  });

  test('has the slope of its own pH on either side', () => {
    const titration = boiled();
    for (const mL of [10, 29, 31, 38]) {
      const quotient = (titration.pHAt(mL + 1e-4) - titration.pHAt(mL - 1e-4)) / 2e-4;
      expect(titration.slopeAt(mL) / quotient).toBeCloseTo(1, 4);
    }
  });

  test('passes a pH before and after the boiling: the pH comes back', () => {
    const titration = boiled();
    const twice = titration.volumesAt(7);
    expect(twice).toHaveLength(2);
    const [before = 0, after = 0] = twice;
    expect(before).toBeLessThan(at);
    expect(after).toBeGreaterThan(at);
    for (const mL of twice) expect(titration.pHAt(mL)).toBeCloseTo(7, 9);
    expect(titration.volumesAt(titration.pHAt(0))).toEqual([0]);
    expect(titration.volumesAt(titration.pHAt(10))).toEqual([expect.closeTo(10, 9)]);
  });

  test('has no jump to be noted: boiling was asked for', () => {
    expect(boiled().notes.join(' ')).not.toMatch(/jumps/);
  });

  test('has inflections in order of volume, each an extreme of the slope', () => {
    const { inflectionPoints, slopeAt } = boiled();
    expect(inflectionPoints.some(({ mL }) => mL < at)).toBe(true);
    expect(inflectionPoints.some(({ mL }) => mL > at)).toBe(true);
    for (const [k, { mL, slope, kind }] of inflectionPoints.entries()) {
      expect(mL).toBeGreaterThan(inflectionPoints[k - 1]?.mL ?? 0);
      for (const away of [-1e-4, 1e-4])
        expect(Math.abs(slopeAt(mL + away)) < Math.abs(slope)).toBe(kind === 'steepest');
    }
  });
});
