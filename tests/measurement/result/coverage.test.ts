import { estimateWithin, standardiseTitrant } from 'protolysis/measurement';
import { expect, test } from 'vitest';
import { randomFrom } from '../../../src/measurement/statistics/random.js';

// Invented classes: each weighs and titrates as often as it says, with one burette and one balance; the truth is 0.1 mol/L.
const trials = 4000;
const [burette, scatter, molarMass] = [0.05, 0.03, 106];

/** The share of classes whose interval holds the truth. */
function coverage(runsEach: number): number {
  const random = randomFrom(11);
  let covered = 0;
  for (let trial = 0; trial < trials; trial += 1) {
    const buretteError = burette * (random.uniform() + random.uniform() - 1);
    const runs = Array.from({ length: runsEach }, () => {
      const grams = 0.13 + 0.01 * random.uniform();
      return { grams, mL: (2000 * grams) / (molarMass * 0.1) + buretteError + scatter * random.normal() };
    });
    const { value, expandedUncertainty } = standardiseTitrant({
      standard: { molarMass, ratio: 2 },
      runs,
      buretteError: estimateWithin(0, { limit: burette, distribution: 'triangular' }),
    });
    if (Math.abs(value - 0.1) <= expandedUncertainty) covered += 1;
  }
  return covered / trials;
}

// 0.01 is three standard errors of a share over so many trials.
test.each([3, 6, 20])('intervals at 95 %% from %d runs cover the truth so often', (runs) => {
  expect(Math.abs(coverage(runs) - 0.95)).toBeLessThan(0.01);
});

// Where the two runs happen to agree, one degree of freedom takes their scatter for little, and Welch and Satterthwaite count on
// the burette's infinitely many: the guide says 93 %.
test('from two runs they cover it less often', () => {
  expect(Math.abs(coverage(2) - 0.93)).toBeLessThan(0.01);
});
