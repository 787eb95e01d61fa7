import { davies, makeSolution, reagents, titrate } from 'protolysis';
import { fitTitration, simulateReadings } from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';
import { Faults } from '../../../src/input/faults.js';
import { curveBand } from '../../../src/measurement/fit/curve-band.js';
import { fitParameters } from '../../../src/measurement/fit/fit-parameters.js';
import type { FreeParameter } from '../../../src/measurement/fit/free-parameter.js';
import { readSetup } from '../../../src/titration/read-setup.js';

const carbonate = (molar: number, acid = 0.1, conditions = {}) =>
  titrate({
    analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar }] }),
    titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: acid }] }),
    conditions,
  });
const volumes = [0, 3, 6, 12, 12.4, 12.5, 12.6, 18, 24.9, 25, 25.1, 30];

function bandOf(
  { setup }: ReturnType<typeof carbonate>,
  free: readonly FreeParameter[],
  covariance: readonly (readonly number[])[],
  k: number,
) {
  const faults = new Faults('test');
  const read = readSetup(setup, 'setup', faults);
  const parameters = fitParameters(free, read, 'free', faults);
  faults.done();
  return curveBand(read, parameters, covariance, k, volumes);
}

describe('the band of a fitted curve', () => {
  test.each([
    ['ideal', {}],
    ['with a law of activity', { activity: davies }],
  ])('of one parameter lies between the curves at its ends: %s', (_, conditions) => {
    const u = 0.01; // mmol of 1.25: 0.0004 mol/L in 25 mL
    const band = bandOf(carbonate(0.05, 0.1, conditions), ['sampleAmount'], [[u * u]], 2);
    const ends = [0.05 - (2 * u) / 25, 0.05 + (2 * u) / 25].map((molar) =>
      carbonate(molar, 0.1, conditions).pHs(volumes),
    );
    for (const [i] of volumes.entries()) {
      const [a = 0, b = 0] = ends.map((pHs) => pHs[i]);
      expect(band?.lower[i]).toBeCloseTo(Math.min(a, b), 9);
      expect(band?.upper[i]).toBeCloseTo(Math.max(a, b), 9);
    }
  });

  test('vanishes where two parameters that go together by their errors leave a curve as it is', () => {
    // amount and strength of the titrant in proportion: the equivalence volumes stay, and so nearly does the curve
    const amount = 0.01;
    const molar = (0.1 * amount) / 1.25;
    const cross = amount * molar;
    const sure = bandOf(
      carbonate(0.05),
      ['sampleAmount', 'titrantConcentration'],
      [
        [amount ** 2, cross],
        [cross, molar ** 2],
      ],
      2,
    );
    const free = bandOf(
      carbonate(0.05),
      ['sampleAmount', 'titrantConcentration'],
      [
        [amount ** 2, 0],
        [0, molar ** 2],
      ],
      2,
    );
    const widthAt = (band: typeof sure, k: number) => (band?.upper[k] ?? 0) - (band?.lower[k] ?? 0);
    const step = volumes.indexOf(25);
    expect(widthAt(sure, step)).toBeLessThan(0.02);
    expect(widthAt(free, step)).toBeGreaterThan(1);
  });

  test('is none where it would reach amounts below zero', () =>
    expect(bandOf(carbonate(0.05), ['sampleAmount'], [[1]], 2)).toBeNull());

  test('holds 95 of 100 curves fitted to other readings of the same flask, at each volume', () => {
    const free = ['sampleAmount', 'titrantConcentration'] as const;
    const truth = carbonate(0.05);
    const noise = { pH: 0.02, mL: 0.02 };
    const runs = 1000;
    const within = volumes.map(() => 0);
    for (let seed = 1; seed <= runs; seed += 1) {
      const { readings } = simulateReadings(truth, {
        seed,
        volumes: Array.from({ length: 16 }, (_, k) => 2 * k),
        noise,
      });
      const fit = fitTitration(readings, { titration: truth, free, uncertainty: noise, scatter: 'known' });
      const u = fit.parameters.map(({ estimate }) => estimate?.standardUncertainty ?? 0);
      const covariance = u.map((a, i) => u.map((b, j) => (fit.correlation[i]?.[j] ?? 0) * a * b));
      const band = bandOf(titrate(fit.setup), free, covariance, 1.96);
      for (const [i, pH] of truth.pHs(volumes).entries())
        if (pH >= (band?.lower[i] ?? 99) && pH <= (band?.upper[i] ?? -99)) within[i] = (within[i] ?? 0) + 1;
    }
    // of 1000 runs 95 % are 950, with a deviation of √(1000·0.95·0.05) = 6.9: three of these to either side
    for (const count of within) expect(Math.abs(count - 950)).toBeLessThanOrEqual(21);
  });
});
