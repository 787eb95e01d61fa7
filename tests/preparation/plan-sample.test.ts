import fc from 'fast-check';
import { makeSolution, planSample, type Reagent, reagents, titrate } from 'protolysis';
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

  test('states what weighing and reading cost: √2 uncertainties each, and both together', () => {
    const { percent, grams, points } = planned(
      planSample({
        sample: { reagent: sodiumCarbonate },
        titrant: { reagent: hydrochloricAcid, molar: 0.1 },
      }),
    );
    expect(percent.weighing).toBeCloseTo((100 * Math.SQRT2 * 0.0002) / grams, 12);
    expect(percent.reading).toBeCloseTo((100 * Math.SQRT2 * 0.02) / Number(points[1]?.mL), 12);
    expect(percent.together).toBeCloseTo(Math.hypot(percent.weighing, percent.reading), 12);
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

  const all = Object.values(reagents) as Reagent[];
  test('titrated, ends in the wanted part of the burette, for every reagent of the catalogue with a sharp point', () => {
    let sharp = 0;
    for (const reagent of all)
      for (const titrant of [hydrochloricAcid, sodiumHydroxide]) {
        if (reagent.id === titrant.id || reagent.molarMass === undefined) continue;
        const plan = planSample({
          sample: { reagent, purity: 0.9 },
          titrant: { reagent: titrant, molar: 0.1 },
        });
        if (plan.status === 'impossible') {
          expect(plan.reason.length).toBeGreaterThan(20);
          continue;
        }
        sharp += 1;
        const analyte = makeSolution({ mL: 50, contents: [{ reagent, grams: plan.grams, purity: 0.9 }] });
        const burette = makeSolution({ contents: [{ reagent: titrant, molar: plan.molar }] });
        const found = titrate({ analyte, titrant: burette }).equivalencePoints[plan.point - 1]?.mL ?? 0;
        expect(found, reagent.id).toBeGreaterThanOrEqual(0.6 * 50);
        expect(found, reagent.id).toBeLessThanOrEqual(0.9 * 50);
      }
    expect(sharp).toBeGreaterThan(60);
  });

  test('does not depend on the volume of water', () =>
    fc.assert(
      fc.property(fc.double({ min: 10, max: 100, noNaN: true }), (mL) => {
        const request = {
          sample: { reagent: sodiumCarbonate },
          titrant: { reagent: hydrochloricAcid, molar: 0.1 },
        };
        expect(planned(planSample({ ...request, mL })).grams).toBeCloseTo(
          planned(planSample(request)).grams,
          12,
        );
      }),
      { numRuns: 30 },
    ));

  test.each([
    ['neither grams nor molar', {}, {}, ['missing request']],
    ['both', { grams: 1 }, { molar: 0.1 }, ['conflict request']],
    ['a typing slip', { gram: 1 }, { molar: 0.1 }, ['unknown-key sample.gram']],
  ])('refuses %s', (_, sample, titrant, faults) =>
    expect(
      listed(() =>
        planSample({
          sample: { reagent: sodiumCarbonate, ...sample },
          titrant: { reagent: hydrochloricAcid, ...titrant },
        }),
      ),
    ).toEqual(faults),
  );
});
