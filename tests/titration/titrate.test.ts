import {
  aliquot,
  type Conditions,
  davies,
  equilibrate,
  makeSolution,
  mix,
  pHOf,
  type Reagent,
  reagents,
  type Solution,
  titrate,
  titrationLimits,
  waterAt25,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';
import { throughJSON } from '../json.js';
import { acidWith } from '../make.js';
import { beaker, burette, titrationOf } from './beakers.js';

const { aceticAcid, sodiumAcetate, hydrochloricAcid, sodiumHydroxide, sodiumCarbonate } = reagents;
const acetic = titrationOf([[aceticAcid, 0.1]], [[sodiumHydroxide, 0.1]]);
const carbonate = titrationOf([[sodiumCarbonate, 0.1]], [[hydrochloricAcid, 0.1]]);

// pH found by two routes that round differently: the condition of these points is below 1e-12 (reference/vectors/README.md)
const rounding = 1e-12;
const close = (one: number, other: number, within = rounding) =>
  expect(Math.abs(one - other), `${one} and ${other}`).toBeLessThanOrEqual(within);

describe('a titration', () => {
  test('starts at the pH of the analyte', () => {
    expect(acetic.pHAt(0)).toBe(pHOf(beaker([aceticAcid, 0.1])));
  });

  test('has at each volume the pH of analyte and titrant poured together', () => {
    for (const mL of [1e-9, 5, 19.95, 20, 20.05, 1000])
      close(
        acetic.pHAt(mL),
        pHOf(mix(beaker([aceticAcid, 0.1]), aliquot(burette([sodiumHydroxide, 0.1]), { mL }))),
        1e-11, // at 20 mL two charges of 2 mmol cancel to 1e-4 mmol or less
      );
  });

  test('tends to the pH of the titrant', () => {
    // 20 mL in 1e9 mL of 0.1 mol/L: the excess is less by 4e-8, and pH by 4e-8/ln 10
    close(acetic.pHAt(1e9), pHOf(burette([sodiumHydroxide, 0.1])), 4e-8 / Math.LN10);
  });

  test('does not care how much titrant there is', () => {
    const titrant = makeSolution({ mL: 5, contents: [{ reagent: sodiumHydroxide, molar: 0.1 }] });
    const same = titrate({ analyte: beaker([aceticAcid, 0.1]), titrant });
    close(same.pHAt(30), acetic.pHAt(30));
  });

  test('knows its setup, which survives JSON and sets the same titration up again', () => {
    expect(acetic.setup.conditions).toEqual({ celsius: 25 });
    expect(throughJSON(acetic.setup)).toEqual(acetic.setup);
    const again = titrate(throughJSON(acetic.setup));
    expect(again.pHAt(7)).toBe(acetic.pHAt(7));
    expect(again.equivalencePoints).toEqual(acetic.equivalencePoints);
  });

  test('gives its conditions for use with another temperature: pKw moves along', () => {
    const { analyte, titrant, conditions } = acetic.setup;
    const warm = titrate({ analyte, titrant, conditions: { ...conditions, celsius: 40 } });
    expect(warm.pHAt(30)).toBe(titrate({ analyte, titrant, conditions: { celsius: 40 } }).pHAt(30));
    expect(acetic.pHAt(30) - warm.pHAt(30)).toBeCloseTo(waterAt25.pKw - 13.535, 3); // an excess of base
  });
});

describe('equilibriumAt(mL)', () => {
  test('is that of the analyte at 0 mL', () => {
    expect(acetic.equilibriumAt(0)).toEqual(equilibrate(beaker([aceticAcid, 0.1])));
  });

  test('has the volume, the amounts and the pH of the mixture', () => {
    const at = acetic.equilibriumAt(5);
    expect(at.solution.mL).toBe(25);
    expect(at.solution.contents.map(({ mmol }) => mmol)).toEqual([2, 0.5]);
    close(at.pH, acetic.pHAt(5));
  });

  test('reaches as far as pHAt does', () => {
    for (const mL of [5e-324, 1e-12, titrationLimits.mL]) close(acetic.equilibriumAt(mL).pH, acetic.pHAt(mL));
  });
});

describe('slopeAt(mL)', () => {
  test('is 1/ln10 · c/(β·(V₀ + V)) with the charge that a mL of titrant adds', () => {
    // strong acid by strong base of the same strength c: h − Kw/h = c(V₀ − V)/(V₀ + V), V₀ = 20
    const strong = titrationOf([[hydrochloricAcid, 0.1]], [[sodiumHydroxide, 0.1]]);
    for (const mL of [0, 5, 19, 25]) {
      const h = 10 ** -strong.pHAt(mL);
      const oh = 10 ** -waterAt25.pKw / h;
      const exact = (0.1 * 40) / (20 + mL) ** 2 / (Math.LN10 * (h + oh));
      close(strong.slopeAt(mL) / exact, 1);
    }
  });

  test('is negative where acid is added', () => {
    expect(carbonate.slopeAt(10)).toBeLessThan(0);
  });
});

describe('jumpAt(mL)', () => {
  test('is the rise in pH from 0.05 mL before to 0.05 mL after', () => {
    close(acetic.jumpAt(20), acetic.pHAt(20.05) - acetic.pHAt(19.95));
    close(acetic.jumpAt(20, { within: 0.2 }), acetic.pHAt(20.2) - acetic.pHAt(19.8));
    expect(acetic.jumpAt(20, {})).toBe(acetic.jumpAt(20));
  });

  test('is negative where pH falls', () => {
    expect(carbonate.jumpAt(40)).toBeLessThan(0);
  });

  test('may reach back to 0 mL and no further', () => {
    close(acetic.jumpAt(0.05), acetic.pHAt(0.1) - acetic.pHAt(0));
    expect(listed(() => acetic.jumpAt(0.04))).toEqual(['out-of-range mL']);
  });
});

describe('volumeAt(pH)', () => {
  test('undoes pHAt', () => {
    for (const mL of [0, 3, 10, 19.99, 25, 100]) close(acetic.volumeAt(acetic.pHAt(mL)) ?? -1, mL, 1e-11);
  });

  test('is undefined where the curve never comes', () => {
    expect(acetic.volumeAt(2)).toBeNull(); // below the pH of the analyte
    expect(acetic.volumeAt(13.5)).toBeNull(); // above that of the titrant
    expect(acetic.volumesAt(13.5)).toEqual([]);
  });

  test('volumesAt lists it', () => {
    expect(acetic.volumesAt(7)).toEqual([acetic.volumeAt(7)]);
  });

  test('takes every pH that a solution within the limits has', () => {
    const [acid, base] = [20, -19].map((charge) => acidWith(`a${charge}`, charge, [-10]).reagent);
    const extreme = titrate({
      analyte: beaker([acid as Reagent, 60]),
      titrant: burette([base as Reagent, 60]),
      conditions: { pKw: 20 },
    });
    // towards 1e9 mL the pH has no digits left for the volume, which may come out beyond the limit
    for (const mL of [0, 1e7]) expect(extreme.volumeAt(extreme.pHAt(mL))).not.toBeNull();
  });
});

describe('a flat curve: titrant and analyte alike', () => {
  const flat = titrationOf([[aceticAcid, 0.1]], [[aceticAcid, 0.1]]);

  test('stays at its pH', () => {
    for (const mL of [1, 20, 1e6]) close(flat.pHAt(mL), flat.pHAt(0));
    for (const mL of [0, 20]) close(flat.slopeAt(mL), 0);
    expect(flat.volumeAt(flat.pHAt(0))).toBe(0);
    expect(flat.volumeAt(7)).toBeNull();
  });

  test('has no points of any kind', () => {
    expect(flat.equivalencePoints).toEqual([]);
    expect(flat.halfEquivalencePoints).toEqual([]);
    expect(flat.inflectionPoints).toEqual([]);
  });

  test('is drawn by its two ends', () => {
    expect(flat.curve({ maxStep: 0.1, upTo: 40 }).mL).toEqual([0, 40]);
  });

  test('water with water', () => {
    const water = titrate({ analyte: beaker(), titrant: burette() });
    close(water.pHAt(20), waterAt25.pKw / 2);
    expect(water.slopeAt(20)).toBe(0);
    expect(water.equivalencePoints).toEqual([]);
  });
});

describe('water as titrant dilutes', () => {
  const dilution = titrationOf([[hydrochloricAcid, 0.1]], []);

  test('towards pKw/2, without any equivalence point', () => {
    // 2 mmol in 1e9 mL is 2e-9 mol/L beside 1e-7: pH is lower by 1e-9/1e-7/ln 10
    close(dilution.pHAt(1e9), waterAt25.pKw / 2, 1e-2 / Math.LN10);
    expect(dilution.pHAt(1e9)).toBeLessThan(waterAt25.pKw / 2);
    expect(dilution.equivalencePoints).toEqual([]);
  });
});

describe('faults', () => {
  const good = { analyte: beaker([aceticAcid, 0.1]), titrant: burette([sodiumHydroxide, 0.1]) };
  const set = (setup: unknown) => () => titrate(setup as typeof good);

  test.each([
    ['nothing', undefined, ['missing the argument']],
    ['no titrant', { analyte: good.analyte }, ['missing titrant']],
    [
      'two acids under one id in beaker and burette',
      {
        analyte: beaker([acidWith('a', 0, [4]).reagent, 0.1]),
        titrant: burette([acidWith('a', 0, [5]).reagent, 0.1]),
      },
      ['conflict titrant.contents[0].reagent.protolytes[0].protolyte'],
    ],
    [
      'several',
      {
        analyte: { mL: Number.NaN, contents: [{ mmol: 1 }] },
        titrant: null,
        conditions: { pKw: '14' },
        indicator: 'phenolphthalein',
      },
      [
        'unknown-key indicator',
        'not-finite analyte.mL',
        'missing analyte.contents[0].reagent',
        'wrong-type titrant',
        'wrong-type conditions.pKw',
      ],
    ],
  ])('%s', (_, setup, faults) => expect(listed(set(setup))).toEqual(faults));

  test('copies of one acid, one of them through JSON, are no conflict', () => {
    expect(listed(set({ ...good, titrant: throughJSON(burette([sodiumAcetate, 0.1])) }))).toEqual([]);
  });

  test.each([
    ['pHAt(-1)', () => acetic.pHAt(-1), ['out-of-range mL']],
    ['slopeAt(NaN)', () => acetic.slopeAt(Number.NaN), ['not-finite mL']],
    ['equilibriumAt("5")', () => acetic.equilibriumAt('5' as unknown as number), ['wrong-type mL']],
    ['volumeAt(1000)', () => acetic.volumeAt(1000), ['out-of-range pH']],
    ['volumesAt()', () => acetic.volumesAt(undefined as unknown as number), ['missing pH']],
    [
      'jumpAt with two faults',
      () => acetic.jumpAt(-1, { within: 0 }),
      ['out-of-range mL', 'out-of-range options.within'],
    ],
    [
      'jumpAt with a typing slip',
      () => acetic.jumpAt(1, { whitin: 1 } as object),
      ['unknown-key options.whitin'],
    ],
    ['pHs of no list', () => acetic.pHs(5 as unknown as number[]), ['wrong-type volumes']],
    [
      'pHs with faults in list and room',
      () => acetic.pHs([1, -1, Number.NaN], new Float64Array(2)),
      ['out-of-range volumes[1]', 'not-finite volumes[2]', 'out-of-range out'],
    ],
    ['pHs into something else', () => acetic.pHs([1], [] as unknown as Float64Array), ['wrong-type out']],
  ])('%s', (_, call, faults) => expect(listed(call)).toEqual(faults));

  test('conditions with a key that is not known', () => {
    const conditions = { pKW: 14 } as Conditions;
    expect(listed(set({ ...good, conditions }))).toEqual(['unknown-key conditions.pKW']);
  });

  test('a setup without a beaker names what is missing once', () => {
    expect(listed(set({ analyte: {} as Solution, titrant: good.titrant }))).toEqual([
      'missing analyte.contents',
      'missing analyte.mL',
    ]);
  });
});

describe('pHs(volumes)', () => {
  const volumes = [0, 5, 19.9, 20, 20.1, 60, 3];

  test('are those of pHAt, in any order', () => {
    const pHs = acetic.pHs(volumes);
    expect(pHs).toBeInstanceOf(Float64Array);
    for (const [k, mL] of volumes.entries()) close(pHs[k] as number, acetic.pHAt(mL), 1e-11); // condition at 20 mL
  });

  test('go into the array that is given, and no further', () => {
    const out = new Float64Array(9).fill(-1);
    expect(acetic.pHs(Float64Array.from(volumes), out)).toBe(out);
    expect(Array.from(out.subarray(0, 7))).toEqual(Array.from(acetic.pHs(volumes)));
    expect(Array.from(out.subarray(7))).toEqual([-1, -1]);
  });

  test('of nothing are nothing', () => {
    expect(acetic.pHs([])).toHaveLength(0);
  });
});

describe('pHs into a buffer that the volumes stand in too', () => {
  const analyte = makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
  const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });

  test.each([{}, { activity: davies }])('reads every volume before it is written over', (conditions) => {
    const titration = titrate({ analyte, titrant, conditions });
    const volumes = [1, 5, 9, 11, 15, 19];
    const buffer = new Float64Array(volumes.length + 1);
    buffer.set(volumes);
    titration.pHs(buffer.subarray(0, 6), buffer.subarray(1));
    expect([...buffer.subarray(1)]).toEqual([...titration.pHs(volumes)]);
  });
});
