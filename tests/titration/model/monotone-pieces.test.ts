import { describe, expect, test } from 'vitest';
import {
  isFlat,
  jumpsOf,
  monotonePiecesOf,
  passagesOf,
  refinedVolumes,
} from '../../../src/titration/model/monotone-pieces.js';

/** pH = 7 + 2·u·e^(1 − u), u = V/10: it rises to 9 at 10 mL and falls back towards 7. */
const hill = (mL: number) => {
  const u = mL / 10;
  return { mL, pH: 7 + 2 * u * Math.exp(1 - u), slope: 0.2 * (1 - u) * Math.exp(1 - u) };
};
/** It leaps from pH 5 to 8 at `step`, mL. */
const step = 4.3;
const leap = (mL: number) => ({ mL, pH: mL < step ? 5 : 8, slope: 0 });

describe('monotone pieces', () => {
  const pieces = () => monotonePiecesOf(hill, 10);

  test('of a curve that turns once: its turn is found, and stands among the points in order', () => {
    const { points, turns } = pieces();
    expect(turns).toEqual([expect.closeTo(10, 9)]);
    const at = points.findIndex(({ mL }) => mL === turns[0]);
    expect(at).toBeGreaterThan(0);
    for (const [k, { mL, pH }] of points.entries()) {
      const before = points[k - 1];
      if (!before) continue;
      expect(mL).toBeGreaterThanOrEqual(before.mL);
      if (k <= at) expect(pH).toBeGreaterThanOrEqual(before.pH);
      else expect(pH).toBeLessThanOrEqual(before.pH);
      expect(Math.abs(pH - before.pH)).toBeLessThanOrEqual(0.05);
    }
    expect(jumpsOf(pieces())).toEqual([]);
  });

  test('pass a pH once on each side of the turn, and none beyond it', () => {
    for (const pH of [7.5, 8, 8.9]) {
      const found = passagesOf(pieces(), pH);
      expect(found).toHaveLength(2);
      for (const [low, high] of found) expect(hill(low).pH < pH).not.toBe(hill(high).pH < pH);
    }
    expect(passagesOf(pieces(), 9.001)).toEqual([]);
    expect(passagesOf(pieces(), 6.9)).toEqual([]);
  });

  test('have a pH that stands at one of their points there alone', () => {
    const { points } = pieces();
    const { mL = 0, pH = 0 } = points.find((point) => point.mL > 1 && point.mL < 9) ?? {};
    const found = passagesOf({ points, turns: [] }, pH);
    expect(found[0]).toEqual([mL, mL]);
    expect(found).toHaveLength(2);
  });

  test('a curve is refined with every turn short of its end', () => {
    const [turn = 0] = pieces().turns;
    expect(refinedVolumes(pieces(), hill, 17, 0.5)).toContain(turn);
    const short = refinedVolumes(pieces(), hill, 5, 0.5);
    expect([short[0], short.at(-1)]).toEqual([0, 5]);
    expect(short).toEqual([...short].sort((a, b) => a - b));
    expect(refinedVolumes(pieces(), hill, turn, 20)).toEqual([0, turn]);
  });
});

describe('a jump', () => {
  const pieces = () => monotonePiecesOf(leap, 10);

  test('is where no double lies between', () => {
    expect(jumpsOf(pieces())).toEqual([{ mL: step, before: 5, after: 8 }]);
  });

  test('passes no pH, and has the pH of its ends', () => {
    expect(passagesOf(pieces(), 6)).toEqual([]);
    expect(passagesOf(pieces(), 8)[0]).toEqual([step, step]);
  });
});

describe('a flat curve', () => {
  const flat = (mL: number) => ({ mL, pH: 7 + (mL % 2) * 1e-10, slope: 1 - (mL % 2) });

  test('is one point, and turns nowhere', () => {
    const { points, turns } = monotonePiecesOf(flat, 10);
    expect(points).toHaveLength(1);
    expect(turns).toEqual([]);
  });

  test('is flat to rounding, 1e-9, and no further', () => {
    const two = (rise: number) => [hill(0), { ...hill(0), pH: 7 + rise }];
    expect(isFlat(two(1e-10))).toBe(true);
    expect(isFlat(two(1e-8))).toBe(false);
    expect(isFlat(two(-1e-8))).toBe(false);
  });
});
