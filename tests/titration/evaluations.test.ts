import { makeSolution, reagents } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { readConditions } from '../../src/equilibrium/conditions.js';
import { emptyRoot, hydrogenIon } from '../../src/equilibrium/hydrogen-ion.js';
import { successionOf } from '../../src/equilibrium/hydrogen-ions.js';
import { settingOf } from '../../src/equilibrium/setting.js';
import { Faults } from '../../src/errors.js';
import { curveOf } from '../../src/titration/curve-of.js';
import { engineOf, volumeAt } from '../../src/titration/engine.js';
import { idealCourse } from '../../src/titration/ideal-course.js';
import { writePHs } from '../../src/titration/p-hs.js';
import { counted } from '../counted.js';
import { casesOf, type SystemInput, solutionOf } from '../reference/vectors.js';

const settled = (conditions?: { pKw: number }) =>
  readConditions(conditions, 'conditions', new Faults('test'));

// What a result costs, in evaluations of the charge balance: exact, so a test can hold it.

/** The demo's titration: 0.2000 g of a powder of 95 % sodium carbonate in 50 mL, with 0.1000 mol/L hydrochloric acid. */
function demo() {
  const analyte = makeSolution({
    mL: 50,
    contents: [{ reagent: reagents.sodiumCarbonate, grams: 0.2, purity: 0.95 }],
  });
  const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
  const { setting, evaluations } = counted(settingOf([analyte, titrant], settled()));
  return { engine: engineOf(setting), evaluations };
}

/** As many equal additions, from 0 to 50 mL. */
const volumes = (points: number) => Float64Array.from({ length: points }, (_, k) => (50 * k) / (points - 1));

describe('evaluations of the charge balance a point', () => {
  test.each([
    [91, 1.5],
    [1000, 1.1],
    [100_000, 1],
  ])('on the curve of carbonate with acid at %d points: at most %d', (points, most) => {
    const { engine, evaluations } = demo();
    writePHs(engine, volumes(points), new Float64Array(points));
    expect(evaluations() / points).toBeLessThanOrEqual(most);
  });

  test('on that curve with slopes at 1000 points: at most 2.1', () => {
    const { engine, evaluations } = demo();
    curveOf(idealCourse(engine), { volumes: volumes(1000) });
    expect(evaluations() / 1000).toBeLessThanOrEqual(2.1);
  });

  test('at random volumes: at most 3', () => {
    const { engine, evaluations } = demo();
    const scattered = volumes(1009).map((_, k, all) => all[(k * 389) % all.length] as number);
    writePHs(engine, scattered, new Float64Array(scattered.length));
    expect(evaluations() / scattered.length).toBeLessThanOrEqual(3);
  });

  test('for a volume at a pH: one', () => {
    const { engine, evaluations } = demo();
    volumeAt(engine, 1e-5);
    expect(evaluations()).toBe(1);
  });

  test('on an adaptive curve: one, and a few for its two ends', () => {
    const { engine, evaluations } = demo();
    const { mL } = curveOf(idealCourse(engine), { maxStep: 0.02, upTo: 50 });
    expect(mL.length).toBeGreaterThan(400);
    expect(evaluations()).toBeLessThanOrEqual(mL.length + 10);
  });

  test('from a cold start, on all of group A: at most 9 on average and 30 at worst', () => {
    const counts = casesOf<{ input: SystemInput }>('ideal.json').map(({ input }) => {
      const { setting, evaluations } = counted(
        settingOf([solutionOf(input)], settled({ pKw: Number(input.pKw) })),
      );
      const root = emptyRoot();
      hydrogenIon(setting.balance, setting.columns[0] as (typeof setting.columns)[number], 0, root);
      if (input.families.length > 0) expect(root.evaluations).toBe(evaluations());
      return root.evaluations;
    });
    console.log(
      `cold starts: ${(counts.reduce((all, one) => all + one) / counts.length).toFixed(2)} on average, ${Math.max(...counts)} at worst`,
    );
    expect(counts.length).toBe(200);
    expect(counts.reduce((all, one) => all + one) / counts.length).toBeLessThanOrEqual(9);
    expect(Math.max(...counts)).toBeLessThanOrEqual(30);
  });

  test('are what the solver itself counts', () => {
    const { engine, evaluations } = demo();
    const succession = successionOf(engine.setting.balance);
    writePHs(engine, volumes(300), new Float64Array(300), succession);
    expect(succession.root.evaluations).toBe(evaluations());
  });
});
