import { makeSolution, reagents, type Titration, titrate } from 'protolysis';
import { fitTitration } from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../src/measurement/statistics/random.js';

const acid = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const base = makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] });
const carbonate = makeSolution({ mL: 50, contents: [{ reagent: reagents.sodiumCarbonate, mmol: 2 }] });
const acetic = makeSolution({ mL: 25, contents: [{ reagent: reagents.aceticAcid, mmol: 2.5 }] });

/** Sixty readings with normal errors of 0.01 in pH and 0.02 mL; the first is before the first drop. */
function noisy(titration: Titration, upTo: number, seed: number) {
  const random = randomFrom(seed);
  const mL = Array.from({ length: 60 }, (_, k) => (upTo * k) / 59);
  const pH = mL.map((volume, k) => {
    const delivered = k === 0 ? 0 : Math.max(0, volume + 0.02 * random.normal());
    return titration.pHAt(delivered) + 0.01 * random.normal();
  });
  return { mL, pH, notes: [] };
}

// The share of intervals that cover is binomial: ±3 standard deviations of 400 runs are ±3.3 %; a standard deviation from
// 400 values is good to 3.5 %, so 10.6 % is three of them. bench/fit.mjs has ten thousand runs.
describe('over 400 simulated runs of 60 readings', () => {
  const t95 = 2.0025; // Student's t for 57 degrees of freedom, 97.5 %; tables give 2.0025 (W. H. Beyer, from memory)
  test.each([
    { name: 'carbonate', analyte: carbonate, titrant: acid, upTo: 50, pKa: { pKa: 'carbonic', step: 2 } },
    { name: 'acetic acid', analyte: acetic, titrant: base, upTo: 35, pKa: { pKa: 'acetic', step: 1 } },
  ])(
    '$name: unbiased, with the standard uncertainty that they scatter by',
    ({ analyte, titrant, upTo, pKa }) => {
      const runs = 400;
      const titration = titrate({ analyte, titrant });
      const free = ['sampleAmount', 'probeOffset', pKa] as const;
      const sums = free.map(() => ({ error: 0, square: 0, variance: 0, covered: 0 }));
      for (let run = 0; run < runs; run += 1) {
        const fit = fitTitration(noisy(titration, upTo, run), { titration, free });
        expect(fit.status).toBe('converged');
        for (const [j, { value, expected, estimate }] of fit.parameters.entries()) {
          const sum = sums[j] as (typeof sums)[number];
          const u = estimate?.standardUncertainty ?? 0;
          sum.error += (value - expected) / runs;
          sum.square += (value - expected) ** 2 / runs;
          sum.variance += u ** 2 / runs;
          if (Math.abs(value - expected) < t95 * u) sum.covered += 1 / runs;
        }
      }
      for (const { error, square, variance, covered } of sums) {
        expect(Math.abs(error) / Math.sqrt(square / runs)).toBeLessThan(3.5);
        expect(Math.abs(Math.sqrt(variance / square) - 1)).toBeLessThan(0.106);
        expect(Math.abs(covered - 0.95)).toBeLessThan(0.033);
      }
    },
  );
});
