import {
  air,
  compareWater,
  makeSolution,
  reagents,
  solutionLimits,
  titrationLimits,
  waters,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';
import { acidWith } from '../make.js';
import { beaker, burette } from './beakers.js';

const { aceticAcid, hydrochloricAcid, sodiumCarbonate, sodiumHydroxide } = reagents;
const setup = { analyte: beaker([hydrochloricAcid, 0.1]), titrant: burette([sodiumHydroxide, 0.1]) };
const use = { water: waters.freshDeionised, mL: 30 };
const shiftsOf = (more: object) => compareWater(setup, { ...use, ...more });

describe('how volumes move', () => {
  test('a titrant half as strong takes twice the volume: 100 percent more', () => {
    const titrant = burette([sodiumHydroxide, 0.05]);
    expect(shiftsOf({ titrant }).equivalencePoints).toEqual([
      { reaction: 'H⁺ + OH⁻ → H₂O', good: 20, given: 40, mL: 20, percent: 100 },
    ]);
  });

  test('a shift is the difference, and its percentage of the good volume', () => {
    const { equivalencePoints, endpoints } = compareWater(setup, {
      ...use,
      water: waters.tapLike,
      endpoints: [4, 7, 8.3],
    });
    for (const { good, given, mL, percent } of [...equivalencePoints, ...endpoints]) {
      if (good === null || given === null) continue;
      expect(mL).toBe(given - good);
      expect(percent).toBeCloseTo(((mL ?? 99) / good) * 100, 10);
    }
    expect(endpoints.map(({ pH }) => pH)).toEqual([4, 7, 8.3]);
  });

  test('what is on one curve alone moves nowhere', () => {
    const strong = burette([sodiumHydroxide, 2]);
    const { endpoints } = shiftsOf({ titrant: strong, endpoints: [13.5, 0.5] });
    // 0.1 mol/L of base never comes to pH 13.5, 2 mol/L does; nothing comes below the analyte's own pH
    expect(endpoints[0]).toEqual({
      pH: 13.5,
      good: null,
      given: expect.any(Number),
      mL: null,
      percent: null,
    });
    expect(endpoints[1]).toEqual({ pH: 0.5, good: null, given: null, mL: null, percent: null });
    const weak = shiftsOf({ titrant: burette([sodiumHydroxide, 1e-3]), endpoints: [12] }).endpoints;
    expect(weak[0]).toEqual({ pH: 12, good: expect.any(Number), given: null, mL: null, percent: null });
  });

  test('a reaction of one titration alone has no shift', () => {
    const { equivalencePoints } = compareWater(setup, {
      ...use,
      water: makeSolution({ contents: [{ reagent: aceticAcid, molar: 0.01 }] }),
    });
    expect(equivalencePoints.map(({ reaction, good, mL }) => [reaction, good, mL])).toEqual([
      ['H⁺ + OH⁻ → H₂O', 20, 0],
      ['CH₃COOH + OH⁻ → CH₃COO⁻ + H₂O', null, null],
    ]);
  });

  test('an end point at the start has no percentage: it would be of nothing', () => {
    const start = compareWater(setup, use).good.pHAt(0);
    const acidic = makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] });
    const [shift] = shiftsOf({ water: acidic, endpoints: [start] }).endpoints;
    // 2 mmol in 50 mL, and 3 mmol more of the water: from there 3 mmol of base and what dilution asks for less
    expect(shift).toMatchObject({ good: 0, percent: null });
    expect(shift?.mL).toBe(shift?.given);
    expect(shift?.mL).toBeGreaterThan(0);
  });
});

describe('faults of compareWater', () => {
  const faults = (more: object, other: object = {}) =>
    listed(() => compareWater({ ...setup, ...other }, { ...use, ...more }));
  const { leastML, mL: most } = solutionLimits;
  const { from, to } = titrationLimits.pH;

  test.each([
    ['less than the least volume', { mL: leastML / 2 }, { mL: leastML }, 'out-of-range use.mL'],
    ['more than half the greatest', { mL: most * 0.6 }, { mL: most / 2 }, 'out-of-range use.mL'],
    [
      'a pH that is too low',
      { endpoints: [7, from - 1] },
      { endpoints: [7, from] },
      'out-of-range use.endpoints[1]',
    ],
    ['a pH that is too high', { endpoints: [to + 1] }, { endpoints: [to] }, 'out-of-range use.endpoints[0]'],
    ['a typing slip', { endpoint: [7] }, {}, 'unknown-key use.endpoint'],
  ])('%s', (_, beyond, allowed, fault) => {
    expect(faults(beyond)).toEqual([fault]);
    expect(faults(allowed)).toEqual([]);
  });

  test('water and analyte together are no more than a solution may be', () => {
    const analyte = (mL: number) => ({
      analyte: makeSolution({ mL, contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] }),
    });
    expect(faults({ mL: most / 2 }, analyte(most / 2))).toEqual([]);
    expect(faults({ mL: most / 2 }, analyte(most * 0.6))).toEqual(['out-of-range use.mL']);
  });

  const [one, other] = [
    [4, 0.1],
    [5, 0.1],
  ].map(([pKa = 0]) => acidWith('a', 0, [pKa]).reagent);
  test('two acids under one id, in beaker, water or burette', () => {
    if (!one || !other) throw new Error('two acids');
    const water = burette([other, 0.1]);
    const conflict = (path: string) => `conflict ${path}.protolytes[0].protolyte`;
    const analyte = beaker([one, 0.1]);
    expect(faults({ water }, { analyte })).toEqual([conflict('use.water')]);
    expect(faults({ titrant: water }, { analyte })).toEqual([conflict('use.titrant')]);
    expect(faults({}, { analyte })).toEqual([]);
    // and is told once, though the water does not go with the analyte either
    const titrant = water;
    expect(faults({ water }, { analyte, titrant })).toEqual([
      'conflict setup.titrant.contents[0].reagent.protolytes[0].protolyte',
    ]);
  });

  test('other constants for the carbon dioxide of the air than for that of the water', () => {
    const { protolyte } = acidWith('carbonic', 0, [6, 10]);
    const conditions = { carbonDioxide: { ...air, protolyte } };
    const water = burette([sodiumCarbonate, 0.001]);
    expect(faults({ water }, { conditions })).toEqual(['conflict setup.conditions.carbonDioxide.protolyte']);
  });
});
