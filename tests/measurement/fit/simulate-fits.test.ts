import { makeSolution, reagents, titrate } from 'protolysis';
import { fitTitration, simulateFits, simulateReadings } from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';
import { listed } from '../../faults-of.js';

const titration = titrate({
  analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] }),
  titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
});
const { readings } = simulateReadings(titration, {
  seed: 8,
  volumes: Array.from({ length: 31 }, (_, k) => k),
});
const fit = {
  titration,
  free: ['sampleAmount', 'probeOffset'],
  uncertainty: { pH: 0.02, mL: 0.02 },
} as const;

describe('simulateFits', () => {
  test('scatters as the fit says that it does', async () => {
    const { parameters, unconverged } = await simulateFits(readings, fit, { runs: 400 });
    expect(unconverged).toBe(0);
    for (const [j, { standardDeviation, value, mean, interval }] of parameters.entries()) {
      const { estimate } = fitTitration(readings, fit).parameters[j] ?? {};
      // 400 runs know a standard deviation to 3.5 %: three of these
      expect(Math.abs(standardDeviation / (estimate?.standardUncertainty ?? 0) - 1)).toBeLessThan(0.106);
      expect(Math.abs(mean - value)).toBeLessThan((3.5 * standardDeviation) / Math.sqrt(400));
      expect(interval.from < value && value < interval.to).toBe(true);
    }
  });

  test('gives the same for a seed, tells of its progress, and ends when asked to', async () => {
    const heard: number[] = [];
    const first = await simulateFits(readings, fit, {
      runs: 100,
      seed: 4,
      onProgress: (done) => heard.push(done),
    });
    expect(first).toEqual(await simulateFits(readings, fit, { runs: 100, seed: 4 }));
    expect([heard[0], heard.at(-1)]).toEqual([0, 1]);
    const stop = new AbortController();
    stop.abort(new Error('enough'));
    await expect(simulateFits(readings, fit, { signal: stop.signal })).rejects.toThrow('enough');
  });

  test('says at once what is wrong', () => {
    expect(listed(() => simulateFits(readings, fit, { runs: 5 }))).toEqual(['out-of-range simulation.runs']);
    expect(listed(() => simulateFits(readings, fit, { signal: {} as never }))).toEqual([
      'wrong-type simulation.signal',
    ]);
  });
});
