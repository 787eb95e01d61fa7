import { type Additions, reagents, rows, titrationLimits } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../../faults-of.js';
import { throughJSON } from '../../json.js';
import { titrationOf } from '../beakers.js';

const titration = titrationOf([[reagents.sodiumCarbonate, 0.1]], [[reagents.hydrochloricAcid, 0.1]]);
const steepest = titrationOf([[reagents.hydrochloricAcid, 1]], [[reagents.sodiumHydroxide, 1]]);

describe('a curve', () => {
  const curve = titration.curve({ every: 0.5, upTo: 45 });

  test('is columns of equal length that survive JSON', () => {
    expect(curve.mL).toHaveLength(91);
    expect([curve.pH.length, curve.slope.length]).toEqual([91, 91]);
    expect(throughJSON(curve)).toEqual(curve);
  });

  test('holds pH and slope of each volume', () => {
    for (const [k, mL] of curve.mL.entries()) {
      // condition below 1e-12 at these points, and steps of 1e-6 in ln h that converge with the third power
      expect(Math.abs((curve.pH[k] as number) - titration.pHAt(mL))).toBeLessThanOrEqual(1e-12);
      expect(Math.abs((curve.slope[k] as number) / titration.slopeAt(mL) - 1)).toBeLessThanOrEqual(1e-11);
    }
  });

  test('row by row is the same', () => {
    const list = rows(curve);
    expect(list).toHaveLength(91);
    expect(list[7]).toEqual({ mL: 3.5, pH: curve.pH[7], slope: curve.slope[7] });
    expect(rows(throughJSON(curve))).toEqual(list);
    expect(rows({ mL: [], pH: [], slope: [] })).toEqual([]);
  });
});

describe('additions { every, upTo }', () => {
  const volumes = (every: number, upTo: number) => titration.curve({ every, upTo }).mL;

  test('are the running totals that one would write down', () => {
    expect(volumes(0.1, 0.5)).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5]);
    expect(volumes(0.1, 0.7)).toHaveLength(8); // though 0.7/0.1 is 6.999999999999999 in doubles
    expect(volumes(0.05, 30).at(-1)).toBe(30);
  });

  test('end at upTo or before it, never beyond', () => {
    expect(volumes(0.3, 1)).toEqual([0, 0.3, 0.6, 0.9]);
    expect(volumes(5, 3)).toEqual([0]);
    for (const [every, upTo] of [
      [1 / 3, 1],
      [0.1, 0.7],
      [1.0000000000005, 1],
    ] as const)
      expect(Math.max(...volumes(every, upTo))).toBeLessThanOrEqual(upTo);
  });
});

describe('additions { volumes }', () => {
  test('are kept as given, in any order, from any kind of array', () => {
    expect(titration.curve({ volumes: [3, 1, 1, 0] }).mL).toEqual([3, 1, 1, 0]);
    expect(titration.curve({ volumes: Float32Array.of(0.5, 2) }).mL).toEqual([0.5, 2]);
    expect(titration.curve({ volumes: [] })).toEqual({ mL: [], pH: [], slope: [] });
  });
});

describe('additions { maxStep, upTo }', () => {
  test.each([
    ['carbonate', titration, 45, 0.1],
    ['carbonate, finely', titration, 45, 0.003],
    ['strong acid and base', steepest, 30, 0.5],
  ])('neighbours differ by at most maxStep: %s', (_, of, upTo, maxStep) => {
    const { mL, pH } = of.curve({ maxStep, upTo });
    expect([mL[0], mL.at(-1)]).toEqual([0, upTo]);
    const steps = pH.slice(1).map((value, k) => Math.abs(value - (pH[k] as number)));
    expect(Math.max(...steps)).toBeLessThanOrEqual(maxStep * (1 + 1e-12)); // levels are rounded once each
    // as few as that takes
    const span = Math.abs((pH.at(-1) as number) - (pH[0] as number));
    expect(mL).toHaveLength(Math.ceil(span / maxStep) + 1);
    for (let k = 1; k < mL.length; k += 1) expect(mL[k] as number).toBeGreaterThan(mL[k - 1] as number);
  });

  test('each pH is that of its volume', () => {
    const { mL, pH } = titration.curve({ maxStep: 0.1, upTo: 45 });
    for (const [k, volume] of mL.entries())
      expect(Math.abs(titration.pHAt(volume) - (pH[k] as number))).toBeLessThanOrEqual(1e-11);
  });

  test('as few points as two, where the curve hardly moves', () => {
    expect(titration.curve({ maxStep: 20, upTo: 45 }).mL).toEqual([0, 45]);
  });
});

describe('faults', () => {
  const drawn = (additions: unknown) => () => titration.curve(additions as Additions);

  test.each([
    ['none', undefined, ['missing additions']],
    ['an empty object', {}, ['missing additions']],
    ['an end alone', { upTo: -1 }, ['missing additions', 'out-of-range additions.upTo']],
    ['two kinds', { every: 1, maxStep: 0.1, upTo: 5 }, ['conflict additions']],
    ['every without upTo', { every: 1 }, ['missing additions.upTo']],
    ['upTo beside volumes', { volumes: [1], upTo: 2 }, ['conflict additions.upTo']],
    ['no step', { every: 0, upTo: 5 }, ['out-of-range additions.every']],
    ['more points than the limit', { every: 1e-9, upTo: 1e9 }, ['out-of-range additions.every']],
    ['a step too fine', { maxStep: 1e-6, upTo: 5 }, ['out-of-range additions.maxStep']],
    ['a typing slip', { step: 1, upTo: 5 }, ['unknown-key additions.step', 'missing additions']],
    [
      'volumes with faults',
      { volumes: [1, -1, '2'] },
      ['out-of-range additions.volumes[1]', 'wrong-type additions.volumes[2]'],
    ],
    ['holes', { volumes: new Array(2) }, ['missing additions.volumes[0]', 'missing additions.volumes[1]']],
    ['big integers', { volumes: BigInt64Array.of(1n) }, ['wrong-type additions.volumes[0]']],
  ])('%s', (_, additions, faults) => expect(listed(drawn(additions))).toEqual(faults));

  test('a list beyond the limit is refused before it is read', () => {
    expect(listed(drawn({ volumes: new Array(titrationLimits.points + 1) }))).toEqual([
      'out-of-range additions.volumes',
    ]);
  });
});
