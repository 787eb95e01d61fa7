import { planSample, reagents, waters } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const {
  sodiumCarbonate,
  hydrochloricAcid,
  sodiumHydroxide,
  potassiumHydrogenPhthalate,
  boricAcid,
  sodiumChloride,
} = reagents;
const planned = (plan: ReturnType<typeof planSample>) => {
  if (plan.status !== 'planned') throw new Error(plan.reason);
  return plan;
};

describe('a plan for a sample', () => {
  test('lands the last sharp point in the middle of the wanted part of the burette', () => {
    const plan = planned(
      planSample({
        sample: { reagent: sodiumCarbonate },
        titrant: { reagent: hydrochloricAcid, molar: 0.1 },
      }),
    );
    expect(plan.points.map(({ mL }) => mL)).toEqual([18.75, 37.5]);
    expect(plan.point).toBe(2);
    // 3.75 mmol of titrant, half as much carbonate, 105.9875 g/mol
    expect(plan.grams).toBeCloseTo((3.75 / 2) * 0.1059875, 10);
    expect(plan.range.from / plan.grams).toBeCloseTo(0.6 / 0.75, 12);
    expect(plan.range.to / plan.grams).toBeCloseTo(0.9 / 0.75, 12);
  });

  test('plans the concentration of the titrant where the mass is given', () => {
    const plan = planned(
      planSample({
        sample: { reagent: potassiumHydrogenPhthalate, grams: 0.5 },
        titrant: { reagent: sodiumHydroxide },
      }),
    );
    expect(plan.molar).toBeCloseTo(500 / 204.22 / 37.5, 5);
    expect(plan.range.free).toBe('molar');
  });

  // Common practice: 0.4 to 0.6 g of KHP for 20 to 30 mL of 0.1 mol/L sodium hydroxide.
  test('weighs the usual half gram of phthalate for 25 mL of 0.1 mol/L sodium hydroxide', () => {
    const plan = planned(
      planSample({
        sample: { reagent: potassiumHydrogenPhthalate },
        titrant: { reagent: sodiumHydroxide, molar: 0.1 },
        part: { from: 0.5, to: 0.5 },
      }),
    );
    expect(plan.grams).toBeGreaterThan(0.4);
    expect(plan.grams).toBeLessThan(0.6);
  });

  test('states what weighing and reading cost: √2 uncertainties each; the burette; and all together', () => {
    const { percent, grams, points } = planned(
      planSample({
        sample: { reagent: sodiumCarbonate },
        titrant: { reagent: hydrochloricAcid, molar: 0.1 },
      }),
    );
    expect(percent.weighing).toBeCloseTo((100 * Math.SQRT2 * 0.0002) / grams, 12);
    expect(percent.reading).toBeCloseTo((100 * Math.SQRT2 * 0.02) / Number(points[1]?.mL), 12);
    // ISO 385, 50 mL, class A: 0.05 mL, as a triangular distribution
    expect(percent.burette).toBeCloseTo((100 * 0.05) / Math.sqrt(6) / Number(points[1]?.mL), 12);
    expect(percent.aliquot).toBe(0);
    expect(percent.together).toBeCloseTo(Math.hypot(percent.weighing, percent.reading, percent.burette), 12);
  });

  test('says why there is none: no point, no sharp point, no such point', () => {
    const titrant = { reagent: sodiumHydroxide, molar: 0.1 };
    expect(planSample({ sample: { reagent: sodiumChloride }, titrant })).toMatchObject({
      because: 'no-point',
    });
    expect(planSample({ sample: { reagent: boricAcid }, titrant })).toMatchObject({ because: 'not-sharp' });
    expect(planSample({ sample: { reagent: potassiumHydrogenPhthalate }, titrant, point: 3 })).toMatchObject({
      because: 'no-such-point',
      reason: 'there is no point 3: potassium hydrogen phthalate with sodium hydroxide has 1',
    });
  });

  test('plans no titrant and no sample that cannot be', () => {
    const grams = (mass: number) =>
      planSample({
        sample: { reagent: sodiumCarbonate, grams: mass },
        titrant: { reagent: hydrochloricAcid },
      });
    for (const mass of [100, 1e6]) expect(grams(mass)).toMatchObject({ because: 'too-strong' });
    expect(
      planSample({
        sample: { reagent: sodiumCarbonate },
        titrant: { reagent: hydrochloricAcid, molar: 20 },
        burette: 1000,
      }),
    ).toMatchObject({ because: 'too-strong' });
  });

  test('names the point that was asked for where it is not sharp', () =>
    expect(
      planSample({
        sample: { reagent: sodiumCarbonate },
        titrant: { reagent: hydrochloricAcid, molar: 0.1 },
        point: 1,
      }),
    ).toMatchObject({ reason: expect.stringMatching(/^point 1 of sodium carbonate is not sharp/) }));

  test('weighs an aliquot into its flask: as many times as much, and the vessels cost their limits of error', () => {
    const titrant = { reagent: hydrochloricAcid, molar: 0.1 };
    const direct = planned(planSample({ sample: { reagent: sodiumCarbonate }, titrant }));
    const aliquot = { flask: 250, pipette: 25 };
    const plan = planned(planSample({ sample: { reagent: sodiumCarbonate, aliquot }, titrant, glass: 'B' }));
    expect(plan.grams).toBeCloseTo(10 * direct.grams, 12);
    expect(plan.points).toEqual(direct.points);
    expect(plan.percent.weighing).toBeCloseTo(direct.percent.weighing / 10, 12);
    // ISO 1042 and ISO 648, class B: 0.3 mL of 250 mL, 0.06 mL of 25 mL
    expect(plan.percent.aliquot).toBeCloseTo((100 * Math.hypot(0.3 / 250, 0.06 / 25)) / Math.sqrt(6), 12);
    const back = planned(
      planSample({
        sample: { reagent: sodiumCarbonate, aliquot, grams: plan.grams },
        titrant: { reagent: hydrochloricAcid },
      }),
    );
    expect(back.molar).toBeCloseTo(0.1, 12);
  });

  test('says what its water does to each point, and how much of it covers a probe', () => {
    const request = {
      sample: { reagent: sodiumCarbonate },
      titrant: { reagent: hydrochloricAcid, molar: 0.1 },
    };
    const { water, points, notes } = planned(planSample({ ...request, beaker: { diameter: 60, depth: 40 } }));
    // π/4·(6 cm)²·4 cm
    expect(water.mL).toBeCloseTo(36 * Math.PI, 9);
    expect(water.endpoints).toHaveLength(points.length);
    expect(notes.at(-1)).toMatch(
      /moves no equivalence point\. With what is dissolved in 113\.1 mL of deionised water in equilibrium with air, the volume at pH 8\.3\d is 0\.019 mL \(0\.1\d* %\) less, and the volume at pH 4\.1\d moves by less than 0\.001 mL\.$/,
    );
    const none = planned(planSample({ ...request, water: waters.freshDeionised }));
    for (const { mL } of none.water.endpoints) expect(mL).toBeCloseTo(0, 9);
  });

  // Carbonic acid of 16.5 µmol/L takes hydroxide to hydrogen carbonate: 50 mL of it, 0.825 µmol, take 0.00825 mL of 0.1 mol/L; a little more, since
  // at pH 9 some of it is carbonate.
  test('the carbon dioxide of the water takes its amount of hydroxide', () => {
    const { water } = planned(
      planSample({
        sample: { reagent: potassiumHydrogenPhthalate },
        titrant: { reagent: sodiumHydroxide, molar: 0.1 },
      }),
    );
    const carbonDioxide = (0.05 * Number(waters.inAir.contents[0]?.mmol)) / 0.1;
    expect(Number(water.endpoints[0]?.mL) / carbonDioxide).toBeGreaterThan(1);
    expect(Number(water.endpoints[0]?.mL) / carbonDioxide).toBeLessThan(1.1);
    expect(Number(water.endpoints[0]?.percent)).toBeCloseTo((100 * Number(water.endpoints[0]?.mL)) / 37.5, 9);
  });

  test('says when the limits of error of a burette are not known', () => {
    const plan = planned(
      planSample({
        sample: { reagent: sodiumCarbonate },
        titrant: { reagent: hydrochloricAcid, molar: 0.1 },
        burette: 30,
      }),
    );
    expect(plan.percent.burette).toBe(0);
    expect(plan.notes[0]).toBe(
      'The limits of error of a burette of 30 mL are not known: they are not counted.',
    );
  });

  test('carries the cautions of sample and titrant, and defers', () => {
    const plan = planned(
      planSample({
        sample: { reagent: sodiumCarbonate },
        titrant: { reagent: hydrochloricAcid, molar: 0.1 },
      }),
    );
    expect(plan.cautions.join(' ')).toMatch(/safety data sheet.*local rules.*supervisor/);
  });

  test.each([
    ['neither grams nor molar', {}, {}, ['missing request']],
    ['both', { grams: 1 }, { molar: 0.1 }, ['conflict request']],
    ['a typing slip', { gram: 1 }, { molar: 0.1 }, ['unknown-key sample.gram']],
    [
      'a beaker beside a volume',
      {},
      { molar: 0.1 },
      ['conflict beaker'],
      { mL: 50, beaker: { diameter: 60, depth: 40 } },
    ],
    [
      'vessels of no standard',
      { aliquot: { flask: 123, pipette: 7 } },
      { molar: 0.1 },
      ['out-of-range sample.aliquot.flask', 'out-of-range sample.aliquot.pipette'],
    ],
    [
      'a pipette that is no smaller than its flask',
      { aliquot: { flask: 50, pipette: 50 } },
      { molar: 0.1 },
      ['conflict sample.aliquot.pipette'],
    ],
    [
      'an aliquot that the beaker does not hold',
      { aliquot: { flask: 250, pipette: 100 } },
      { molar: 0.1 },
      ['conflict mL'],
    ],
  ])('refuses %s', (_, sample, titrant, faults, more: object = {}) =>
    expect(
      listed(() =>
        planSample({
          sample: { reagent: sodiumCarbonate, ...sample },
          titrant: { reagent: hydrochloricAcid, ...titrant },
          ...more,
        }),
      ),
    ).toEqual(faults),
  );
});
