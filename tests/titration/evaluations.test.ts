import { makeSolution, reagents } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { readConditions } from '../../src/equilibrium/conditions.js';
import { emptyRoot, hydrogenIon } from '../../src/equilibrium/hydrogen-ion.js';
import { hydrogenIonSeriesOf } from '../../src/equilibrium/hydrogen-ion-series.js';
import { systemOf } from '../../src/equilibrium/system.js';
import { Faults } from '../../src/input/faults.js';
import { idealModel } from '../../src/titration/model/ideal-model.js';
import { mixtureModelOf, volumeOfMixture } from '../../src/titration/model/mixture-model.js';
import { writePHs } from '../../src/titration/sampling/ph-at-volumes.js';
import { sampleCurve } from '../../src/titration/sampling/sample-curve.js';
import { counted } from '../counted.js';
import { casesOf, type SystemInput, solutionOf } from '../reference/vectors.js';

const conditionsInUse = (conditions?: { pKw: number }) =>
  readConditions(conditions, 'conditions', new Faults('test'));

// What a result costs, in evaluations of the charge balance: exact, so a test can hold it.

/** The demo's titration: 0.2000 g of a powder of 95 % sodium carbonate in 50 mL, with 0.1000 mol/L hydrochloric acid. */
function demo() {
  const analyte = makeSolution({
    mL: 50,
    contents: [{ reagent: reagents.sodiumCarbonate, grams: 0.2, purity: 0.95 }],
  });
  const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
  const { system, evaluations } = counted(systemOf([analyte, titrant], conditionsInUse()));
  return { mixture: mixtureModelOf(system), evaluations };
}

/** As many equal additions, from 0 to 50 mL. */
const volumes = (points: number) => Float64Array.from({ length: points }, (_, k) => (50 * k) / (points - 1));

describe('evaluations of the charge balance a point', () => {
  test.each([
    [91, 1.5],
    [1000, 1.1],
    [100_000, 1],
  ])('on the curve of carbonate with acid at %d points: at most %d', (points, most) => {
    const { mixture, evaluations } = demo();
    writePHs(mixture, volumes(points), new Float64Array(points));
    expect(evaluations() / points).toBeLessThanOrEqual(most);
  });

  test('on that curve with slopes at 1000 points: at most 2.1', () => {
    const { mixture, evaluations } = demo();
    sampleCurve(idealModel(mixture), { volumes: volumes(1000) });
    expect(evaluations() / 1000).toBeLessThanOrEqual(2.1);
  });

  test('at random volumes: at most 3', () => {
    const { mixture, evaluations } = demo();
    const scattered = volumes(1009).map((_, k, all) => all[(k * 389) % all.length] as number);
    writePHs(mixture, scattered, new Float64Array(scattered.length));
    expect(evaluations() / scattered.length).toBeLessThanOrEqual(3);
  });

  test('for a volume at a pH: one', () => {
    const { mixture, evaluations } = demo();
    volumeOfMixture(mixture, 1e-5);
    expect(evaluations()).toBe(1);
  });

  test('on an adaptive curve: one, and a few for its two ends', () => {
    const { mixture, evaluations } = demo();
    const { mL } = sampleCurve(idealModel(mixture), { maxStep: 0.02, upTo: 50 });
    expect(mL.length).toBeGreaterThan(400);
    expect(evaluations()).toBeLessThanOrEqual(mL.length + 10);
  });

  test('from a cold start, on all of group A: at most 9 on average and 30 at worst', () => {
    const counts = casesOf<{ input: SystemInput }>('ideal.json').map(({ input }) => {
      const { system, evaluations } = counted(
        systemOf([solutionOf(input)], conditionsInUse({ pKw: Number(input.pKw) })),
      );
      const root = emptyRoot();
      hydrogenIon(system.balance, system.columns[0] as (typeof system.columns)[number], 0, root);
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
    const { mixture, evaluations } = demo();
    const series = hydrogenIonSeriesOf(mixture.system.balance);
    writePHs(mixture, volumes(300), new Float64Array(300), series);
    expect(series.root.evaluations).toBe(evaluations());
  });
});
