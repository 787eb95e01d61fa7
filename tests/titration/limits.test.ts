import { air, makeSolution, reagents, titrate, titrationLimits } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';
import { beaker, burette, titrationOf } from './beakers.js';

const { hydrochloricAcid, sodiumCarbonate, sodiumHydroxide } = reagents;
const { mL: most, leastML, points } = titrationLimits;
const make = () => titrationOf([[hydrochloricAcid, 0.1]], [[sodiumHydroxide, 0.1]]);
const boiled = (boilOut: object) =>
  titrate({
    analyte: beaker([sodiumCarbonate, 0.1]),
    titrant: burette([hydrochloricAcid, 0.1]),
    boilOut: { mL: 30, ...boilOut },
  });
const jump = (mL: number, within: number) => make().jumpAt(mL, { within });

/** What is one too far, and its fault; then what is just allowed. */
const limits: readonly [string, () => unknown, string, () => unknown][] = [
  ['pHAt', () => make().pHAt(1.1 * most), 'out-of-range mL', () => make().pHAt(most)],
  ['jumpAt up', () => jump(most, 1), 'out-of-range mL + within', () => jump(most - 1, 1)],
  ['jumpAt down', () => jump(1, 2), 'out-of-range mL', () => jump(2, 2)],
  ['within', () => jump(most, 1.1 * most), 'out-of-range options.within', () => jump(most / 2, most / 2)],
  [
    'every',
    () => make().curve({ every: 0, upTo: 1 }),
    'out-of-range additions.every',
    () => make().curve({ every: 1, upTo: 1 }),
  ],
  [
    'every beyond the greatest volume',
    () => make().curve({ every: 1.1 * most, upTo: 1 }),
    'out-of-range additions.every',
    () => make().curve({ every: most, upTo: 1 }),
  ],
  [
    'points',
    () => make().curve({ every: 1, upTo: points + 1 }),
    'out-of-range additions.every',
    () => make().curve({ every: 1, upTo: 10 }),
  ],
  ['atm', () => boiled({ atm: 101 }), 'out-of-range boilOut.atm', () => boiled({ atm: 100 })],
  ['atm below nothing', () => boiled({ atm: -1 }), 'out-of-range boilOut.atm', () => boiled({ atm: 0 })],
];

describe('numbers go as far as their limits', () => {
  test.each(limits)('%s, %#', (_, beyond, fault, allowed) => {
    expect(listed(beyond)).toEqual([fault]);
    expect(listed(allowed)).toEqual([]);
  });

  test('a jump with one fault is not told another that follows from it', () => {
    expect(listed(() => jump(2 * most, 1))).toEqual(['out-of-range mL']);
    expect(listed(() => jump(most, -1))).toEqual(['out-of-range options.within']);
  });

  test('a curve without additions is told so alone', () => {
    expect(listed(() => make().curve({} as never))).toEqual(['missing additions']);
  });

  test('pHs go into doubles and nothing else', () => {
    expect(listed(() => make().pHs([1], new Float32Array(1) as never))).toEqual(['wrong-type out']);
    expect(listed(() => make().pHs([1], Object.create(Float64Array.prototype)))).toEqual(['wrong-type out']);
  });
});

describe('a point counts from the least volume to the greatest', () => {
  const pointsOf = (mmol: number, mL: number, molar: number) => {
    const { equivalencePoints, halfEquivalencePoints } = titrate({
      analyte: makeSolution({ mL, contents: [{ reagent: reagents.aceticAcid, mmol }] }),
      titrant: burette([sodiumHydroxide, molar]),
    });
    return [equivalencePoints, halfEquivalencePoints].map((all) => all.map((point) => point.mL));
  };

  test('mmol of acid with as many mmol a mL of base', () => {
    expect(pointsOf(leastML, 1e-6, 1)).toEqual([[leastML], []]);
    expect(pointsOf(2 * leastML, 1e-6, 1)).toEqual([[2 * leastML], [leastML]]);
    expect(pointsOf(leastML / 2, 1e-6, 1)).toEqual([[], []]);
    expect(pointsOf(most, most, 1)).toEqual([[most], [most / 2]]);
    expect(pointsOf(1.5 * most, most, 1)).toEqual([[], [0.75 * most]]);
    expect(pointsOf(4 * most, most, 1)).toEqual([[], []]);
  });

  test('every volume at which a pH is passed is within the limits', () => {
    const base = make();
    // towards the titrant's own pH the volume grows beyond all limits
    expect(base.volumeAt(base.pHAt(most) - 1e-6)).toBeLessThanOrEqual(most);
    expect(base.volumesAt(base.pHAt(most) + 1e-9)).toEqual([]);
    expect(base.volumesAt(base.pHAt(0))).toEqual([0]);
  });
});

describe('a boil-out', () => {
  test('stands in the setup, with the pressure of the air where none was given', () => {
    expect(boiled({ atm: 0.01 }).setup.boilOut).toEqual({ mL: 30, atm: 0.01 });
    expect(boiled({}).setup.boilOut).toEqual({ mL: 30, atm: air.atm });
    expect('boilOut' in make().setup).toBe(false);
  });

  test('goes with a beaker from which some carbon dioxide escapes anyway', () => {
    const conditions = { carbonDioxide: { ...air, escape: 0.5 } };
    expect(listed(() => titrate({ ...boiled({}).setup, conditions }))).toEqual([]);
  });
});
